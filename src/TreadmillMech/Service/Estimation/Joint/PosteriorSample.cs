using System.Collections.Concurrent;
using System.Runtime.Intrinsics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Numbers;
using TreadmillMech.Studies;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// Points spread over what the readings leave open, each with the weight that priors, readings and the whole model give it
/// (importance sampling: Robert and Casella, Monte Carlo Statistical Methods, chapter 3, from memory). Intervals are read
/// off the weighted points: they follow the bend of the model and the one side that a pass or fail leaves open.
/// </summary>
/// <remarks>
/// The points are drawn from the normal distribution of the estimate, made wider; in each direction they stand in equal
/// shares of it (Latin hypercube), and with each point stands its mirror image. Their numbers are constants, so that a
/// visit has one answer. Of a straight model the same points tell how far they are off by chance, and that is taken away.
/// </remarks>
internal sealed class PosteriorSample
{
    private const int Pairs = 512;
    private const int Points = 2 * Pairs;
    private const int Blocks = Points / Lanes.Count;
    private const ulong Seed = 1;

    // Of fewer points that count the ends are no better than those of the profile; the first blocks tell whether to go on.
    private const double LeastEffective = 200;
    private const int FirstBlocks = 16;

    // Factor on the spread of the first directions, those of pass and fail, whose tails reach far, and on all others.
    private const int FarDirections = 3;
    private const double Far = 1.4;
    private const double Wide = 1.05;

    // A direction that earlier ones span but for rounding is none.
    private const double Spanned = 1e-6;

    // A quantity of which nothing is left has no logarithm.
    private const double LeastValue = 1e-12;

    private static readonly double[] Levels =
    [
        .. Enumerable.Range(0, Pairs).Select(static i => Normal.InvCDF(0, 1, 0.5 + ((i + 0.5) / Points))),
    ];

    // By the number of directions: where the points lie in each; the same for every visit, made once.
    private static readonly ConcurrentDictionary<int, double[][]> Made = [];

    // By unknown: where each point lies, from the middle.
    private readonly double[][] off;
    private readonly Lanes[][] natural;
    private readonly double[] weights = new double[Points];
    private readonly double[] straight = new double[Points];

    private PosteriorSample(JointSolution solution, IReadOnlyList<VisitRow> rows)
    {
        IReadOnlyList<VisitUnknown> unknowns = solution.Unknowns;
        off = [.. unknowns.Select(static _ => new double[Points])];
        Spread(Directions(solution, rows));
        natural = new Lanes[Blocks][];
        double[] uncertainty =
        [
            .. rows.Select(r => JointFit.At(r, unknowns, solution.Point, r.PassFail ? null : r.Measured).Uncertainty),
        ];
        for (int b = 0; b < Blocks; b++)
        {
            if (b == FirstBlocks && Effective(weights.AsSpan(0, b * Lanes.Count)) < LeastEffective * b / Blocks)
            {
                return;
            }

            Weigh(b, solution, rows, uncertainty);
        }

        Enough = Effective(weights) >= LeastEffective;
        Normalise(weights);
        Normalise(straight);
    }

    private bool Enough { get; }

    /// <summary>The sample; null where the model bends so much that too few of the points count.</summary>
    internal static PosteriorSample? Of(JointSolution solution, IReadOnlyList<VisitRow> rows) =>
        new PosteriorSample(solution, rows) is { Enough: true } sample ? sample : null;

    /// <summary>
    /// How far the logarithm of a quantity reaches below and above that at the middle, with as much probability beyond as
    /// so many standard deviations of a normal law leave.
    /// </summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="gradient">Gradient of its logarithm at the middle.</param>
    /// <param name="plain">Its value there, and its standard uncertainty by the straight model.</param>
    /// <param name="factor">The standard deviations.</param>
    internal (double Below, double Above) Reach(
        VisitRow quantity,
        Vector<double> gradient,
        Estimate<double> plain,
        double factor
    )
    {
        double[] bent = new double[Points];
        double[] foretold = new double[Points];
        int[] places = [.. quantity.Unknowns.ToArray().Distinct()];
        for (int b = 0; b < Blocks; b++)
        {
            Lanes.Log(Lanes.Max(LeastValue, At(quantity, b))).Vector.CopyTo(bent.AsSpan(b * Lanes.Count));
        }

        foreach (int place in places)
        {
            double slope = gradient[place];
            double[] moved = off[place];
            for (int i = 0; i < Points; i++)
            {
                foretold[i] += slope * moved[i];
            }
        }

        double tail = Normal.CDF(0, 1, -factor);
        double normal = factor * plain.StandardUncertainty / plain.Value;
        (double lower, double upper) = Quantiles(bent, weights, tail);
        (double least, double most) = Quantiles(foretold, straight, tail);
        double middle = Math.Log(plain.Value);
        return (normal + middle - lower + least, normal + upper - middle - most);
    }

