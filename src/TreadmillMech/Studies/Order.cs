namespace TreadmillMech.Studies;

/// <summary>Quantiles and intervals of sorted numbers (JCGM 101:2008, 7.7).</summary>
internal static class Order
{
    internal static double Quantile(ReadOnlySpan<double> sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }

    /// <summary>The interval with as many numbers below it as above.</summary>
    internal static (double Low, double High) Symmetric(ReadOnlySpan<double> sorted, double coverage)
    {
        int within = Within(sorted.Length, coverage);
        int from = Math.Max(0, ((sorted.Length - within + 1) / 2) - 1);
        return (sorted[from], sorted[from + within]);
    }

    /// <summary>The shortest interval that holds the share; the lowest of several.</summary>
    internal static (double Low, double High) Shortest(ReadOnlySpan<double> sorted, double coverage)
    {
        int within = Within(sorted.Length, coverage);
        int best = 0;
        for (int from = 1; from + within < sorted.Length; from++)
        {
            if (sorted[from + within] - sorted[from] < sorted[best + within] - sorted[best])
            {
                best = from;
            }
        }

        return (sorted[best], sorted[best + within]);
    }

    private static int Within(int count, double coverage) =>
        Math.Min(count - 1, (int)Math.Floor((coverage * count) + 0.5));
}
