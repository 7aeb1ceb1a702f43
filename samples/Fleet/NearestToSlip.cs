using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet;

/// <summary>The machines nearest to slipping; keeps so many and no more, whatever the fleet.</summary>
internal sealed class NearestToSlip(int most)
{
    // The best of the kept ones is on top, to be pushed out first; of equal ones the later line.
    private readonly PriorityQueue<Ranked, (double Margin, long Line)> kept = new(
        Comparer<(double Margin, long Line)>.Create(
            static (a, b) => b.Margin.CompareTo(a.Margin) is var order && order != 0 ? order : b.Line.CompareTo(a.Line)
        )
    );

    /// <summary>The kept ones, nearest first.</summary>
    internal IReadOnlyList<Ranked> List =>
        [.. kept.UnorderedItems.Select(item => item.Element).OrderBy(one => one.Margin).ThenBy(one => one.Line)];

    internal void Add(Chunk chunk)
    {
        for (int row = 0; row < chunk.Count; row++)
        {
            if (chunk.Outcomes[row] == Outcome.Answered)
            {
                Add(
                    new Ranked(
                        chunk.Machines[row],
                        chunk.Lines[row],
                        chunk.Results[FleetOutputs.BeltMargin][row],
                        chunk.Results[FleetOutputs.DriveBeltMargin][row]
                    )
                );
            }
        }
    }

    private void Add(Ranked machine)
    {
        if (kept.Count < most)
        {
            kept.Enqueue(machine, (machine.Margin, machine.Line));
        }
        else if (most > 0)
        {
            kept.EnqueueDequeue(machine, (machine.Margin, machine.Line));
        }
    }
}
