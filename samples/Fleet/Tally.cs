using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet;

/// <summary>Counts over the fleet, and the first rows that could not be used.</summary>
internal sealed class Tally(double wanted, int mostReports)
{
    private readonly long[] outcomes = new long[Enum.GetValues<Outcome>().Length];
    private readonly SortedDictionary<string, long> reasons = new(StringComparer.Ordinal);
    private readonly List<string> reports = [];

    /// <summary>Margin below which a machine wants work [1].</summary>
    internal double Wanted => wanted;

    internal long Rows => outcomes.Sum();

    /// <summary>Machines whose lesser margin is below 1: a belt slips for a moment in each step.</summary>
    internal long Slipping { get; private set; }

    /// <summary>Machines below the wanted margin, slipping ones included.</summary>
    internal long BelowWanted { get; private set; }

    /// <summary>How many rows each column, or reason, has spoilt.</summary>
    internal IReadOnlyDictionary<string, long> Reasons => reasons;

    /// <summary>The first rows without margins, by line and column.</summary>
    internal IReadOnlyList<string> Reports => reports;

    internal long Of(Outcome outcome) => outcomes[(int)outcome];

    internal void Add(Chunk chunk, string lineWord)
    {
        for (int row = 0; row < chunk.Count; row++)
        {
            outcomes[(int)chunk.Outcomes[row]]++;
            if (chunk.Outcomes[row] == Outcome.Answered)
            {
                double margin = Math.Min(
                    chunk.Results[FleetOutputs.BeltMargin][row],
                    chunk.Results[FleetOutputs.DriveBeltMargin][row]
                );
                Slipping += margin < 1 ? 1 : 0;
                BelowWanted += margin < wanted ? 1 : 0;
                continue;
            }

            string trouble = chunk.Trouble(row);
            int colon = trouble.IndexOf(':', StringComparison.Ordinal);
            string reason = colon < 0 ? trouble : trouble[..colon];
            reasons[reason] = reasons.GetValueOrDefault(reason) + 1;
            if (reports.Count < mostReports)
            {
                string machine = chunk.Machines[row].Length == 0 ? "" : $", {chunk.Machines[row]}";
                reports.Add($"{lineWord} {chunk.Lines[row]}{machine}: {trouble}");
            }
        }
    }
}
