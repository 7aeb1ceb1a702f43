using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>How far the running belt may still be tightened, and the ladder of quarter turns.</summary>
internal static class BudgetText
{
    internal static void Write(Page page, VisitSheet sheet)
    {
        TensionBudget budget = sheet.Budget;
        page.Heading("Tension budget");
        Line(page, "Turns used at this visit", $"{Turns(budget.TurnsThisVisit)} of at most {budget.MostTurns}");
        Line(page, "Turns at earlier visits", budget.EarlierTurns is { } turns ? Turns(turns) : "not known");
        Line(page, "Turns left", $"{Count(budget.TurnsLeft)}, limited by {budget.LimitedBy}");
        Line(page, "Thread left", budget.ThreadTurnsLeft is { } thread ? Count(thread) : "not known: not measured");
        Line(page, "Elongation by this visit", budget.StrainAdded.ToString());
        Line(page, "Strand tension now", Text(budget.Tension));
        Ladder(page, sheet);
    }

    private static void Ladder(Page page, VisitSheet sheet)
    {
        if (sheet.Ladder.IsEmpty)
        {
            return;
        }

        ReadOnlySpan<int> widths = [12, 16, 32, 32];
        page.Blank();
        page.Paragraph("From here, each take-up bolt turned by:", 2);
        page.Row(widths, "turns", "elongation", "strand tension", "margin under the test demand");
        foreach (LadderStep step in sheet.Ladder)
        {
            page.Row(widths, Turns(step.Turns), step.StrainAdded.ToString(), Text(step.Tension), Text(step.Margin));
        }
    }

    private static void Line(Page page, string name, string value) =>
        page.Paragraph(value, 2, $"{name}: ".PadRight(27));

    /// <summary>Turns that were or would be given: the sign says whether they tighten.</summary>
    private static string Turns(double turns) =>
        string.Create(CultureInfo.InvariantCulture, $"{turns:+0.##;-0.##;0} {Noun(turns)}");

    /// <summary>Turns that are there to be given.</summary>
    private static string Count(double turns) =>
        string.Create(CultureInfo.InvariantCulture, $"{turns:0.##} {Noun(turns)}");

    private static string Noun(double turns) => Math.Abs(turns) is > 0 and <= 1 ? "turn" : "turns";

    private static string Text(Answer<Figure> answer) =>
        answer.Is(out Figure? figure) ? figure.ToString() : Words.Of(answer.Missing);
}
