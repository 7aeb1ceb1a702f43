using MathNet.Numerics.LinearRegression;

namespace TreadmillMech.Service.Intervals;

/// <summary>
/// A straight line through frictions over days, each with its uncertainty, and the day on which it reaches a limit.
/// </summary>
/// <param name="At">Friction on day 0 of the fit [1].</param>
/// <param name="Slope">Growth for each day [1/d].</param>
/// <param name="VarianceAt">Variance of the first.</param>
/// <param name="VarianceSlope">Variance of the second.</param>
/// <param name="Covariance">Covariance of both.</param>
internal sealed record FrictionTrend(
    double At,
    double Slope,
    double VarianceAt,
    double VarianceSlope,
    double Covariance
)
{
    /// <summary>The weighted fit; null with fewer than two days.</summary>
    internal static FrictionTrend? Fit(IReadOnlyList<(double Day, double Friction, double Uncertainty)> points)
    {
        if (points.Select(p => p.Day).Distinct().Count() < 2)
        {
            return null;
        }

        double[] weights = [.. points.Select(p => 1 / (p.Uncertainty * p.Uncertainty))];
        double[] line = WeightedRegression.Weighted(
            [.. points.Select(p => new[] { 1, p.Day })],
            [.. points.Select(p => p.Friction)],
            weights
        );
        double s = weights.Sum();
        double x = points.Zip(weights, (p, w) => w * p.Day).Sum();
        double xx = points.Zip(weights, (p, w) => w * p.Day * p.Day).Sum();
        double determinant = (s * xx) - (x * x);
        return new(line[0], line[1], xx / determinant, s / determinant, -x / determinant);
    }

    /// <summary>Day on which the line reaches a limit, with its standard uncertainty; null where it does not rise.</summary>
    internal (double Day, double Uncertainty)? Reaches(double limit)
    {
        if (!(Slope > 0))
        {
            return null;
        }

        double day = (limit - At) / Slope;
        double variance = (VarianceAt + (2 * day * Covariance) + (day * day * VarianceSlope)) / (Slope * Slope);
        return (day, Math.Sqrt(Math.Max(0, variance)));
    }
}
