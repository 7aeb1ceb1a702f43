using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// The most probable point of all unknowns of a visit: weighted least squares on measured numbers and priors, the probit
/// on pass and fail; damped Gauss-Newton steps, at most so many; derivatives are exact.
/// </summary>
/// <remarks>
/// Uncertainties that depend on the point are held within a step and renewed after it, and held for good after some
/// steps, so that the steps come to an end where readings contradict each other.
/// </remarks>
internal sealed class JointFit(IReadOnlyList<VisitUnknown> unknowns, IReadOnlyList<VisitRow> rows)
{
    private const int MostSteps = 150;
    private const int FreeSteps = 60;
    private const int FewSteps = 25;
    private const int PlainSteps = 15;
    private const double LongestStep = 1;
    private const double MostDamping = 1e10;

    // Squared length of the step still to be made, in standard deviations, at which it has settled; the second where
    // kinks or rounding allow no better.
    private const double Settled = 1e-10;
    private const double NearlySettled = 1e-8;

    // Where only what is made least is asked for: it is wrong by half of this at most.
    private const double NearEnough = 1e-2;

    /// <summary>One row at a point: expected value, its uncertainty, slopes by the row's own unknowns.</summary>
    internal readonly record struct RowPoint(double Value, double Uncertainty, double[] Slopes);

    /// <summary>Length of the last free step in standard deviations.</summary>
    internal double Remaining { get; private set; }

    /// <summary>Length of a free step at which a fit counts as settled.</summary>
    internal static double Allowed => Math.Sqrt(NearlySettled);

    /// <summary>The fit; null where it does not settle.</summary>
    internal JointSolution? Solve() =>
        Settle([.. unknowns.Select(u => u.Centre)], Settled, MostSteps) is (var point, var at, var information)
            ? new(unknowns, rows, point, at, information)
            : null;

    /// <summary>
    /// The most probable point from a start, and what was made least there, near enough to compare; null where it does not
    /// settle.
    /// </summary>
    internal (double[] Point, double Target)? Least(double[] start) =>
        Settle(start, NearEnough, FewSteps) is (var point, var at, _) ? (point, Target(point, at, at)) : null;

    /// <summary>What is made least, at a point.</summary>
    internal double Sum(double[] point)
    {
        RowPoint[] here = At(point);
        return Target(point, here, here);
    }

    private (double[] Point, RowPoint[] At, Matrix<double> Information)? Settle(
        double[] start,
        double settled,
        int most
    )
    {
        double[] point = start;
        RowPoint[] here = At(point);
        double near = Math.Max(settled, NearlySettled);
        double damping = 0;
        for (int i = 0; i < most; i++)
        {
            (Vector<double> slope, Matrix<double> information) = Normal(point, here);

            // Where the plain steps are slow, along a bent valley, the second derivatives are added.
            Matrix<double> curvature = i < PlainSteps ? information : information + Bending(point, here);
            Vector<double> free = information.LU().Solve(-slope);
            double decrement = -slope.DotProduct(free);
            if (!double.IsFinite(decrement))
            {
                return null;
            }

            Remaining = Math.Sqrt(Math.Max(0, decrement));
            if (decrement <= (i < FreeSteps ? settled : near))
            {
                return (point, here, information);
            }

            double target = Target(point, here, here);
            bool moved = false;
            while (!moved && damping <= MostDamping)
            {
                // The plain step is known from the decrement.
                Vector<double> step =
                    damping == 0 && i < PlainSteps ? free : Damped(curvature, information, damping).LU().Solve(-slope);
                double[] next = Moved(point, step);
                RowPoint[] there = At(next);
                double reached = Target(next, there, here);
                moved = reached <= target + (1e-13 * (1 + Math.Abs(target)));
                if (!moved)
                {
                    damping = Math.Max(1e-3, 10 * damping);
                    continue;
                }

                damping = damping < 1e-6 ? 0 : 0.1 * damping;
                point = next;
                here = i < FreeSteps ? there : Held(there, here);
            }

            if (!moved)
            {
                // No step leads down any further: a kink, or the rounding.
                return decrement <= near || settled >= NearEnough ? (point, here, information) : null;
            }
        }

        return null;
    }

