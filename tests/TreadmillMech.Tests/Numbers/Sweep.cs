namespace TreadmillMech.Tests.Numbers;

/// <summary>Inputs over the whole range of a double, and the distance between two doubles.</summary>
internal static class Sweep
{
    /// <summary>Zeros, subnormals, the ends of the range, infinities, NaN, and the thresholds of the elementary functions.</summary>
    public static readonly double[] Special =
    [
        0,
        -0.0,
        double.Epsilon,
        -double.Epsilon,
        1e-310,
        -1e-310,
        2.2250738585072014e-308,
        -2.2250738585072014e-308,
        1e-200,
        -1e-200,
        1e-8,
        -1e-8,
        0.5,
        -0.5,
        1,
        -1,
        double.BitDecrement(1),
        double.BitIncrement(1),
        -double.BitDecrement(1),
        -double.BitIncrement(1),
        2,
        -2,
        Math.PI,
        -Math.PI / 2,
        707.9,
        708,
        708.1,
        -708,
        -708.1,
        -745.1,
        -745.2,
        709.782712893384,
        709.7827128933841,
        1e22,
        -1e22,
        1e160,
        -1e160,
        double.MaxValue,
        -double.MaxValue,
        double.PositiveInfinity,
        double.NegativeInfinity,
        double.NaN,
    ];

    /// <summary>All special values, then magnitudes evenly spread over all exponents, either sign.</summary>
    public static readonly double[] Whole = [.. Special, .. Spread(20_006)];

    /// <summary>Pairs of special values, then pairs of spread ones.</summary>
    public static readonly (double First, double Second)[] Pairs =
    [
        .. Special.SelectMany(a => Special.Select(b => (a, b))),
        .. Spread(20_000).Zip(Spread(20_000).Reverse()),
        .. Spread(20_000).Zip(Spread(20_000).Select(x => 3 * x)),
    ];

    /// <summary>Evenly spaced values, both ends included.</summary>
    public static IEnumerable<double> Even(double from, double to, int count) =>
        Enumerable.Range(0, count).Select(i => from + ((to - from) * i / (count - 1)));

    /// <summary>Positive values with evenly spaced logarithms.</summary>
    public static IEnumerable<double> Log(double from, double to, int count) =>
        Even(Math.Log(from), Math.Log(to), count).Select(Math.Exp);

    /// <summary>The same bits, any NaN being as good as any other.</summary>
    public static bool Same(double a, double b) =>
        BitConverter.DoubleToInt64Bits(a) == BitConverter.DoubleToInt64Bits(b) || (double.IsNaN(a) && double.IsNaN(b));

    /// <summary>How many doubles apart; none where both are NaN, very many where one is.</summary>
    public static double Ulps(double a, double b)
    {
        if (double.IsNaN(a) || double.IsNaN(b))
        {
            return double.IsNaN(a) && double.IsNaN(b) ? 0 : double.PositiveInfinity;
        }

        return Math.Abs((double)Ordinal(a) - Ordinal(b)) < 1e6
            ? Math.Abs(Ordinal(a) - Ordinal(b))
            : double.PositiveInfinity;
    }

    private static long Ordinal(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        return bits < 0 ? long.MinValue - bits : bits;
    }

    // An odd stride over the bit patterns of the finite doubles; the sign is the lowest bit of the count.
    private static IEnumerable<double> Spread(int count)
    {
        const long Finite = 0x7FEF_FFFF_FFFF_FFFF;
        for (int i = 0; i < count; i++)
        {
            double size = BitConverter.Int64BitsToDouble((Finite / count * i) + (i * 1_234_567L));
            yield return (i & 1) == 0 ? size : -size;
        }
    }
}
