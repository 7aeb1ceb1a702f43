using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Compare;

/// <summary>What a change means.</summary>
internal enum Trend
{
    /// <summary>Not more than the readings' noise.</summary>
    Same = 0,

    /// <summary>More than the noise, and neither good nor bad in itself.</summary>
    Changed,

    Better,

    Worse,

    /// <summary>A difference whose noise is not known.</summary>
    NotJudged,

    /// <summary>Not to be compared.</summary>
    NotComparable,
}

/// <summary>One reading of two visits: as the first left it, as the second found it and left it.</summary>
/// <param name="Name">What was read.</param>
/// <param name="Then">As the first visit left it; null where it was not read.</param>
/// <param name="Found">As the second visit found it; null where it was not read.</param>
/// <param name="Left">As the second visit left it; null where it was not read.</param>
/// <param name="Difference">What happened between the visits; null where one of the two is missing.</param>
/// <param name="Trend">What it means.</param>
/// <param name="Why">Why it is not compared, or not judged; empty where it is.</param>
internal sealed record Change(
    string Name,
    Figure? Then,
    Figure? Found,
    Figure? Left,
    Figure? Difference,
    Trend Trend,
    string Why
)
{
    internal static Change Of(string name, ReadingRow? then, ReadingRow? now, string obstacle)
    {
        Figure? before = then?.AsLeft;
        Figure? found = now?.AsFound;
        if (before is null || found is null)
        {
            return new(name, before, found, now?.AsLeft, null, Trend.NotComparable, Missing(before, found));
        }

        double? noise = Noise.OfDifference(now!, before, found);
        Figure difference = new("change", found.Value - before.Value, found.Unit, noise);
        return obstacle.Length > 0 ? new(name, before, found, now?.AsLeft, null, Trend.NotComparable, obstacle)
            : noise is null
                ? new(
                    name,
                    before,
                    found,
                    now?.AsLeft,
                    difference,
                    Trend.NotJudged,
                    "the readings' uncertainty is not stated"
                )
            : Math.Abs(difference.Value) <= Noise.Coverage * noise
                ? new(name, before, found, now?.AsLeft, difference, Trend.Same, "")
            : new(name, before, found, now?.AsLeft, difference, Judge(now!, before.Value, found.Value), "");
    }

    private static Trend Judge(ReadingRow row, double then, double now) =>
        row.Kind switch
        {
            ReadingKind.DeckFriction
            or ReadingKind.BeltSlip
            or ReadingKind.DriveSlip
            or ReadingKind.WholeSlip
            or ReadingKind.MotorCurrent
            or ReadingKind.MainsCurrent
            or ReadingKind.MainsPower
            or ReadingKind.Slowing => now > then ? Trend.Worse : Trend.Better,
            ReadingKind.RollerFriction => now > then ? Trend.Better : Trend.Worse,
            ReadingKind.DisplayError or ReadingKind.Drift => Math.Abs(now) > Math.Abs(then)
                ? Trend.Worse
                : Trend.Better,
            _ => Trend.Changed,
        };

    private static string Missing(Figure? then, Figure? now) =>
        (then, now) switch
        {
            (null, null) => "neither read as left then nor as found now",
            (null, _) => "not read as left then",
            _ => "not read as found now",
        };
}
