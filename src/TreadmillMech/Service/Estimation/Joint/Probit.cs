using MathNet.Numerics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// Pass and fail as the normal distribution of a distance from a limit: an outcome has the probability Phi(w), w the
/// distance on its side over its standard deviation.
/// </summary>
internal static class Probit
{
    private static readonly double Root2 = Math.Sqrt(2);
    private static readonly double LogRootTwoPi = 0.5 * Math.Log(2 * Math.PI);

    /// <summary>Beyond this the tail is taken by its first term: the error function has no digits left.</summary>
    private const double Tail = 25;

    /// <summary>Distances beyond which nothing changes any more; keeps an infinite margin out of the sums.</summary>
    private const double Farthest = 1e6;

    /// <summary>Normal distribution function.</summary>
    internal static double Probability(double distance) => 0.5 * SpecialFunctions.Erfc(-distance / Root2);

    /// <summary>Logarithm of the probability.</summary>
    internal static double LogProbability(double distance) =>
        distance > -Tail
            ? Math.Log(Probability(distance))
            : (-0.5 * distance * distance) - LogRootTwoPi - Math.Log(-distance);

    /// <summary>Slope of the logarithm of the probability: density over probability.</summary>
    internal static double Slope(double distance) =>
        distance > -Tail
            ? Math.Exp((-0.5 * distance * distance) - LogRootTwoPi - Math.Log(Probability(distance)))
            : -distance - (1 / distance);

    /// <summary>Curvature of the negative logarithm of the probability, between 0 and 1.</summary>
    internal static double Curvature(double distance)
    {
        double slope = Slope(distance);
        return Math.Clamp(slope * (slope + distance), 0, 1);
    }

    /// <summary>Expected curvature before the outcome is known.</summary>
    internal static double ExpectedCurvature(double distance) => Slope(distance) * Slope(-distance);

    /// <summary>
    /// Logarithm of what a contact holds over what is asked; below a twentieth, where the belt as good as hangs loose, its
    /// tangent, so that loose belts differ as well.
    /// </summary>
    internal static T LogMargin<T>(T margin)
        where T : struct, IReal<T>
    {
        const double Loose = 0.05;
        T taut = T.Log(T.Max(Loose, T.Min(margin, double.MaxValue)));
        return T.IfLess(margin, Loose, ((margin - Loose) * (1 / Loose)) + Math.Log(Loose), taut);
    }

    /// <summary>Logarithm of the probability, of eight distances.</summary>
    internal static Lanes LogProbabilities(Lanes distances)
    {
        Span<double> logs = stackalloc double[Lanes.Count];
        for (int i = 0; i < logs.Length; i++)
        {
            logs[i] = LogProbability(Math.Clamp(distances[i], -Farthest, Farthest));
        }

        return new(logs);
    }

    /// <summary>Logarithm of the probability that one of two fails at least, eight times.</summary>
    internal static Lanes LogOneFails(Lanes first, Lanes second)
    {
        Span<double> logs = stackalloc double[Lanes.Count];
        for (int i = 0; i < logs.Length; i++)
        {
            // Whichever is likelier to fail counts in logarithms, so that no digits are lost far out.
            double less = Math.Clamp(Math.Min(first[i], second[i]), -Farthest, Farthest);
            double more = Math.Clamp(Math.Max(first[i], second[i]), -Farthest, Farthest);
            double one = LogProbability(-less);
            logs[i] = one + Math.Log(1 + Math.Exp(LogProbability(-more) + LogProbability(less) - one));
        }

        return new(logs);
    }

    /// <summary>The distance, kept finite.</summary>
    internal static Dual<Lanes> Within(Dual<Lanes> distance) =>
        Dual<Lanes>.Min(Farthest, Dual<Lanes>.Max(-Farthest, distance));

    /// <summary>Distance whose probability is that both of two hold: the product of theirs.</summary>
    internal static Dual<Lanes> Both(Dual<Lanes> first, Dual<Lanes> second)
    {
        Dual<Lanes> a = Within(first);
        Dual<Lanes> b = Within(second);
        double x = a.Value[0];
        double y = b.Value[0];
        double least = Math.Min(x, y);
        if (Math.Abs(x - y) > Tail || Math.Abs(least) > Tail)
        {
            return x < y ? a : b;
        }

        // By the smaller of the probability that both hold and that one fails, so that no digits are lost.
        double fails = Probability(-x) + (Probability(-y) * Probability(x));
        double hold = Probability(x) * Probability(y);
        double distance =
            hold < fails ? -Root2 * SpecialFunctions.ErfcInv(2 * hold) : Root2 * SpecialFunctions.ErfcInv(2 * fails);
        double byFirst = Math.Exp(0.5 * ((distance * distance) - (x * x))) * Probability(y);
        double bySecond = Math.Exp(0.5 * ((distance * distance) - (y * y))) * Probability(x);
        return new(distance, (byFirst * a.Slope) + (bySecond * b.Slope));
    }
}
