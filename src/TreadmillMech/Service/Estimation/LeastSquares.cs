using MathNet.Numerics.LinearAlgebra;

namespace TreadmillMech.Service.Estimation;

/// <summary>Weighted non-linear least squares by Gauss-Newton steps; residuals are already over their uncertainty.</summary>
internal static class LeastSquares
{
    private const int MostSteps = 50;
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
