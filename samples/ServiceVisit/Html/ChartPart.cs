using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Charts;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>The charts of both parts. What a visit does not tell is not drawn, and is named instead.</summary>
internal static class ChartPart
{
    internal static void ForTechnician(Markup page, Visit visit, VisitSheet sheet)
    {
        page.Element("h3", "Charts");
        page.Element(
            "p",
            "Bars on a value are its standard uncertainty; of a bent interval each side has its own. Changes within the noise of their readings are not drawn.",
            ("class", "quiet")
        );
        LineChart? margin = MarginChart.Of(sheet);
        if (margin is null && sheet.Ladder is [{ } rung, ..])
        {
            string further = sheet.OneMoreReading is [var first, ..] ? $" What would help first: {first.Reading}" : "";
            page.Element("p", $"No chart of the running belt's margin: {Words.Of(rung.Margin.Missing)}.{further}");
        }
        else if (margin is not null && sheet is { MachineAsLeft.DriveBelt: not null, DriveBeltMargin.Found: false })
        {
            page.Element(
                "p",
                $"The drive belt's margin is not on the chart: {Words.Of(sheet.DriveBeltMargin.Missing)}."
            );
        }

        page.Open("div", ("class", "charts"));
        Pairs(page, "This visit: as found and as left", BeforeAfter.ForTechnician(sheet), "as found", "as left");
        Draw(page, margin ?? MarginChart.Tension(sheet.Ladder));
        BudgetBar.Write(page, sheet.Budget);
        Draw(page, LoadChart.OfCurrent(visit, sheet));
        Draw(page, LoadChart.OfPower(visit, sheet));
        Draw(page, FrictionChart.Of(visit, sheet, SheetExtras.DeckDue(sheet)));
        page.Close();
    }

    internal static void ForOwner(Markup page, VisitSheet sheet)
    {
        ImmutableArray<Pair> pairs = BeforeAfter.ForOwner(sheet);
        if (!pairs.IsEmpty)
        {
            page.Open("div", ("class", "charts"));
            Pairs(page, "Before and after this visit", pairs, "before", "after");
            page.Close();
        }
    }

    private static void Draw(Markup page, LineChart? chart)
    {
        if (chart is not null)
        {
            LinePlot.Write(page, chart);
        }
    }

    private static void Pairs(Markup page, string title, ImmutableArray<Pair> pairs, string before, string after)
    {
        if (!pairs.IsEmpty)
        {
            PairBars.Write(page, title, pairs, before, after);
        }
    }
}
