using TreadmillMech.Samples.Fleet.Reading;
using TreadmillMech.Samples.Fleet.Writing;

namespace TreadmillMech.Samples.Fleet;

/// <summary>Reads a fleet, computes its margins, writes them: one chunk in memory at a time.</summary>
internal static class FleetRun
{
    internal static async Task RunAsync(
        IFleetReader reader,
        IMarginWriter writer,
        Tally tally,
        NearestToSlip nearest,
        ProgressLine progress,
        CancellationToken cancellation
    )
    {
        using FleetPoints points = new(reader.Columns);
        Chunk chunk = new(reader.Columns, 0);
        while (await reader.NextAsync(chunk, cancellation).ConfigureAwait(false))
        {
            points.Compute(chunk, cancellation);
            tally.Add(chunk, reader.LineWord);
            nearest.Add(chunk);
            await writer.WriteAsync(chunk, cancellation).ConfigureAwait(false);
            progress.Show(reader.Done, tally.Rows);
        }

        progress.Show(1, tally.Rows, last: true);
    }
}
