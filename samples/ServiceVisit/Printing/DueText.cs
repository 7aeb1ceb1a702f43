using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>When to come back for the deck, by each way that tells it.</summary>
internal static class DueText
{
    internal static void Write(Page page, Answer<DueDate> due)
    {
        page.Heading("When to come back for the deck");
        if (!due.Is(out DueDate? known))
        {
            page.Paragraph($"No day: {Words.Of(due.Missing)}.", 2);
            return;
        }

        Line(page, "At the latest", Day(known.First));
        Line(page, "By the trend of friction", Trend(known));
        Line(page, "By use", Text(known.ByUse) + $"; {known.WorkLimit.Name} {known.WorkLimit}");
        Line(page, "Common interval", $"{Day(known.CommonPractice.First)} to {Day(known.CommonPractice.Last)}");
        Line(
            page,
            "Growth in a year",
            known.GrowthInAYear.Is(out Figure? g) ? $"{g}" : Words.Of(known.GrowthInAYear.Missing)
        );
        Line(
            page,
            "Waiting costs in a year",
            known.EnergyOfWaitingAYear.Is(out UnitsNet.Energy energy)
                ? string.Create(CultureInfo.InvariantCulture, $"{energy.KilowattHours:0} kWh from the mains")
                : Words.Of(known.EnergyOfWaitingAYear.Missing)
        );
    }

    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Trend(DueDate due)
    {
        string bounds = due.TrendBounds.Is(out (DateOnly First, DateOnly Last) between)
            ? $", between {Day(between.First)} and {Day(between.Last)}"
            : "";
        return $"{Text(due.ByTrend)}{bounds}; {due.Limit.Name} {due.Limit}";
    }

    private static string Text(Answer<DateOnly> day) => day.Is(out DateOnly known) ? Day(known) : Words.Of(day.Missing);

    private static void Line(Page page, string name, string value) =>
        page.Paragraph(value, 2, $"{name}: ".PadRight(27));
}