    private Lanes At(VisitRow row, int block)
    {
        Span<Lanes> at = stackalloc Lanes[Lanes.Count];
        return row.Values(Pick(row, block, at));
    }

    private ReadOnlySpan<Lanes> Pick(VisitRow row, int block, Span<Lanes> at)
    {
        ReadOnlySpan<int> places = row.Unknowns;
        for (int i = 0; i < places.Length; i++)
        {
            at[i] = natural[block][places[i]];
        }

        return at[..places.Length];
    }

    /// <summary>
    /// Root of the covariance, turned so that what passes and fails moves along the first of its columns.
    /// </summary>
    private static Matrix<double> Directions(JointSolution solution, IReadOnlyList<VisitRow> rows)
    {
        Matrix<double> root = solution.Covariance.Cholesky().Factor;
        int count = root.RowCount;
        IEnumerable<Vector<double>> wanted = rows.Where(static r => r.PassFail)
            .Select(r => root.TransposeThisAndMultiply(JointFit.Gradient(r, solution.Unknowns, solution.Point)))
            .Concat(Enumerable.Range(0, count).Select(i => Matrix<double>.Build.DenseIdentity(count).Row(i)));
        List<Vector<double>> found = [];
        foreach (Vector<double> direction in wanted)
        {
            // Twice, against rounding.
            Vector<double> left = Without(found, Without(found, direction));
            if (found.Count < count && left.L2Norm() > Spanned * direction.L2Norm())
            {
                found.Add(left / left.L2Norm());
            }
        }

        return root * Matrix<double>.Build.DenseOfColumnVectors(found);
    }

    private static Vector<double> Without(List<Vector<double>> found, Vector<double> direction) =>
        found.Aggregate(direction, static (left, other) => left - (other.DotProduct(left) * other));

    /// <summary>The points, and the logarithm of what they weigh against the normal distribution of the estimate.</summary>
    private void Spread(Matrix<double> directions)
    {
        double[][] levels = Made.GetOrAdd(directions.ColumnCount, Directions);
        for (int j = 0; j < levels.Length; j++)
        {
            double factor = j < FarDirections ? Far : Wide;
            ReadOnlySpan<double> level = levels[j];
            Span<double> weight = weights.AsSpan(0, Pairs);
            Span<double> even = straight.AsSpan(0, Pairs);
            for (int i = 0; i < Pairs; i += Lanes.Count)
            {
                Lanes here = new(level.Slice(i, Lanes.Count));
                Lanes square = 0.5 * here * here;
                Plus(weight[i..], square);
                Plus(even[i..], square * (1 - (factor * factor)));
            }

            for (int k = 0; k < off.Length; k++)
            {
                double along = factor * directions.At(k, j);
                Span<double> moved = off[k].AsSpan(0, Pairs);
                for (int i = 0; i < Pairs; i += Lanes.Count)
                {
                    Plus(moved[i..], along * new Lanes(level.Slice(i, Lanes.Count)));
                }
            }
        }

        weights.AsSpan(0, Pairs).CopyTo(weights.AsSpan(Pairs));
        straight.AsSpan(0, Pairs).CopyTo(straight.AsSpan(Pairs));
        foreach (double[] moved in off)
        {
            for (int i = 0; i < Pairs; i++)
            {
                moved[Pairs + i] = -moved[i];
            }
        }
    }

    private static void Plus(Span<double> sums, Lanes more) =>
        (new Lanes(sums[..Lanes.Count]) + more).Vector.CopyTo(sums);

