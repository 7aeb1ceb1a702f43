using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>When to come back for the deck, by each way that tells it.</summary>
internal static class DueText
{
    internal const string Heading = "When to come back for the deck";

    internal static void Write(Page page, Answer<DueDate> due, DateOnly? visit)
    {
        page.Heading(Heading);
        if (!due.Is(out DueDate? known))
        {
            page.Paragraph($"No day: {Words.Of(due.Missing)}.", 2);
            return;
        }

        foreach ((string name, string value) in Lines(known, visit))
        {
            page.Paragraph(value, 2, $"{name}: ".PadRight(27));
        }
    }

    internal static IEnumerable<(string Name, string Value)> Lines(DueDate known, DateOnly? visit)
    {
        yield return ("At the latest", known.First <= visit ? $"now; due since {Day(known.First)}" : Day(known.First));
        yield return ("By the trend of friction", Trend(known));
        yield return ("By use", Text(known.ByUse) + $"; {known.WorkLimit.Name} {known.WorkLimit}");
        yield return ("Common interval", $"{Day(known.CommonPractice.First)} to {Day(known.CommonPractice.Last)}");
        yield return (
            "Growth in a year",
            known.GrowthInAYear.Is(out Figure? g) ? $"{g}" : Words.Of(known.GrowthInAYear.Missing)
        );
        yield return (
            "Waiting costs in a year",
            known.EnergyOfWaitingAYear.Is(out UnitsNet.Energy energy)
                ? string.Create(CultureInfo.InvariantCulture, $"{energy.KilowattHours:0} kWh from the mains")
                : Words.Of(known.EnergyOfWaitingAYear.Missing)
        );
        yield return ("Waiting wears in a year", Wear(known));
    }

    /// <summary>Friction work of a year without service beside that of a served deck.</summary>
    private static string Wear(DueDate due) =>
        due.WorkOfWaitingAYear.Is(out Figure? waiting) && due.WorkOfAServedYear.Is(out Figure? served)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{waiting} of friction work for each belt area, {waiting.Value / served.Value:0.0} times that of a deck kept served; wear goes with that work at the least"
            )
            : Words.Of(due.WorkOfWaitingAYear.Missing);

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Trend(DueDate due)
    {
        string bounds = due.TrendBounds.Is(out (DateOnly First, DateOnly Last) between)
            ? $", between {Day(between.First)} and {Day(between.Last)}"
            : "";
        return $"{Text(due.ByTrend)}{bounds}; {due.Limit.Name} {due.Limit}";
    }

    private static string Text(Answer<DateOnly> day) => day.Is(out DateOnly known) ? Day(known) : Words.Of(day.Missing);
}
