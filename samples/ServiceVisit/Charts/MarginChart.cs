using System.Collections.Immutable;
using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>What turns of the bolts do: margins of both belts, or where no margin is known, the strand tension.</summary>
internal static class MarginChart
{
    private const string Turns = "turns on both bolts from now";

    /// <summary>Margin against turns; null where no margin of the running belt is known.</summary>
    internal static LineChart? Of(VisitSheet sheet)
    {
        ImmutableArray<LadderStep> ladder = sheet.Ladder;
        ImmutableArray<Spot> belt = Spots(ladder, static step => step.Margin);
        if (belt.IsEmpty)
        {
            return null;
        }

        List<Series> series = [new("running belt", Sign.Dot, true, belt)];

        // Turns of the running belt's bolts do not reach the drive belt: its margin is the same at each.
        if (sheet.DriveBeltMargin.Is(out Figure? drive) && double.IsFinite(drive.Value))
        {
            Spot now = new(ladder[0].Turns, drive.Value, Nameless(drive));
            series.Add(
                new(
                    "drive belt",
                    Sign.OpenSquare,
                    true,
                    ladder.Length > 1 ? [now, now with { X = ladder[^1].Turns }] : [now]
                )
            );
        }

        return new()
        {
            Title = "Margin against slip under the test demand",
            Description = Told(series, "below 1 it slips"),
            Along = Turns,
            Up = "margin (pull that can be held over pull that is needed)",
            Series = [.. series],
            Across = [new("below 1 it slips", 1)],
        };
    }

    /// <summary>Strand tension against turns; null where it is not known.</summary>
    internal static LineChart? Tension(ImmutableArray<LadderStep> ladder)
    {
        ImmutableArray<Spot> tension = Spots(ladder, static step => step.Tension);
        return tension.IsEmpty
            ? null
            : new()
            {
                Title = "Strand tension against turns",
                Description = Told([new("strand tension in newtons", Sign.Dot, true, tension)], "at rest"),
                Along = Turns,
                Up = "N",
                Series = [new("strand tension at rest", Sign.Dot, true, tension)],
            };
    }

    private static ImmutableArray<Spot> Spots(
        ImmutableArray<LadderStep> ladder,
        Func<LadderStep, Answer<Figure>> value
    ) =>
        [
            .. ladder
                .Where(step => value(step).Found)
                .Select(step => new Spot(step.Turns, value(step).Value.Value, Nameless(value(step).Value))),
        ];

    /// <summary>The unit stands at the axis.</summary>
    private static Figure Nameless(Figure figure) => figure with { Name = "", Unit = "" };

    private static string Told(IEnumerable<Series> series, string end) =>
        string.Join(
            "; ",
            series.Select(static s =>
                $"{s.Name}: "
                + string.Join(
                    ", ",
                    s.Spots.Select(static p =>
                        string.Create(CultureInfo.InvariantCulture, $"{p.Words} at {p.X:0.##} turns")
                    )
                )
            )
        ) + $"; {end}.";
}