    private static double[][] Directions(int count)
    {
        RandomStream random = RandomStream.Of(Seed, 1)[0];
        int[] order = [.. Enumerable.Range(0, Pairs)];
        double[][] found = new double[count][];
        for (int j = 0; j < count; j++)
        {
            found[j] = Direction(ref random, order);
        }

        return found;
    }

    private static double[] Direction(ref RandomStream random, int[] order)
    {
        for (int i = Pairs - 1; i > 0; i--)
        {
            int other = (int)(random.Next() % (ulong)(i + 1));
            (order[i], order[other]) = (order[other], order[i]);
        }

        double[] levels = new double[Pairs];
        for (int i = 0; i < Pairs; i++)
        {
            levels[i] = (random.Next() >> 63) == 0 ? Levels[order[i]] : -Levels[order[i]];
        }

        return levels;
    }

    private void Weigh(int block, JointSolution solution, IReadOnlyList<VisitRow> rows, double[] uncertainty)
    {
        IReadOnlyList<VisitUnknown> unknowns = solution.Unknowns;
        Lanes[] coordinates = new Lanes[unknowns.Count];
        Lanes[] values = natural[block] = new Lanes[unknowns.Count];
        Lanes log = new(weights.AsSpan(block * Lanes.Count, Lanes.Count));
        for (int k = 0; k < values.Length; k++)
        {
            VisitUnknown one = unknowns[k];
            coordinates[k] = new Lanes(off[k].AsSpan(block * Lanes.Count, Lanes.Count)) + solution.Point[k];
            values[k] = one.Logarithmic ? Lanes.Exp(coordinates[k]) : coordinates[k];
            Lanes away = (coordinates[k] - (one.TiedTo >= 0 ? coordinates[one.TiedTo] : one.Centre)) * (1 / one.Spread);
            log -= 0.5 * away * away;
        }

        Span<Lanes> at = stackalloc Lanes[Lanes.Count];
        for (int i = 0; i < rows.Count; i++)
        {
            log += rows[i].LogLikelihood(Pick(rows[i], block, at), uncertainty[i]);
        }

        log.Vector.CopyTo(weights.AsSpan(block * Lanes.Count));
    }

    /// <summary>So many points of equal weight would tell as much (Kish 1965, from memory).</summary>
    private static double Effective(ReadOnlySpan<double> logarithms)
    {
        double[] shares = [.. logarithms];
        Normalise(shares);
        return 1 / shares.Sum(static s => s * s);
    }

    /// <summary>Logarithms into shares; where the model has no answer there is no weight.</summary>
    private static void Normalise(double[] logarithms)
    {
        double most = logarithms.Where(double.IsFinite).DefaultIfEmpty().Max();
        double sum = 0;
        for (int i = 0; i < logarithms.Length; i++)
        {
            logarithms[i] = double.IsNaN(logarithms[i]) ? 0 : Math.Exp(logarithms[i] - most);
            sum += logarithms[i];
        }

        for (int i = 0; i < logarithms.Length; i++)
        {
            logarithms[i] /= sum;
        }
    }

    private static (double Lower, double Upper) Quantiles(double[] values, double[] weights, double tail)
    {
        double[] sorted = [.. values];
        double[] shares = [.. weights];
        Array.Sort(sorted, shares);
        return (Within(sorted, shares, tail, 0, 1), Within(sorted, shares, tail, sorted.Length - 1, -1));
    }

    /// <summary>The value with so much weight before it, seen from an end, each point's own counted half.</summary>
    private static double Within(double[] sorted, double[] shares, double tail, int first, int step)
    {
        double sum = 0;
        double before = 0;
        for (int n = 0, i = first; n < sorted.Length; n++, i += step)
        {
            double here = sum + (0.5 * shares[i]);
            if (here >= tail)
            {
                return n == 0
                    ? sorted[i]
                    : sorted[i - step] + ((sorted[i] - sorted[i - step]) * (tail - before) / (here - before));
            }

            sum += shares[i];
            before = here;
        }

        return sorted[first + (step * (sorted.Length - 1))];
    }
}
