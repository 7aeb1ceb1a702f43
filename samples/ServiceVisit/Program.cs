using System.Text;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Compare;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Samples.ServiceVisit.Html;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>Reads the file of a service visit and prints its sheet.</summary>
internal static class Program
{
    internal const int Done = 0;
    internal const int Refused = 2;
    internal const int Fault = 3;

    private const string HowToGoOn =
        "Another visit: dotnet run --project samples/ServiceVisit -- FILE "
        + "(a healthy machine: healthy instead of FILE; --list names more). "
        + "--html PAGE writes a page with charts, --json prints the sheet for machines, --help explains the file.";

    private static int Main(string[] args)
    {
        try
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        }
        catch (IOException)
        {
            // A console that keeps its own encoding shows a few signs as question marks; the sheet is still right.
        }

        return Run(args, Console.Out, Console.Error);
    }

    /// <summary>Everything but the console itself. Nothing is written to the output unless all went well.</summary>
    internal static int Run(string[] args, TextWriter output, TextWriter errors)
    {
        try
        {
            return Request.Parse(args, out string mistake) is { } request
                ? Answer(request, output, errors)
                : Refuse(errors, $"{mistake} {Request.Expected}");
        }
        catch (IOException)
        {
            errors.Write("The sheet could not be written: the output is full or closed.\n");
            return Fault;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            // A fault of the program, not of the file: told apart by its own exit code, without a stack in the user's face.
            errors.Write(
                $"A fault of this program, not of the visit file: {fault.GetType().Name}. Please report it.\n"
            );
            return Fault;
        }
    }

    private static int Answer(Request request, TextWriter output, TextWriter errors)
    {
        if (request.Help || request.List)
        {
            output.Write(request.Help ? HelpText.All : Bundled.Listed());
            return Done;
        }

        List<string> complaints = [];
        List<VisitFile> documents =
        [
            .. (request.Files.Count > 0 ? request.Files : [Bundled.Slipping])
                .Select(name => VisitSource.Read(name, complaints))
                .OfType<VisitFile>(),
        ];
        if (complaints.Count > 0)
        {
            return Refuse(errors, [.. complaints]);
        }

        return request.Compare
            ? Compared(documents[0], documents[1], request, output, errors)
            : Reviewed(documents[0], request, output, errors);
    }

    private static int Reviewed(VisitFile document, Request request, TextWriter output, TextWriter errors)
    {
        VisitSheet sheet = VisitReview.Of(document.Visit);
        if (request.Html is { } page)
        {
            string trouble =
                request.Files.Count > 0 && SameFile(page, request.Files[0])
                    ? $"{FileProblem.Printable(page)}: found the visit file itself; expected another name for the page."
                    : WholeFile.Write(page, VisitPage.Of(document, sheet));
            if (trouble.Length > 0)
            {
                return Refuse(errors, trouble);
            }
        }

        output.Write(
            request.Json ? JsonSheet.Of(document.MachineName, sheet, Forecast(document, sheet))
            : request.Html is { } written ? $"Page written: {FileProblem.Printable(written)}\n"
            : TextSheet.Of(document.MachineName, sheet, Forecast(document, sheet))
        );
        if (request is { Files.Count: 0, Json: false, Html: null })
        {
            Page end = new();
            end.Blank();
            end.Paragraph(HowToGoOn);
            output.Write(end.ToString());
        }

        return Done;
    }

    private static StepForecast Forecast(VisitFile document, VisitSheet sheet) =>
        StepForecast.Of(document.Visit, sheet, document.Dynamics);

    private static int Compared(VisitFile then, VisitFile now, Request request, TextWriter output, TextWriter errors)
    {
        IReadOnlyList<string> reasons = Comparable.Against(then, now);
        if (reasons.Count > 0)
        {
            return Refuse(errors, ["These two visits cannot be compared:", .. reasons]);
        }

        Comparison comparison = Comparison.Of(then, now);
        if (request.Html is { } page)
        {
            string trouble = request.Files.Any(file => SameFile(page, file))
                ? $"{FileProblem.Printable(page)}: found a visit file itself; expected another name for the page."
                : WholeFile.Write(page, ComparePage.Of(comparison));
            if (trouble.Length > 0)
            {
                return Refuse(errors, trouble);
            }
        }

        output.Write(
            request.Json ? CompareJson.Of(comparison)
            : request.Html is { } written ? $"Page written: {FileProblem.Printable(written)}\n"
            : CompareText.Of(comparison)
        );
        return Done;
    }

    private static bool SameFile(string one, string other)
    {
        try
        {
            return File.Exists(other)
                && string.Equals(Path.GetFullPath(one), Path.GetFullPath(other), StringComparison.Ordinal);
        }
        catch (Exception e) when (e is ArgumentException or IOException or NotSupportedException)
        {
            // A name that is no name: the writing that follows says so.
            return false;
        }
    }

    private static int Refuse(TextWriter errors, params string[] lines)
    {
        foreach (string line in lines)
        {
            errors.Write(line + "\n");
        }

        errors.Write("Nothing written.\n");
        return Refused;
    }
}
