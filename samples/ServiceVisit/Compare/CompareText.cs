using System.Collections.Immutable;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Samples.ServiceVisit.Compare;

/// <summary>Two visits side by side, as text.</summary>
internal static class CompareText
{
    internal static string Of(Comparison comparison)
    {
        Page page = new();
        page.Paragraph($"Two visits: {comparison.Second.MachineName}");
        page.Heading("Verdicts");
        Verdict(page, "then", comparison.First, comparison.Then);
        Verdict(page, "now", comparison.Second, comparison.Now);
        page.Paragraph(comparison.Apart, 2);
        Readings(page, comparison.Changes);
        List(page, "Got worse", comparison, Trend.Worse);
        List(page, "Got better", comparison, Trend.Better);
        page.Heading("Findings");
        Findings(page, "new:  ", comparison.New);
        Findings(page, "gone: ", comparison.Gone);
        if (comparison.New.IsEmpty && comparison.Gone.IsEmpty)
        {
            page.Paragraph("Nothing graver than a note came or went.", 2);
        }

        page.Heading("Turns of the take-up bolts");
        page.Paragraph(Given(comparison.First), 2, "at the first visit:   ");
        page.Paragraph(Between(comparison), 2, "between the visits:   ");
        page.Paragraph(Given(comparison.Second), 2, "at the second visit:  ");
        page.Blank();
        page.Paragraph(comparison.Now.MakerFirst);
        return page.ToString();
    }

    internal const string HowToRead =
        "The change is what happened between the visits: as found now less as left then. It counts where it is more "
        + "than twice its standard uncertainty.";

    /// <summary>What a change means, in words.</summary>
    internal static string Meaning(Change change) =>
        change.Trend switch
        {
            Trend.Worse => "worse",
            Trend.Better => "better",
            Trend.Changed => "changed",
            Trend.Same => "within the noise",
            _ => change.Why,
        };

    internal static string Between(Comparison comparison) =>
        comparison.TurnsBetween is { } turns
            ? BudgetText.Turns(turns)
            : "not known: one of the files does not state earlierTurns";

    /// <summary>A finding in one line.</summary>
    internal static string Told(Finding finding) =>
        $"{Words.Of(finding.Subject)} ({Words.Of(finding.Severity)}): {finding.Statement}";

    internal static string Given(VisitFile document) =>
        BudgetText.Turns(BoltTurns.By(TurnedBy.Technician, document.Visit));

    private static void Verdict(Page page, string when, VisitFile document, VisitSheet sheet)
    {
        string day = document.Visit.Day is { } then ? $", {DayText.Of(then)}" : "";
        page.Paragraph(sheet.VerdictText, 2, $"{when}{day}: ");
    }

    private static void Readings(Page page, ImmutableArray<Change> changes)
    {
        ReadOnlySpan<int> widths = [27, 14, 14, 14, 17];
        page.Heading("Readings");
        page.Paragraph(HowToRead, 2);
        page.Blank();
        page.Row(widths, "", "as left then", "as found now", "change", "meaning");
        foreach (Change change in changes)
        {
            page.Row(
                widths,
                change.Name,
                change.Then?.ToString() ?? "-",
                change.Found?.ToString() ?? "-",
                change.Difference?.ToString() ?? "-",
                Meaning(change)
            );
        }

        if (changes.IsEmpty)
        {
            page.Paragraph("None.", 2);
        }
    }

    private static void List(Page page, string heading, Comparison comparison, Trend trend)
    {
        page.Heading(heading);
        page.List(Sentences(comparison, trend), Nothing);
    }

    internal const string Nothing = "Nothing beyond the noise of the readings.";

    /// <summary>What went one way, each in a sentence, with its pace where the visits lie far enough apart.</summary>
    internal static IEnumerable<string> Sentences(Comparison comparison, Trend trend) =>
        comparison
            .Changes.Where(change => change.Trend == trend)
            .Select(change =>
                $"{change.Name}: {change.Then}, now {change.Found}"
                + (change.Left is { } left && left != change.Found ? $", left at {left}" : "")
                + (comparison.InAYear(change) is { } pace ? $"; at this pace {pace} in a year" : "")
                + "."
            );

    private static void Findings(Page page, string mark, ImmutableArray<Finding> findings)
    {
        foreach (Finding finding in findings)
        {
            page.Paragraph(Told(finding), 2, mark);
        }
    }
}
