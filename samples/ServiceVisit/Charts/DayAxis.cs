using System.Globalization;

namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>An axis of days: its values are day numbers, its marks stand at the first of a month.</summary>
internal static class DayAxis
{
    private const int MostTicks = 5;

    private static readonly int[] MonthSteps = [1, 2, 3, 6, 12, 24, 60, 120, 600, 1200];

    internal static Axis Of(IReadOnlyCollection<DateOnly> days)
    {
        DateOnly from = days.Min();
        DateOnly to = days.Max();
        int first = Month(from);
        int last = Month(to) + 1;
        int step = MonthSteps.First(step => (last - first) / step < MostTicks);
        List<(double, string)> ticks = [];
        for (int month = (first + step - 1) / step * step; month <= last; month += step)
        {
            DateOnly day = First(month);
            ticks.Add((day.DayNumber, day.ToString("yyyy-MM", CultureInfo.InvariantCulture)));
        }

        return new(First(first).DayNumber, First(last).DayNumber, ticks);
    }

    private static int Month(DateOnly day) => (12 * day.Year) + day.Month - 1;

    private static DateOnly First(int month) => new(month / 12, (month % 12) + 1, 1);
}
