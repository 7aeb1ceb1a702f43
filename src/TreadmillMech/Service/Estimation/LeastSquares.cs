using MathNet.Numerics.LinearAlgebra;

namespace TreadmillMech.Service.Estimation;

/// <summary>
/// Weighted non-linear least squares by Gauss-Newton steps; residuals are already over their uncertainty. The last unknown
/// is a logarithm and moves by a factor of e at most; where readings contradict each other whole steps run to and fro
/// for ever, so that late steps are shortened.
/// </summary>
internal static class LeastSquares
{
    private const int MostSteps = 200;
    private const int WholeSteps = 10;
    private const int HalfSteps = 40;
    private const double Settled = 1e-10;

    /// <summary>Residuals and their derivatives at a point; rows are readings and priors, columns are unknowns.</summary>
    internal delegate (Vector<double> Residuals, Matrix<double> Derivatives) Linearise(Vector<double> unknowns);

    /// <summary>The best point, its covariance, and the sum of squared residuals; null where it does not settle.</summary>
    internal static (Vector<double> Best, Matrix<double> Covariance, double Misfit)? Solve(
        Vector<double> start,
        Linearise linearise
    )
    {
        Vector<double> point = start;
        for (int i = 0; i < MostSteps; i++)
        {
            (Vector<double> residuals, Matrix<double> derivatives) = linearise(point);
            Vector<double> step = derivatives.QR().Solve(-residuals);
            if (!step.ForAll(double.IsFinite))
            {
                return null;
            }

            double share =
                i < WholeSteps ? 1
                : i < HalfSteps ? 0.5
                : 0.25;
            step *= share * Math.Min(1, 1 / Math.Abs(step[^1]));
            point += step;
            if (step.L2Norm() <= Settled * (1 + point.L2Norm()))
            {
                (residuals, derivatives) = linearise(point);
                Matrix<double> information = derivatives.TransposeThisAndMultiply(derivatives);
                return (point, information.Inverse(), residuals.DotProduct(residuals));
            }
        }

        return null;
    }
}
