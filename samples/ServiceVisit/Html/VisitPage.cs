using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>The sheet as one page for a browser or for paper. It needs no network and no script.</summary>
internal static class VisitPage
{
    internal static string Of(VisitFile document, VisitSheet sheet)
    {
        Markup page = new();
        page.Raw("<!DOCTYPE html>\n");
        page.Open("html", ("lang", "en"));
        Head(page, $"Service visit: {document.MachineName}");
        page.Open("body").Open("main");
        page.Open("header");
        page.Element("h1", document.MachineName);
        page.Element("p", Subtitle(document.Visit), ("class", "quiet"));
        page.Close();
        page.Open("nav", ("aria-label", "Parts of this page"))
            .Open("p")
            .Element("a", "For the technician", ("href", "#technician"))
            .Text(" · ")
            .Element("a", "For the owner", ("href", "#owner"))
            .Close()
            .Close();
        TechnicianPart.Write(page, document.Visit, sheet, StepForecast.Of(document.Visit, sheet, document.Dynamics));
        OwnerPart.Write(page, document, sheet);
        page.Close().Close().Close();
        return page.ToString();
    }

    /// <summary>What may be done with the machine, in a frame that grows with its gravity.</summary>
    internal static void Verdict(Markup page, Verdict verdict, string text)
    {
        string frame = verdict switch
        {
            Service.Verdict.Use => "verdict",
            Service.Verdict.NotEnoughRead => "verdict unread",
            Service.Verdict.Restrict => "verdict restrict",
            _ => "verdict out",
        };
        page.Open("div", ("class", frame)).Element("b", Words.Of(verdict)).Text(text).Close();
    }

    internal static void Head(Markup page, string title)
    {
        page.Open("head");
        page.Shape("meta", ("charset", "utf-8"));
        page.Shape("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1"));

        // Says to the browser what the page promises: nothing is fetched, nothing runs.
        page.Shape(
            "meta",
            ("http-equiv", "Content-Security-Policy"),
            ("content", "default-src 'none'; style-src 'unsafe-inline'; img-src data:")
        );
        page.Element("title", title);
        page.Shape("link", ("rel", "icon"), ("href", "data:,"));
        page.Raw($"<style>\n{Style.Sheet}\n</style>\n");
        page.Close();
    }

    private static string Subtitle(Visit visit) =>
        visit.Day is { } day ? $"Service visit of {DayText.Of(day)}" : "Service visit, day not stated";
}
