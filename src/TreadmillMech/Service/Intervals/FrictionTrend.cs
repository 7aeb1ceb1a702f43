using MathNet.Numerics.LinearAlgebra;

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

        Matrix<double> days = Matrix<double>.Build.DenseOfRows(points.Select(p => new[] { 1, p.Day }));
        Matrix<double> weighted = days.TransposeThisAndMultiply(
            Matrix<double>.Build.DiagonalOfDiagonalArray([.. points.Select(p => 1 / (p.Uncertainty * p.Uncertainty))])
        );
        Matrix<double> covariance = (weighted * days).Inverse();
        Vector<double> line =
            covariance * weighted * Vector<double>.Build.DenseOfEnumerable(points.Select(p => p.Friction));
        return new(line[0], line[1], covariance[0, 0], covariance[1, 1], covariance[0, 1]);
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
