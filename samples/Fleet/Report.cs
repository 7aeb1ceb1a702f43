using System.Globalization;
using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet;

/// <summary>What is told about a fleet at the end.</summary>
internal static class Report
{
    internal static void Write(TextWriter output, Tally tally, NearestToSlip nearest)
    {
        CultureInfo culture = CultureInfo.InvariantCulture;
        output.Write(
            string.Create(
                culture,
                $"""
                {tally.Rows:N0} machines
                  {tally.Of(Outcome.Answered), 12:N0} with margins
                  {tally.Slipping, 12:N0}   of them slip: a margin below 1
                  {tally.BelowWanted, 12:N0}   of them are below {tally.Wanted:0.00}, the margin wanted
                  {tally.Of(Outcome.BadValue), 12:N0} with a value that cannot be used
                  {tally.Of(Outcome.NoAnswer), 12:N0} without an answer

                """
            )
        );
        foreach ((string reason, long count) in tally.Reasons)
        {
            output.Write(string.Create(culture, $"  {count, 12:N0}   {reason}\n"));
        }

        if (nearest.List.Count == 0)
        {
            return;
        }

        output.Write("\nNearest to slipping\n");
        int width = Math.Max("machine".Length, nearest.List.Max(one => one.Machine.Length));
        output.Write($"  {"".PadLeft(4)}  {"machine".PadRight(width)}  margin  first to slip\n");
        int place = 0;
        foreach (Ranked one in nearest.List)
        {
            output.Write(
                string.Create(
                    culture,
                    $"  {++place, 4}  {one.Machine.PadRight(width)}  {one.Margin, 6:0.000}  {one.FirstToSlip}\n"
                )
            );
        }

        output.Write(
            """

            A list of where to look first, no finding: measure before you turn a bolt, and not while the belt moves.
            The maker's manual comes first.

            """
        );
    }
}