    /// <summary>One row at a point.</summary>
    internal static RowPoint At(VisitRow row, IReadOnlyList<VisitUnknown> unknowns, double[] point, double? measured)
    {
        Span<Dual<Lanes>> at = stackalloc Dual<Lanes>[Lanes.Count];
        at = at[..row.Unknowns.Length];
        row.Fill(unknowns, point, at);
        Dual<Lanes> expected = row.Expect(at);
        double[] slopes = new double[at.Length];
        for (int j = 0; j < slopes.Length; j++)
        {
            slopes[j] = expected.Slope[j];
        }

        double value = expected.Value[0];
        return new(value, row.Uncertainty(at, measured ?? value), slopes);
    }

    /// <summary>Gradient of a row by all unknowns at a point.</summary>
    internal static Vector<double> Gradient(VisitRow row, IReadOnlyList<VisitUnknown> unknowns, double[] point) =>
        Gradient(row, At(row, unknowns, point, 0), point.Length);

    /// <summary>Gradient of a row by all unknowns, from its own slopes.</summary>
    internal static Vector<double> Gradient(VisitRow row, in RowPoint at, int count)
    {
        Vector<double> gradient = Vector<double>.Build.Dense(count);
        for (int i = 0; i < at.Slopes.Length; i++)
        {
            gradient[row.Unknowns[i]] += at.Slopes[i];
        }

        return gradient;
    }

    /// <summary>Precision of the priors; of the broad ones as if nothing had been given.</summary>
    internal static Matrix<double> PriorInformation(IReadOnlyList<VisitUnknown> unknowns, bool broad)
    {
        Matrix<double> information = Matrix<double>.Build.Dense(unknowns.Count, unknowns.Count);
        for (int i = 0; i < unknowns.Count; i++)
        {
            VisitUnknown one = unknowns[i];
            bool tied = one.TiedTo >= 0;
            double spread = broad && !tied ? one.BroadSpread : one.Spread;
            double weight = 1 / (spread * spread);
            information[i, i] += weight;
            if (tied)
            {
                information[one.TiedTo, one.TiedTo] += weight;
                information[one.TiedTo, i] -= weight;
                information[i, one.TiedTo] -= weight;
            }
        }

        return information;
    }

    /// <summary>Distance of an unknown from the centre of its prior, over its spread.</summary>
    internal static double OffPrior(IReadOnlyList<VisitUnknown> unknowns, double[] point, int index)
    {
        VisitUnknown one = unknowns[index];
        return (point[index] - (one.TiedTo >= 0 ? point[one.TiedTo] : one.Centre)) / one.Spread;
    }

    /// <summary>Adds the information of one row, its weight as curvature over squared uncertainty.</summary>
    internal static void Add(Matrix<double> information, VisitRow row, in RowPoint at, double weight)
    {
        ReadOnlySpan<int> places = row.Unknowns;
        for (int i = 0; i < places.Length; i++)
        {
            for (int j = 0; j < places.Length; j++)
            {
                information[places[i], places[j]] += weight * at.Slopes[i] * at.Slopes[j];
            }
        }
    }

    private RowPoint[] At(double[] point)
    {
        RowPoint[] all = new RowPoint[rows.Count];
        for (int i = 0; i < all.Length; i++)
        {
            all[i] = At(rows[i], unknowns, point, rows[i].Measured);
        }

        return all;
    }

    private static RowPoint[] Held(RowPoint[] there, RowPoint[] here) =>
        [.. there.Select((row, i) => row with { Uncertainty = here[i].Uncertainty })];

