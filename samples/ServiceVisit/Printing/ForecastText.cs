using System.Text.Json;
using TreadmillMech.Samples.ServiceVisit.Sheet;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>What each step of the tested demand does to the belt, for the page and for machines.</summary>
internal static class ForecastText
{
    internal const string Heading = "Each step of the tested demand";

    internal static void Write(Page page, StepForecast? forecast)
    {
        if (forecast is null)
        {
            return;
        }

        page.Heading(Heading);
        foreach ((string name, Answer<Service.Figure> value) in forecast.Lines)
        {
            page.Paragraph(BudgetText.Text(value), 2, $"{name}: ".PadRight(35));
        }

        page.Paragraph($"By {StepForecast.About}.", 2);
    }

    internal static void Write(Utf8JsonWriter json, StepForecast? forecast)
    {
        if (forecast is null)
        {
            return;
        }

        json.WriteStartObject("eachStep");
        json.WriteAnswer("dip", forecast.Dip);
        json.WriteAnswer("slide", forecast.Slide);
        json.WriteEndObject();
    }
}
