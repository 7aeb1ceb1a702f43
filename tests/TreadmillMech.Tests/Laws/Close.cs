namespace TreadmillMech.Tests.Laws;

/// <summary>Comparisons by a stated relative difference.</summary>
internal static class Close
{
    /// <summary>Fails unless both agree within a share of the larger one.</summary>
    internal static void To(double expected, double actual, double relative = 1e-12) =>
        Within(expected, actual, relative * Math.Max(Math.Abs(expected), Math.Abs(actual)));

    /// <summary>Fails unless both agree within a distance.</summary>
    internal static void Within(double expected, double actual, double distance) =>
        Assert.True(
            Math.Abs(actual - expected) <= distance,
            $"expected {expected:R}, found {actual:R}, off by {Math.Abs(actual - expected):R} of {distance:R}"
        );

    /// <summary>Derivative by central difference.</summary>
    internal static double Slope(Func<double, double> law, double at, double step) =>
        (law(at + step) - law(at - step)) / (2 * step);
}