    private double[] Moved(double[] point, Vector<double> step)
    {
        double longest = 0;
        for (int i = 0; i < point.Length; i++)
        {
            longest = Math.Max(longest, Math.Abs(step[i]) / (unknowns[i].Logarithmic ? 1 : 3 * unknowns[i].Spread));
        }

        double share = longest > LongestStep ? LongestStep / longest : 1;
        double[] next = new double[point.Length];
        for (int i = 0; i < point.Length; i++)
        {
            next[i] = point[i] + (share * step[i]);
        }

        return next;
    }

    private static Matrix<double> Damped(Matrix<double> curvature, Matrix<double> information, double damping)
    {
        Matrix<double> damped = curvature.Clone();
        for (int i = 0; i < damped.RowCount; i++)
        {
            damped[i, i] += damping * information[i, i];
        }

        return damped;
    }

    /// <summary>What the second derivatives of the rows add to the curvature, by differences of their exact slopes.</summary>
    private Matrix<double> Bending(double[] point, RowPoint[] here)
    {
        const double Step = 1e-4;
        Matrix<double> bending = Matrix<double>.Build.Dense(point.Length, point.Length);
        double[] aside = [.. point];
        for (int i = 0; i < rows.Count; i++)
        {
            VisitRow row = rows[i];
            double pull = row.PassFail
                ? -Probit.Slope(here[i].Value)
                : (here[i].Value - row.Measured) / (here[i].Uncertainty * here[i].Uncertainty);
            foreach (int place in row.Unknowns)
            {
                aside[place] = point[place] + Step;
                double[] above = At(row, unknowns, aside, row.Measured).Slopes;
                aside[place] = point[place] - Step;
                double[] below = At(row, unknowns, aside, row.Measured).Slopes;
                aside[place] = point[place];
                for (int j = 0; j < above.Length; j++)
                {
                    double half = 0.5 * pull * (above[j] - below[j]) / (2 * Step);
                    bending[place, row.Unknowns[j]] += half;
                    bending[row.Unknowns[j], place] += half;
                }
            }
        }

        return bending;
    }

    /// <summary>What is made least, with the uncertainties of one point.</summary>
    private double Target(double[] point, RowPoint[] at, RowPoint[] uncertain)
    {
        double sum = 0;
        for (int i = 0; i < unknowns.Count; i++)
        {
            double off = OffPrior(unknowns, point, i);
            sum += 0.5 * off * off;
        }

        for (int i = 0; i < rows.Count; i++)
        {
            double off = (at[i].Value - rows[i].Measured) / uncertain[i].Uncertainty;
            sum += rows[i].PassFail ? -Probit.LogProbability(at[i].Value) : 0.5 * off * off;
        }

        return sum;
    }

    private (Vector<double> Slope, Matrix<double> Information) Normal(double[] point, RowPoint[] at)
    {
        Matrix<double> information = PriorInformation(unknowns, broad: false);
        Vector<double> slope = Vector<double>.Build.Dense(point.Length);
        for (int i = 0; i < point.Length; i++)
        {
            double pull = OffPrior(unknowns, point, i) / unknowns[i].Spread;
            slope[i] += pull;
            if (unknowns[i].TiedTo >= 0)
            {
                slope[unknowns[i].TiedTo] -= pull;
            }
        }

        for (int i = 0; i < rows.Count; i++)
        {
            VisitRow row = rows[i];
            double weight = row.PassFail ? Probit.Curvature(at[i].Value) : 1 / (at[i].Uncertainty * at[i].Uncertainty);
            double pull = row.PassFail ? -Probit.Slope(at[i].Value) : (at[i].Value - row.Measured) * weight;
            Add(information, row, in at[i], weight);
            for (int j = 0; j < at[i].Slopes.Length; j++)
            {
                slope[row.Unknowns[j]] += pull * at[i].Slopes[j];
            }
        }

        return (slope, information);
    }
}
