using System.Globalization;
using TreadmillMech.Samples.ServiceVisit.Json;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Reads a day, "2026-03-14": year, month, day. Other orders mean another day in another country.</summary>
internal static class DayText
{
    internal const string Expected = "a day as text \"2026-03-14\", year, month and day, from 1950-01-01 to 2199-12-31";

    // A mistyped year must not stretch a chart over centuries.
    private static readonly DateOnly First = new(1950, 1, 1);
    private static readonly DateOnly Last = new(2199, 12, 31);

    internal static string Of(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    internal static Refusal? Read(LocatedNode node, out DateOnly day)
    {
        day = default;
        return
            node.Kind == NodeKind.Text
            && DateOnly.TryParseExact(
                node.Text,
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out day
            )
            && day >= First
            && day <= Last
            ? null
            : new(node.Shown, Expected);
    }
}
