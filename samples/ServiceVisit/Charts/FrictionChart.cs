using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>Deck friction over the visits to a machine, with the day on which service is due where there is one.</summary>
internal static class FrictionChart
{
    /// <summary>The chart; null where fewer than two visits tell a friction and a day.</summary>
    internal static LineChart? Of(Visit visit, VisitSheet sheet, DateOnly? due)
    {
        ReadingRow? now = sheet.Find(ReadingKind.DeckFriction);
        List<(DateOnly Day, Spot Spot, string When)> known =
        [
            .. visit
                .Earlier.Where(static e => e.DeckFriction is not null)
                .Select(static e =>
                    (e.Day, At(e.Day, new("", e.DeckFriction!.Value, "", e.FrictionUncertainty)), "as left")
                ),
        ];
        if (visit.Day is { } day)
        {
            (Figure? Figure, string When)[] today = [(now?.AsFound, "as found"), (now?.AsLeft, "as left")];
            known.AddRange(
                today.Where(static t => t.Figure is not null).Select(t => (day, At(day, t.Figure!), t.When))
            );
        }

        if (known.Select(static k => k.Day).Distinct().Count() < 2)
        {
            return null;
        }

        Threshold? limit = now?.Reference;
        return new()
        {
            Title = "Deck friction over the visits",
            Description = Told(known, limit, due),
            Along = "day",
            Up = "deck friction",
            Series = [new("deck friction, as read", Sign.Dot, true, [.. known.Select(static k => k.Spot)])],
            Across = limit is null ? [] : [new($"service above {new Figure("", limit.Value, "")}", limit.Value)],
            Upright = due is { } then ? [new($"due {DayText.Of(then)}", then.DayNumber)] : [],
            Right = DayAxis.Of([.. known.Select(static k => k.Day), .. Days(due)]),
        };
    }

    private static Spot At(DateOnly day, Figure friction) => new(day.DayNumber, friction.Value, friction);

    private static ImmutableArray<DateOnly> Days(DateOnly? due) => due is { } day ? [day] : [];

    private static string Told(
        IEnumerable<(DateOnly Day, Spot Spot, string When)> known,
        Threshold? limit,
        DateOnly? due
    ) =>
        string.Join("; ", known.Select(static k => $"{DayText.Of(k.Day)} {k.When}: {k.Spot.Words}"))
        + (limit is null ? "" : $"; service above {new Figure("", limit.Value, "")}")
        + (due is { } day ? $"; due {DayText.Of(day)}." : ".");
}
