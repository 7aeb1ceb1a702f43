using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>The technician's part: everything of the sheet, what matters first standing first.</summary>
internal static class TechnicianPart
{
    internal static void Write(Markup page, Visit visit, VisitSheet sheet, StepForecast forecast)
    {
        page.Open("section", ("class", "page"), ("id", "technician"));
        page.Element("h2", "For the technician");
        VisitPage.Verdict(page, sheet.Verdict, sheet.VerdictText);
        page.Element("h3", "Safety now");
        page.List("ul", sheet.SafetyNow);
        Steps(page, sheet);
        ChartPart.ForTechnician(page, visit, sheet);
        Findings(page, sheet);
        CauseHtml.Write(page, SheetExtras.Causes(sheet), sheet.ChancesFrom);
        ReadingHtml.Write(page, sheet);
        BudgetHtml.Write(page, sheet);
        ForecastHtml.Write(page, forecast);
        DueHtml.Write(page, sheet.Due, visit.Day);
        Texts(
            page,
            "What one more reading would settle",
            sheet.OneMoreReading.Select(TextSheet.Proposal),
            "Nothing that is worth the time."
        );
        Texts(page, "What the readings do not tell", sheet.NotTold, "Nothing of what is asked here.");
        Texts(page, "Readings not used", sheet.Refused.Select(TextSheet.Refused), "None: all readings were used.");
        Texts(page, "Notices", sheet.Notices, "None: every relation was used inside the range it was fitted on.");
        Texts(page, "What was read and done, in order", visit.Events.Select(EventText.Of), "Nothing.", "ol");
        page.Element("p", sheet.MakerFirst, ("class", "quiet"));
        page.Close();
    }

    private static void Steps(Markup page, VisitSheet sheet)
    {
        page.Element("h3", "What to do next");
        if (sheet.NextSteps.IsEmpty)
        {
            page.Element("p", "Nothing at this visit.");
            return;
        }

        page.Open("ol");
        foreach (NextStep step in sheet.NextSteps)
        {
            page.Open("li").Text(step.Action).Open("dl", ("class", "rows"));
            Row(page, "At the retest", step.Expect);
            Row(page, "Stop at", step.StopAt);
            if (step.Undo is { } undo)
            {
                Row(page, "To undo", undo);
            }

            Rows(page, "Caution", step.Cautions);

            page.Close().Close();
        }

        page.Close();
    }

    private static void Findings(Markup page, VisitSheet sheet)
    {
        page.Element("h3", "Why");
        if (sheet.Findings.IsEmpty)
        {
            page.Element("p", "Nothing was found that needs a reason.");
            return;
        }

        page.Open("ul");
        foreach (Finding finding in sheet.Findings)
        {
            page.Open("li");
            page.Element("b", $"{Words.Of(finding.Subject)} ({Words.Of(finding.Severity)}): ");
            page.Text(finding.Statement);
            page.Open("dl", ("class", "rows"));
            if (finding.Number is { } number)
            {
                Row(page, "Number", $"{number.Name} {number}");
            }

            Rows(page, "Limit", finding.Limits.Select(static limit => $"{limit.Name} {limit}"));

            Evidence(page, finding.For, finding.Against);
            page.Close().Close();
        }

        page.Close();
    }

    /// <summary>What speaks for and against something, as rows of a list of terms.</summary>
    internal static void Evidence(Markup page, IEnumerable<string> speaking, IEnumerable<string> against)
    {
        Rows(page, "For", speaking);
        Rows(page, "Against", against);
    }

    internal static void Row(Markup page, string name, string value) => page.Element("dt", name).Element("dd", value);

    /// <summary>Several values under one name; nothing where there are none.</summary>
    private static void Rows(Markup page, string name, IEnumerable<string> values)
    {
        string term = name;
        foreach (string value in values)
        {
            if (term.Length > 0)
            {
                page.Element("dt", term);
                term = "";
            }

            page.Element("dd", value);
        }
    }

    private static void Texts(Markup page, string heading, IEnumerable<string> texts, string none, string list = "ul")
    {
        page.Element("h3", heading);
        List<string> all = [.. texts];
        if (all.Count == 0)
        {
            page.Element("p", none);
        }
        else
        {
            page.List(list, all);
        }
    }
}
