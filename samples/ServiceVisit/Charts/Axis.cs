namespace TreadmillMech.Samples.ServiceVisit.Charts;

/// <summary>One axis: which values it spans, and where it carries numbers.</summary>
internal sealed record Axis(double From, double To, IReadOnlyList<(double At, string Label)> Ticks)
{
    private const int About = 5;

    /// <summary>The share of the way from the beginning of the axis to its end.</summary>
    internal double Share(double value) => (value - From) / (To - From);

    /// <summary>An axis of numbers that holds all values, in steps of 1, 2 or 5.</summary>
    internal static Axis OfNumbers(IEnumerable<double> values)
    {
        (double from, double to) = Span(values);
        double step = Step((to - from) / About);
        double first = Math.Floor((from / step) + 1e-9);
        double last = Math.Ceiling((to / step) - 1e-9);
        List<(double, string)> ticks = [];
        for (double i = first; i <= last; i++)
        {
            ticks.Add((i * step, Digits.Tick(i * step, step)));
        }

        return new(first * step, last * step, ticks);
    }

    private static (double From, double To) Span(IEnumerable<double> values)
    {
        double from = double.PositiveInfinity;
        double to = double.NegativeInfinity;
        foreach (double value in values.Where(double.IsFinite))
        {
            from = Math.Min(from, value);
            to = Math.Max(to, value);
        }

        // One value alone has no extent to draw; so has none.
        return from > to ? (0, 1)
            : to - from > 1e-9 * Math.Max(Math.Abs(from), Math.Abs(to)) ? (from, to)
            : from.Equals(0) ? (0, 1)
            : (Math.Min(0, 2 * from), Math.Max(0, 2 * from));
    }

    private static double Step(double least)
    {
        double decade = Math.Pow(10, Math.Floor(Math.Log10(least)));
        double share = least / decade;
        return decade
            * (
                share <= 1 ? 1
                : share <= 2 ? 2
                : share <= 5 ? 5
                : 10
            );
    }
}
