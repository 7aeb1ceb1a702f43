using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>The owner's part: what it means to them, without forces or probabilities.</summary>
internal static class OwnerPart
{
    internal static void Write(Markup page, VisitFile document, VisitSheet sheet)
    {
        page.Open("section", ("class", "page"), ("id", "owner"));
        page.Element("h2", "For the owner");
        string day = document.Visit.Day is { } then ? $" on {DayText.Of(then)}" : "";
        page.Element("p", $"{document.MachineName} was looked at{day}.");
        string first = sheet.OwnerPage.IsEmpty ? "" : sheet.OwnerPage[0];
        VisitPage.Verdict(page, sheet.Verdict, first);
        foreach (string paragraph in sheet.OwnerPage.Skip(1))
        {
            page.Element("p", paragraph);
        }

        List<string> done = [.. OwnerWork.Of(document.Visit)];
        if (done.Count > 0)
        {
            page.Element("h3", "What was done");
            page.List("ul", done);
        }

        if (SheetExtras.DeckDue(sheet) is { } due)
        {
            page.Element(
                "p",
                due <= document.Visit.Day
                    ? "By its use and age the board under the belt is due for service now."
                    : $"The board under the belt is due for service about {DayText.Of(due)}."
            );
        }

        if (SheetExtras.WaitingForOwner(sheet) is { } waiting)
        {
            page.Element("p", waiting);
        }

        ChartPart.ForOwner(page, sheet);
        page.Element("p", sheet.MakerFirst, ("class", "quiet"));
        page.Close();
    }
}
