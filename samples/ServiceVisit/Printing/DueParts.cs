using System.Text.Json;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The due date as JSON; null where there is none.</summary>
internal static class DueParts
{
    internal static void WriteDue(this Utf8JsonWriter json, string name, Answer<DueDate> due)
    {
        if (!due.Is(out DueDate? known))
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("atTheLatest", DueText.Day(known.First));
        Day(json, "byTrend", known.ByTrend);
        Day(json, "byTrendFirst", known.TrendBounds.Then(b => b.First));
        Day(json, "byTrendLast", known.TrendBounds.Then(b => b.Last));
        Day(json, "byUse", known.ByUse);
        json.WriteString("commonFirst", DueText.Day(known.CommonPractice.First));
        json.WriteString("commonLast", DueText.Day(known.CommonPractice.Last));
        json.WriteThreshold("limit", known.Limit);
        json.WriteThreshold("workLimit", known.WorkLimit);
        json.WriteAnswer("growthInAYear", known.GrowthInAYear);
        json.WriteFinite(
            "kilowattHoursOfWaitingAYear",
            known.EnergyOfWaitingAYear.Is(out UnitsNet.Energy energy) ? energy.KilowattHours : null
        );
        json.WriteAnswer("workOfWaitingAYear", known.WorkOfWaitingAYear);
        json.WriteAnswer("workOfAServedYear", known.WorkOfAServedYear);
        json.WriteEndObject();
    }

    private static void Day(Utf8JsonWriter json, string name, Answer<DateOnly> day)
    {
        if (day.Is(out DateOnly known))
        {
            json.WriteString(name, DueText.Day(known));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
