using TreadmillMech.Samples.Fleet.Reading;
using TreadmillMech.Studies;

namespace TreadmillMech.Samples.Fleet;

/// <summary>Computes the outputs of chunks of machines of one type, eight at a time, on all cores.</summary>
internal sealed class FleetPoints : IDisposable
{
    private readonly ChunkedBatch stream;
    private RowStatus[] statuses = [];

    /// <exception cref="FleetRefusedException">No row can have an answer.</exception>
    internal FleetPoints(IReadOnlyList<FleetColumn> columns)
    {
        Answer<Batch> batch = Study
            .Of(FleetType.Machine, FleetType.Demand)
            .Batch([.. columns.Select(column => column.Input)], FleetOutputs.All);
        stream = batch.Is(out Batch? found)
            ? found.Begin()
            : throw new FleetRefusedException($"No machine can have an answer: {batch.Missing}.");
    }

    /// <summary>Fills results and outcomes of a chunk.</summary>
    internal void Compute(Chunk chunk, CancellationToken cancellation)
    {
        int rows = chunk.Count;
        if (statuses.Length < rows)
        {
            statuses = new RowStatus[rows];
        }

        stream.Add(
            [.. chunk.Values.Select(column => (ReadOnlyMemory<double>)column.AsMemory(0, rows))],
            [.. chunk.Results.Select(column => column.AsMemory(0, rows))],
            statuses.AsMemory(0, rows),
            cancellation
        );
        for (int row = 0; row < rows; row++)
        {
            chunk.Outcomes[row] = Settle(chunk, row);
        }
    }

    public void Dispose() => stream.Dispose();

    private Outcome Settle(Chunk chunk, int row)
    {
        if (statuses[row] == RowStatus.Answered && !chunk.IsBad(row))
        {
            return Outcome.Answered;
        }

        Outcome outcome = chunk.IsBad(row) ? Outcome.BadValue : Outcome.NoAnswer;
        chunk.Blame(row, InWords(statuses[row]));
        foreach (double[] column in chunk.Results)
        {
            column[row] = double.NaN;
        }

        return outcome;
    }

    private static string InWords(RowStatus status) =>
        status switch
        {
            RowStatus.SlackBelt => "the belt is too loose for this demand",
            RowStatus.PartsOverlap => "the pulleys would overlap",
            RowStatus.DriveCannotBrake => "the user drives the belt and the controller cannot brake",
            RowStatus.MotorCannotReachSpeed => "the motor cannot reach the speed",
            RowStatus.CurrentLimit => "the pull needs more current than the controller allows",
            RowStatus.OutOfRange => "the foot strikes beyond the far roller",
            _ => "no number",
        };
}
