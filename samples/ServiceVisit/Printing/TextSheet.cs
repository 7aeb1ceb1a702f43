using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The sheet as a page to read on the spot: what matters first stands first.</summary>
internal static class TextSheet
{
    internal static string Of(string machineName, VisitSheet sheet, StepForecast? forecast = null, DateOnly? day = null)
    {
        Page page = new();
        page.Paragraph($"Visit sheet: {machineName}");
        page.Heading($"Verdict: {Words.Of(sheet.Verdict)}");
        page.Paragraph(sheet.VerdictText, 2);
        page.Heading("Safety now");
        page.List(sheet.SafetyNow, "Nothing beyond the maker's own cautions.");
        NextSteps(page, sheet);
        FindingText.Write(page, sheet.Findings);
        CauseText.Write(page, SheetExtras.Causes(sheet), sheet.ChancesFrom);
        Readings(page, sheet);
        BudgetText.Write(page, sheet);
        ForecastText.Write(page, forecast);
        DueText.Write(page, sheet.Due, day);
        page.Heading("What one more reading would settle");
        page.List(sheet.OneMoreReading.Select(Proposal), "Nothing that is worth the time.");
        page.Heading("What the readings do not tell");
        page.List(
            sheet.NotTold.Select(static name => $"{char.ToUpperInvariant(name[0])}{name[1..]}."),
            "Nothing of what is asked here."
        );
        page.Heading("Readings not used");
        page.List(sheet.Refused.Select(Refused), "None: all readings were used.");
        page.Heading("Notices");
        page.List(sheet.Notices, "None: every relation was used inside the range it was fitted on.");
        page.Heading("For the owner");
        foreach (string paragraph in sheet.OwnerPage)
        {
            page.Paragraph(paragraph, 2);
        }

        page.Blank();
        page.Paragraph(sheet.MakerFirst);
        return page.ToString();
    }

    private static void NextSteps(Page page, VisitSheet sheet)
    {
        page.Heading("What to do next");
        int number = 0;
        foreach (NextStep step in sheet.NextSteps)
        {
            number++;
            Step(page, step, string.Create(CultureInfo.InvariantCulture, $"{number}. "), 2);
        }

        if (number == 0)
        {
            page.Paragraph("Nothing at this visit.", 2);
        }
    }

    private static void Step(Page page, NextStep step, string mark, int indent)
    {
        page.Paragraph(step.Action, indent, mark);
        int under = indent + mark.Length;
        page.Paragraph(step.Expect, under, "At the retest: ");
        page.Paragraph(step.StopAt, under, "Stop at:       ");
        if (step.Undo is { } undo)
        {
            page.Paragraph(undo, under, "To undo:       ");
        }

        foreach (string caution in step.Cautions)
        {
            page.Paragraph(caution, under, "Caution:       ");
        }
    }

    private static void Readings(Page page, VisitSheet sheet)
    {
        ReadOnlySpan<int> widths = [22, 24, 24, 22];
        page.Heading("Readings");
        page.Row(widths, "", "as found", "as left", "reference");
        foreach (ReadingRow row in sheet.Readings)
        {
            page.Row(
                widths,
                row.Name,
                row.AsFound?.ToString() ?? "-",
                row.AsLeft?.ToString() ?? "-",
                row.Reference is { } limit ? $"{limit.Name} {limit}" : "-"
            );
        }

        page.Paragraph(sheet.Readings.IsEmpty ? "None." : Words.PlusMinus, 2);
    }

    internal static string Proposal(ReadingProposal proposal) =>
        string.Create(
                CultureInfo.InvariantCulture,
                $"{proposal.Reading} About {proposal.Minutes} min. It settles: {proposal.Settles} {proposal.Gain}"
            )
            .TrimEnd();

    internal static string Refused(RefusedReading refused) =>
        string.Create(CultureInfo.InvariantCulture, $"Event {refused.Event + 1}, {refused.Name}: {refused.Why}");
}
