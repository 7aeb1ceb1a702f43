using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>The settled point of a joint fit with its covariance, and how well each row goes with all others.</summary>
internal sealed class JointSolution
{
    // A row that alone tells something has nothing to be held against.
    private const double LeastRedundancy = 1e-6;

    private readonly IReadOnlyList<VisitRow> rows;
    private readonly JointFit.RowPoint[] at;
    private readonly Dictionary<int, double> foretold = [];
    private readonly Lazy<(double[] Point, double Target)?> least;
    private readonly Lazy<PosteriorSample?> sample;

    internal JointSolution(
        IReadOnlyList<VisitUnknown> unknowns,
        IReadOnlyList<VisitRow> rows,
        double[] point,
        JointFit.RowPoint[] at,
        Matrix<double> information
    )
    {
        this.rows = rows;
        this.at = at;
        Unknowns = unknowns;
        Smooth = rows;
        Covariance = information.Inverse();
        Point = point;
        SureCovariance = WithoutAmbiguous(information).Inverse();
        if (rows.Any(r => r.PassFail))
        {
            PassFailMoments moments = new(rows, at, information);
            (Point, Covariance) = moments.Around(point);
            foretold = moments.Foretold;
            Smooth = moments.Smooth;
        }

        least = new(() => new JointFit(Unknowns, Smooth).Least([.. Point]));
        sample = new(() => rows.Any(r => r.PassFail) ? PosteriorSample.Of(this, rows) : null);
        BroadCovariance = JointFit.PriorInformation(unknowns, broad: true).Inverse();
        for (int i = 0; i < unknowns.Count; i++)
        {
            double off = JointFit.OffPrior(unknowns, point, i);
            ChiSquare += off * off;
        }

        for (int i = 0; i < rows.Count; i++)
        {
            if (!rows[i].PassFail)
            {
                double off = (rows[i].Measured - at[i].Value) / at[i].Uncertainty;
                ChiSquare += off * off;
                Measured++;
            }
        }
    }

    internal IReadOnlyList<VisitUnknown> Unknowns { get; }

    /// <summary>Mean of the unknowns: the most probable point where nothing is pass and fail.</summary>
    internal double[] Point { get; }

    internal Matrix<double> Covariance { get; }

    /// <summary>The rows, each pass or fail replaced by the normal factor that stands for it.</summary>
    internal IReadOnlyList<VisitRow> Smooth { get; }

    /// <summary>The most probable point with those rows, and what is made least there; null where it does not settle.</summary>
    internal (double[] Point, double Target)? Least => least.Value;

    /// <summary>
    /// Points spread over what the readings leave open; null where too few of them would count, and where nothing is pass
    /// and fail, so that the profile tells the bend without their chance.
    /// </summary>
    internal PosteriorSample? Sample => sample.Value;

    /// <summary>Covariance of the broad priors alone.</summary>
    internal Matrix<double> BroadCovariance { get; }

    /// <summary>Covariance without the readings of two contacts at once.</summary>
    internal Matrix<double> SureCovariance { get; }

    /// <summary>Squared residuals of measured numbers and of priors, at the most probable point.</summary>
    internal double ChiSquare { get; }

    /// <summary>How many numbers were measured: the degrees of freedom, as each unknown has a prior.</summary>
    internal int Measured { get; }

    internal double FitProbability => Measured == 0 ? 1 : 1 - ChiSquared.CDF(Measured, ChiSquare);

    internal IEnumerable<(VisitRow Row, double Expected, double Uncertainty, double Distance)> Misfits()
    {
        for (int i = 0; i < rows.Count; i++)
        {
            yield return (rows[i], at[i].Value, at[i].Uncertainty, Distance(i));
        }
    }

    private Matrix<double> WithoutAmbiguous(Matrix<double> information)
    {
        Matrix<double> sure = information.Clone();
        for (int i = 0; i < rows.Count; i++)
        {
            if (rows[i].Ambiguous)
            {
                JointFit.Add(sure, rows[i], in at[i], -Probit.Curvature(at[i].Value));
            }
        }

        return sure;
    }

    /// <summary>
    /// Distance of a row from what all other rows and the priors foretell, in standard deviations of both; of a pass or
    /// fail, negative where the other outcome was to be expected.
    /// </summary>
    private double Distance(int index)
    {
        if (foretold.TryGetValue(index, out double outcome))
        {
            return outcome;
        }

        VisitRow row = rows[index];
        JointFit.RowPoint here = at[index];
        double ofRow = 0;
        for (int i = 0; i < here.Slopes.Length; i++)
        {
            for (int j = 0; j < here.Slopes.Length; j++)
            {
                ofRow += here.Slopes[i] * here.Slopes[j] * Covariance[row.Unknowns[i], row.Unknowns[j]];
            }
        }

        double redundancy = 1 - (ofRow / (here.Uncertainty * here.Uncertainty));
        return redundancy < LeastRedundancy
            ? 0
            : (row.Measured - here.Value) / (here.Uncertainty * Math.Sqrt(redundancy));
    }
}
