using MathNet.Numerics.LinearAlgebra;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// Mean and covariance of the unknowns where readings are pass and fail: at the most probable point their curvature
/// alone tells too small a spread, as they bound one side only.
/// </summary>
/// <remarks>
/// The model is linearised at the most probable point. Each outcome is replaced by the normal factor that gives the same
/// mean and variance of its distance as the outcome itself beside all other rows, in turn until nothing changes
/// (expectation propagation: Minka 2001; the moments of a probit: Rasmussen and Williams, Gaussian Processes for Machine
/// Learning, section 3.6; both from memory). Of one outcome on a linear model it is exact.
/// </remarks>
internal sealed class PassFailMoments(IReadOnlyList<VisitRow> rows, JointFit.RowPoint[] at, Matrix<double> information)
{
    private const int MostSweeps = 200;
    private const double Share = 0.5;

    // An outcome that was sure anyway says nothing.
    private const double LeastPrecision = 1e-9;
    private const double Settled = 1e-8;

    /// <summary>
    /// Distance of each outcome as all other rows foretell it, over the spread of both; by the place of its row.
    /// </summary>
    internal Dictionary<int, double> Foretold { get; } = [];

    /// <summary>The rows with each outcome replaced by the normal factor that stands for it.</summary>
    internal List<VisitRow> Smooth { get; } = [.. rows.Where(static r => !r.PassFail)];

    internal (double[] Mean, Matrix<double> Covariance) Around(double[] point)
    {
        int[] sites = [.. Enumerable.Range(0, rows.Count).Where(i => rows[i].PassFail)];
        Vector<double>[] slopes = [.. sites.Select(i => JointFit.Gradient(rows[i], in at[i], point.Length))];
        double[] distance = [.. sites.Select(i => at[i].Value)];
        double[] precision = [.. distance.Select(Probit.Curvature)];
        double[] pull = [.. distance.Select(Probit.Slope)];
        Matrix<double> others = information.Clone();
        Vector<double> ofOthers = Vector<double>.Build.Dense(point.Length);
        for (int i = 0; i < sites.Length; i++)
        {
            others -= precision[i] * slopes[i].OuterProduct(slopes[i]);
            ofOthers -= pull[i] * slopes[i];
        }

        // The sweeps go on among the distances alone: they are few, the unknowns many.
        Matrix<double> broad = others.Inverse();
        Matrix<double> all = Matrix<double>.Build.DenseOfRowVectors(slopes);
        Matrix<double> spread = all * broad * all.Transpose();
        Vector<double> start = all * (broad * ofOthers);
        (Matrix<double> covariance, Vector<double> mean) = Sites(spread, start, precision, pull);
        double moved = 1;
        for (int sweep = 0; sweep < MostSweeps && moved > Settled; sweep++)
        {
            moved = 0;
            for (int i = 0; i < sites.Length; i++)
            {
                double variance = covariance[i, i];
                (double newPrecision, double newPull) = Match(distance[i], variance, mean[i], precision[i], pull[i]);
                double share = sweep < 3 ? 1 : Share;
                moved = Math.Max(moved, Math.Abs(newPrecision - precision[i]) * variance);
                moved = Math.Max(moved, Math.Abs(newPull - pull[i]) * Math.Sqrt(variance));
                precision[i] += share * (newPrecision - precision[i]);
                pull[i] += share * (newPull - pull[i]);
            }

            (covariance, mean) = Sites(spread, start, precision, pull);
        }

        for (int i = 0; i < sites.Length; i++)
        {
            (double before, double without) = Others(covariance[i, i], mean[i], precision[i], pull[i]);
            Foretold[sites[i]] = (distance[i] + before) / Math.Sqrt(1 + without);
            others += precision[i] * slopes[i].OuterProduct(slopes[i]);
            ofOthers += pull[i] * slopes[i];
            if (precision[i] > LeastPrecision)
            {
                double middle = distance[i] + (pull[i] / precision[i]);
                Smooth.Add(new FactorRow(rows[sites[i]], middle, 1 / Math.Sqrt(precision[i])));
            }
        }

        Matrix<double> settled = others.Inverse();
        Vector<double> off = settled * ofOthers;
        return ([.. point.Select((x, i) => x + off[i])], settled);
    }

    /// <summary>Covariance and mean of the distances with the normal factors of all outcomes.</summary>
    private static (Matrix<double> Covariance, Vector<double> Mean) Sites(
        Matrix<double> spread,
        Vector<double> start,
        double[] precision,
        double[] pull
    )
    {
        Matrix<double> weight = Matrix<double>.Build.DenseOfDiagonalArray(precision);
        Matrix<double> inverse = (Matrix<double>.Build.DenseIdentity(precision.Length) + (weight * spread)).Inverse();
        Matrix<double> covariance = spread * inverse;
        Vector<double> given = Vector<double>.Build.Dense(pull) - (weight * start);
        return (covariance, start + (covariance * given));
    }

    /// <summary>Precision and pull of the normal factor that stands for an outcome, given all other rows.</summary>
    private static (double Precision, double Pull) Match(
        double distance,
        double variance,
        double middle,
        double precision,
        double pull
    )
    {
        (double before, double without) = Others(variance, middle, precision, pull);
        double wide = 1 + without;
        double limit = (distance + before) / Math.Sqrt(wide);
        double slope = Probit.Slope(limit);
        double curvature = Probit.Curvature(limit) / wide;
        double tilted = without * (1 - (without * curvature));
        double newPrecision = curvature / (1 - (without * curvature));
        double mean = before + (without * slope / Math.Sqrt(wide));
        return (newPrecision, (mean / tilted) - (before / without));
    }

    /// <summary>Middle and variance of a distance as all other rows leave it.</summary>
    private static (double Middle, double Variance) Others(
        double variance,
        double middle,
        double precision,
        double pull
    )
    {
        double without = variance / Math.Max(1e-9, 1 - (precision * variance));
        return (without * ((middle / variance) - pull), without);
    }
}
