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

        page.Element("p", "From here, each take-up bolt turned by:");
        ReadingHtml.Table(
            page,
            ["Turns", "Elongation", "Strand tension", "Margin, test demand"],
            sheet.Ladder.Select(static step =>
                (string[])
                    [
                        BudgetText.Turns(step.Turns),
                        step.StrainAdded.ToString(),
                        BudgetText.Text(step.Tension),
                        BudgetText.Text(step.Margin),
                    ]
            ),
            "narrow"
        );
    }
}
