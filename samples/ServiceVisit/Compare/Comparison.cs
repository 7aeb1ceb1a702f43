using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Compare;

/// <summary>Two visits to one machine, side by side.</summary>
internal sealed record Comparison
{
    public required VisitFile First { get; init; }

    public required VisitFile Second { get; init; }

    public required VisitSheet Then { get; init; }

    public required VisitSheet Now { get; init; }

    public required ImmutableArray<Change> Changes { get; init; }

    /// <summary>Turns given between the visits; null where the files do not tell.</summary>
    public required double? TurnsBetween { get; init; }

    /// <summary>Days between the visits; null where one of the files does not state its day.</summary>
    public required int? DaysBetween { get; init; }

    /// <summary>Findings of the first visit that the second does not have.</summary>
    public required ImmutableArray<Finding> Gone { get; init; }

    /// <summary>Findings of the second visit that the first did not have.</summary>
    public required ImmutableArray<Finding> New { get; init; }

    internal static Comparison Of(VisitFile first, VisitFile second)
    {
        VisitSheet then = VisitReview.Of(first.Visit);
        VisitSheet now = VisitReview.Of(second.Visit);
        string obstacle = Obstacle(first.Visit.TestDemand, second.Visit.TestDemand);
        return new()
        {
            First = first,
            Second = second,
            Then = then,
            Now = now,
            Changes =
            [
                .. Names(then, now)
                    .Select(name =>
                    {
                        ReadingRow? a = then.Readings.FirstOrDefault(row => row.Name == name);
                        ReadingRow? b = now.Readings.FirstOrDefault(row => row.Name == name);
                        return Change.Of(name, a, b, (b ?? a)!.OfTheTest() ? obstacle : "");
                    }),
            ],
            TurnsBetween = BoltTurns.Between(first.Visit, second.Visit),
            DaysBetween =
                first.Visit.Day is { } before && second.Visit.Day is { } day ? day.DayNumber - before.DayNumber : null,
            Gone = Only(then, now),
            New = Only(now, then),
        };
    }

    private static IEnumerable<string> Names(VisitSheet then, VisitSheet now) =>
        now.Readings.Concat(then.Readings).Where(static row => !OnlyNow(row)).Select(static row => row.Name).Distinct();

    /// <summary>What is only told of the machine as left has nothing to be compared with.</summary>
    private static bool OnlyNow(ReadingRow row) =>
        row.Kind is ReadingKind.BeltMargin or ReadingKind.DriveBeltMargin or ReadingKind.NoLoadPull;

    /// <summary>What was found graver than a note in one sheet, of a subject on which the other has nothing so grave.</summary>
    private static ImmutableArray<Finding> Only(VisitSheet one, VisitSheet other) =>
        [
            .. one.Findings.Where(finding =>
                finding.Severity > Severity.Note
                && !other.Findings.Any(f => f.Subject == finding.Subject && f.Severity >= finding.Severity)
            ),
        ];

    /// <summary>Why loads of the two visits cannot be compared; empty where they can.</summary>
    private static string Obstacle(Demand then, Demand now)
    {
        double share = VisitOptions.Default.SameSpeed.Value;
        bool same =
            Near(then.Person.Mass.Kilograms, now.Person.Mass.Kilograms, share)
            && Near(then.Speed.MetersPerSecond, now.Speed.MetersPerSecond, share)
            && Math.Abs(then.Grade.DecimalFractions - now.Grade.DecimalFractions) < 0.005;
        return same ? "" : "the two visits were tested under different demands";
    }

    private static bool Near(double a, double b, double share) => Math.Abs(a - b) <= share * Math.Max(a, b);

    /// <summary>Days from which a change is worth the word "in a year": over less it is mostly chance.</summary>
    private const int LeastDaysOfATrend = 60;

    /// <summary>A change beyond the noise as it would be in a year at this pace; null where that is not worth telling.</summary>
    internal Figure? InAYear(Change change) =>
        DaysBetween is { } days and >= LeastDaysOfATrend
        && change is { Trend: Trend.Worse or Trend.Better, Difference: { } difference }
            ? difference with
            {
                Name = "change in a year",
                Value = difference.Value * DaysOfAYear / days,
                StandardUncertainty = difference.StandardUncertainty * DaysOfAYear / days,
            }
            : null;

    /// <summary>How far apart the visits are, in words.</summary>
    internal string Apart =>
        DaysBetween switch
        {
            null => "Not known how far apart: one of the files does not state its day.",
            0 => "Both files are of one day: see that they are not one visit.",
            1 => "One day apart.",
            { } days => string.Create(CultureInfo.InvariantCulture, $"{days} days apart."),
        };

    private const double DaysOfAYear = 365.25;
}
