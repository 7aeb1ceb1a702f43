using MathNet.Numerics.LinearAlgebra;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// Ends of an interval where the model bends within it: the values at which the best of all other unknowns still goes with
/// the readings as well as at the ends of a straight one (profile likelihood).
/// </summary>
/// <remarks>
/// A drive belt that slid at a known pull is slack with good grip, or tight with poor grip: with the friction low its
/// tension runs far out to one side, and a normal distribution does not follow.
/// </remarks>
internal static class BentInterval
{
    private const int MostTries = 14;

    // After so many, halving.
    private const int SecantTries = 8;

    // What a try leaves of the bracket at least, so that both of its ends move.
    private const double LeastShare = 0.1;

    // Share of a standard deviation: of the held quantity, and up to which an end is good enough.
    private const double Held = 1e-3;
    private const double Near = 0.03;

    // A straight model rises along its steepest path by half the square of the factor; this much of it is straight enough.
    private const double Straight = 0.05;

    /// <summary>Logarithms of both ends; null where the model is straight, or a fit does not settle.</summary>
    internal static (double Lower, double Upper)? Of(VisitRow quantity, JointSolution solution, double factor)
    {
        JointFit free = new(solution.Unknowns, solution.Smooth);
        HeldRow value = new(quantity, 0, 1);
        JointFit.RowPoint at = Value(value, solution, solution.Point);
        Vector<double> gradient = JointFit.Gradient(value, in at, solution.Point.Length);
        double spread = QuantityTable.Spread(solution.Covariance, gradient);
        if (!(spread > 0) || solution.Least is not (var best, var least))
        {
            return null;
        }

        Vector<double> path = solution.Covariance * gradient / spread;
        double middle = Value(value, solution, best).Value;
        if (IsStraight(1) && IsStraight(-1))
        {
            return null;
        }

        return End(-1) is { } lower && End(1) is { } upper ? (lower, upper) : null;

        bool IsStraight(int side)
        {
            double[] end = [.. best.Select((x, i) => x + (side * factor * path[i]))];
            double rise = (free.Sum(end) - least) / (0.5 * factor * factor);
            double moved = (Value(value, solution, end).Value - middle) / (side * factor * spread);
            return Math.Abs(rise - 1) < Straight && Math.Abs(moved - 1) < Straight;
        }

        double? End(int side)
        {
            double off = factor * spread;
            (double Off, double Reached) within = (0, 0);
            (double Off, double Reached)? beyond = null;
            double[] start = [.. best.Select((x, i) => x + (side * factor * path[i]))];
            for (int i = 0; i < MostTries; i++)
            {
                HeldRow held = new(quantity, middle + (side * off), Held * spread);
                if (
                    new JointFit(solution.Unknowns, [.. solution.Smooth, held]).Least(start) is not (var there, var sum)
                )
                {
                    return null;
                }

                double reached = Math.Sqrt(Math.Max(0, 2 * (sum - least)));
                if (Math.Abs(reached - factor) < Near)
                {
                    return middle + (side * off);
                }

                if (reached < factor)
                {
                    within = (off, reached);
                }
                else
                {
                    beyond = (off, reached);
                }

                // The path from the best point bends little between two tries.
                double next = Next(within, beyond, factor, halve: i >= SecantTries);
                start = [.. best.Select((x, k) => x + (next / off * (there[k] - x)))];
                off = next;
            }

            return null;
        }
    }

    /// <summary>Where to try next: along the chord of what was reached, and further out as long as no try lies beyond.</summary>
    private static double Next(
        (double Off, double Reached) within,
        (double Off, double Reached)? beyond,
        double factor,
        bool halve
    )
    {
        if (beyond is not { } outer)
        {
            return within.Off * Math.Clamp(factor / Math.Max(1e-9, within.Reached), 1.05, 2.5);
        }

        double share = halve
            ? 0.5
            : Math.Clamp((factor - within.Reached) / (outer.Reached - within.Reached), LeastShare, 1 - LeastShare);
        return within.Off + (share * (outer.Off - within.Off));
    }

    private static JointFit.RowPoint Value(HeldRow row, JointSolution solution, double[] point) =>
        JointFit.At(row, solution.Unknowns, point, 0);
}
