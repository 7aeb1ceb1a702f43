using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>How far the running belt may still be tightened, and the ladder of quarter turns.</summary>
internal static class BudgetText
{
    internal static void Write(Page page, VisitSheet sheet)
    {
        page.Heading("Tension budget");
        foreach ((string name, string value) in Lines(sheet.Budget))
        {
            page.Paragraph(value, 2, $"{name}: ".PadRight(27));
        }

        Ladder(page, sheet);
    }

    /// <summary>The budget as names and values.</summary>
    internal static IEnumerable<(string Name, string Value)> Lines(TensionBudget budget) =>
        [
            ("Turns used at this visit", $"{Turns(budget.TurnsThisVisit)} of at most {budget.MostTurns}"),
            ("Turns at earlier visits", budget.EarlierTurns is { } turns ? Turns(turns) : "not known"),
            ("Turns left", $"{Count(budget.TurnsLeft)}, limited by {budget.LimitedBy}"),
            (
                "Thread left",
                budget.ThreadTurnsLeft is { } thread ? Count(Math.Floor(10 * thread) / 10) : "not known: not measured"
            ),
            ("Elongation by this visit", budget.StrainAdded.ToString()),
            ("Strand tension now", Text(budget.Tension)),
        ];

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

    /// <summary>Turns that were or would be given: the sign says whether they tighten.</summary>
    internal static string Turns(double turns) =>
        string.Create(CultureInfo.InvariantCulture, $"{turns:+0.##;-0.##;0} {Noun(turns)}");

    /// <summary>Turns that are there to be given.</summary>
    private static string Count(double turns) =>
        string.Create(CultureInfo.InvariantCulture, $"{turns:0.##} {Noun(turns)}");

    private static string Noun(double turns) => Math.Abs(turns) is > 0 and <= 1 ? "turn" : "turns";

    internal static string Text(Answer<Figure> answer) =>
        answer.Is(out Figure? figure) ? figure.ToString() : Words.Of(answer.Missing);
}
