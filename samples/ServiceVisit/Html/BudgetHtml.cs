using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>The tension budget in numbers, and the ladder of quarter turns.</summary>
internal static class BudgetHtml
{
    internal static void Write(Markup page, VisitSheet sheet)
    {
        page.Element("h3", "Tension budget");
        page.Open("dl", ("class", "rows"));
        foreach ((string name, string value) in BudgetText.Lines(sheet.Budget))
        {
            TechnicianPart.Row(page, name, value);
        }

        page.Close();
        if (sheet.Ladder.IsEmpty)
        {
            return;
        }

        Ladder(page, sheet.Ladder);
    }

    /// <summary>The ladder; what is known on no rung is said once instead of in every row.</summary>
    private static void Ladder(Markup page, ImmutableArray<LadderStep> ladder)
    {
        (string Head, Func<LadderStep, Answer<Figure>> Value)[] answers =
        [
            ("Strand tension", static step => step.Tension),
            ("Margin, test demand", static step => step.Margin),
        ];
        foreach ((string head, Func<LadderStep, Answer<Figure>> value) in answers)
        {
            if (!ladder.Any(step => value(step).Found))
            {
                page.Element("p", $"{head}: {BudgetText.Text(value(ladder[0]))}.");
            }
        }

        answers = [.. answers.Where(answer => ladder.Any(step => answer.Value(step).Found))];
        page.Element("p", "From here, each take-up bolt turned by:");
        ReadingHtml.Table(
            page,
            ["Turns", "Elongation", .. answers.Select(static answer => answer.Head)],
            ladder.Select(step =>
                (string[])
                    [
                        BudgetText.Turns(step.Turns),
                        step.StrainAdded.ToString(),
                        .. answers.Select(answer => BudgetText.Text(answer.Value(step))),
                    ]
            ),
            "narrow"
        );
    }
}
