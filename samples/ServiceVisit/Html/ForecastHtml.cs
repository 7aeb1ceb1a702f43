using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Html;

/// <summary>What each step of the tested demand does to the belt.</summary>
internal static class ForecastHtml
{
    internal static void Write(Markup page, StepForecast forecast)
    {
        page.Element("h3", ForecastText.Heading);
        page.Open("dl", ("class", "rows"));
        foreach ((string name, Answer<Figure> value) in forecast.Lines)
        {
            TechnicianPart.Row(page, name, BudgetText.Text(value));
        }

        page.Close();
        page.Element("p", $"By {StepForecast.About}.", ("class", "quiet"));
    }
}
