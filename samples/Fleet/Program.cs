using TreadmillMech.Samples.Fleet.Reading;
using TreadmillMech.Samples.Fleet.Writing;

namespace TreadmillMech.Samples.Fleet;

/// <summary>Margins of a fleet from a file.</summary>
internal static class Program
{
    internal const int Done = 0;
    internal const int Refused = 2;
    internal const int Fault = 3;
    private const int MostReports = 20;

    private static Task<int> Main(string[] args) =>
        RunAsync(args, Console.Out, Console.Error, Console.IsErrorRedirected ? null : Console.Error);

    internal static async Task<int> RunAsync(string[] args, TextWriter output, TextWriter errors, TextWriter? terminal)
    {
        try
        {
            Request request = Request.Parse(args);
            if (request.ShowHelp)
            {
                await output.WriteLineAsync(Request.Help).ConfigureAwait(false);
            }
            else if (request.Make)
            {
                await InventedFleet.WriteAsync(request, new(terminal)).ConfigureAwait(false);
            }
            else
            {
                await MarginsAsync(request, output, errors, terminal).ConfigureAwait(false);
            }

            return Done;
        }
        catch (FleetRefusedException refused)
        {
            await errors.WriteLineAsync(refused.Message).ConfigureAwait(false);
            return Refused;
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            await errors.WriteLineAsync(missing.Message).ConfigureAwait(false);
            return Refused;
        }
        catch (IOException fault)
        {
            await errors.WriteLineAsync($"A file could not be read or written: {fault.Message}").ConfigureAwait(false);
            return Fault;
        }
    }

    private static async Task MarginsAsync(Request request, TextWriter output, TextWriter errors, TextWriter? terminal)
    {
        using CancellationTokenSource stop = new();
        IFleetReader reader = request.File is { } file
            ? await IFleetReader.OpenAsync(file, stop.Token).ConfigureAwait(false)
            : new CsvFleet(Bundled());
        Tally tally = new(request.Wanted, MostReports);
        NearestToSlip nearest = new(request.Worst);
        await using (reader.ConfigureAwait(false))
        {
            IMarginWriter writer = await IMarginWriter.OpenAsync(request.Out, stop.Token).ConfigureAwait(false);
            await using (writer.ConfigureAwait(false))
            {
                await FleetRun
                    .RunAsync(reader, writer, tally, nearest, new(terminal), stop.Token)
                    .ConfigureAwait(false);
            }
        }

        foreach (string report in tally.Reports)
        {
            await errors.WriteLineAsync(report).ConfigureAwait(false);
        }

        long more = tally.Rows - tally.Of(Outcome.Answered) - tally.Reports.Count;
        if (more > 0)
        {
            await errors.WriteLineAsync($"and {more} more, counted below").ConfigureAwait(false);
        }

        Report.Write(output, tally, nearest);
    }

    private static Stream Bundled() =>
        typeof(Program).Assembly.GetManifestResourceStream("example.csv")
        ?? throw new InvalidOperationException("The bundled example is missing.");
}
