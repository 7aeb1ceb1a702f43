using System.Text;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Samples.ServiceVisit.Reading;
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
        + "(a healthy machine: samples/ServiceVisit/Visits/healthy.json). "
        + "--json prints the sheet for machines, --help explains the file.";

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
            return Request.Parse(args) is { } request
                ? Answer(request, output, errors)
                : Refuse(errors, $"{Request.Mistake(args)} Expected: [FILE] [--json], or --help.");
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
        if (request.Help)
        {
            output.Write(HelpText.All);
            return Done;
        }

        string name = request.File ?? Bundled.Slipping;
        byte[]? bytes = request.File is { } file
            ? FileBytes.Read(file, out string trouble)
            : Bundled.Read(name, out trouble);
        if (bytes is null)
        {
            return Refuse(errors, trouble);
        }

        Problems problems = new();
        VisitDocument? document = VisitReader.Read(bytes, problems);
        if (document is null)
        {
            return Refuse(errors, [.. problems.Describe(name)]);
        }

        VisitSheet sheet = VisitReview.Of(document.Visit);
        output.Write(
            request.Json ? JsonSheet.Of(document.MachineName, sheet) : TextSheet.Of(document.MachineName, sheet)
        );
        if (request.File is null && !request.Json)
        {
            Page end = new();
            end.Blank();
            end.Paragraph(HowToGoOn);
            output.Write(end.ToString());
        }

        return Done;
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
