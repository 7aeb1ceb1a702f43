using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>Tables; on a phone each row becomes a short list of its own.</summary>
internal static class ReadingHtml
{
    internal static void Write(Markup page, VisitSheet sheet)
    {
        page.Element("h3", "Readings");
        if (sheet.Readings.IsEmpty)
        {
            page.Element("p", "None.");
            return;
        }

        Table(
            page,
            ["Reading", "As found", "As left", "Reference"],
            sheet.Readings.Select(static row =>
                (string[])
                    [
                        row.Name,
                        row.AsFound?.ToString() ?? "-",
                        row.AsLeft?.ToString() ?? "-",
                        row.Reference is { } limit ? $"{limit.Name} {limit}" : "-",
                    ]
            )
        );
        page.Element("p", Words.PlusMinus, ("class", "quiet"));
    }

    /// <param name="page">The page.</param>
    /// <param name="heads">The columns' names.</param>
    /// <param name="rows">The cells.</param>
    /// <param name="look">"stack" where the cells are too long to stand side by side on a phone, otherwise "narrow".</param>
    internal static void Table(Markup page, string[] heads, IEnumerable<string[]> rows, string look = "stack")
    {
        page.Open("table", ("class", look)).Open("thead").Open("tr");
        foreach (string head in heads)
        {
            page.Element("th", head, ("scope", "col"));
        }

        page.Close().Close().Open("tbody");
        foreach (string[] row in rows)
        {
            page.Open("tr");
            page.Element("td", row[0]);
            for (int i = 1; i < row.Length; i++)
            {
                page.Element("td", row[i], ("data-of", heads[i]));
            }

            page.Close();
        }

        page.Close().Close();
    }
}
