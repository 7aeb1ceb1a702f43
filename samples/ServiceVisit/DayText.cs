using System.Globalization;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>A day as text, "2026-03-14": other orders mean another day in another country.</summary>
internal static class DayText
{
    internal static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
