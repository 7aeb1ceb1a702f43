using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Compare;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>Two visits side by side as one page, for the technician. It needs no network and no script.</summary>
internal static class ComparePage
{
    internal static string Of(Comparison comparison)
    {
        Markup page = new();
        page.Raw("<!DOCTYPE html>\n");
        page.Open("html", ("lang", "en"));
        VisitPage.Head(page, $"Two service visits: {comparison.Second.MachineName}");
        page.Open("body").Open("main");
        page.Open("header").Element("h1", comparison.Second.MachineName);
        page.Element("p", $"Two service visits. {comparison.Apart}", ("class", "quiet"));
        page.Close();
        Visit(page, "Then", comparison.First, comparison.Then);
        Visit(page, "Now", comparison.Second, comparison.Now);
        List(page, "Got worse", comparison, Trend.Worse);
        List(page, "Got better", comparison, Trend.Better);
        Findings(page, "New findings", comparison.New);
        Findings(page, "Findings that are gone", comparison.Gone);
        page.Element("h2", "Readings");
        page.Element("p", CompareText.HowToRead, ("class", "quiet"));
        ReadingHtml.Table(
            page,
            ["Reading", "As left then", "As found now", "Change", "Meaning"],
            comparison.Changes.Select(static change =>
                (string[])
                    [
                        change.Name,
                        change.Then?.ToString() ?? "-",
                        change.Found?.ToString() ?? "-",
                        change.Difference?.ToString() ?? "-",
                        CompareText.Meaning(change),
                    ]
            )
        );
        page.Element("p", Words.PlusMinus, ("class", "quiet"));
        page.Element("h2", "Turns of the take-up bolts");
        page.Open("dl", ("class", "rows"));
        TechnicianPart.Row(page, "At the first visit", CompareText.Given(comparison.First));
        TechnicianPart.Row(page, "Between the visits", CompareText.Between(comparison));
        TechnicianPart.Row(page, "At the second visit", CompareText.Given(comparison.Second));
        page.Close();
        page.Element("p", comparison.Now.MakerFirst, ("class", "quiet"));
        page.Close().Close().Close();
        return page.ToString();
    }

    private static void Visit(Markup page, string when, VisitFile document, VisitSheet sheet)
    {
        page.Element("h2", document.Visit.Day is { } day ? $"{when}, {DayText.Of(day)}" : when);
        VisitPage.Verdict(page, sheet.Verdict, sheet.VerdictText);
    }

    private static void List(Markup page, string heading, Comparison comparison, Trend trend)
    {
        page.Element("h2", heading);
        List<string> sentences = [.. CompareText.Sentences(comparison, trend)];
        if (sentences.Count == 0)
        {
            page.Element("p", CompareText.Nothing);
        }
        else
        {
            page.List("ul", sentences);
        }
    }

    private static void Findings(Markup page, string heading, IReadOnlyCollection<Finding> findings)
    {
        page.Element("h2", heading);
        if (findings.Count == 0)
        {
            page.Element("p", "None graver than a note.");
        }
        else
        {
            page.List("ul", findings.Select(CompareText.Told));
        }
    }
}
