using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>When to come back for the deck, and what waiting costs.</summary>
internal static class DueHtml
{
    internal static void Write(Markup page, Answer<DueDate> due, DateOnly? visit)
    {
        page.Element("h3", DueText.Heading);
        if (!due.Is(out DueDate? known))
        {
            page.Element("p", $"No day: {Words.Of(due.Missing)}.");
            return;
        }

        page.Open("dl", ("class", "rows"));
        foreach ((string name, string value) in DueText.Lines(known, visit))
        {
            TechnicianPart.Row(page, name, value);
        }

        page.Close();
    }
}
