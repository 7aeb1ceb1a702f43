using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// What one reading says of the unknowns: a measured number, or pass and fail. At most eight unknowns move it; its
/// derivatives by all of them are carried side by side.
/// </summary>
/// <param name="happened">Place of the reading among the events of the visit; -1 for what was known before it.</param>
/// <param name="name">What it is, in words.</param>
/// <param name="unit">Unit of the measured number.</param>
/// <param name="measured">The measured number; nothing for pass and fail.</param>
/// <param name="unknowns">The unknowns that move it, each in the lane of its place here.</param>
internal abstract class VisitRow(int happened, string name, string unit, double measured, params int[] unknowns)
{
    internal int Event => happened;

    internal string Name => name;

    internal string Unit => unit;

    internal double Measured => measured;

    internal ReadOnlySpan<int> Unknowns => unknowns;

    /// <summary>Whether the reading is censored: it only says on which side of a limit it fell.</summary>
    internal virtual bool PassFail => false;

    /// <summary>
    /// Whether the reading is of two contacts at once and does not say which of them decided: it counts, but no quantity
    /// is taken as told by it.
    /// </summary>
    internal virtual bool Ambiguous => false;

    /// <summary>
    /// The number to be expected; for pass and fail, the distance from the limit on the side of the outcome, over its
    /// standard deviation.
    /// </summary>
    internal abstract Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at);

    /// <summary>Standard uncertainty of the measured number; 1 for pass and fail.</summary>
    internal abstract double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value);

    /// <summary>The number to be expected at eight points side by side.</summary>
    internal virtual Lanes Values(ReadOnlySpan<Lanes> at)
    {
        Span<Dual<Lanes>> each = stackalloc Dual<Lanes>[Lanes.Count];
        for (int i = 0; i < at.Length; i++)
        {
            each[i] = new(at[i], 0);
        }

        return Expect(each[..at.Length]).Value;
    }

    /// <summary>Logarithm of the probability of the reading at eight points, but for a constant.</summary>
    /// <param name="at">The unknowns of this row.</param>
    /// <param name="uncertainty">Standard uncertainty of the measured number.</param>
    internal virtual Lanes LogLikelihood(ReadOnlySpan<Lanes> at, double uncertainty)
    {
        if (PassFail)
        {
            return Probit.LogProbabilities(Values(at));
        }

        Lanes off = (Values(at) - measured) * (1 / uncertainty);
        return -0.5 * off * off;
    }

    /// <summary>The unknowns of this row at a point, each with slope in its own lane.</summary>
    internal void Fill(IReadOnlyList<VisitUnknown> table, ReadOnlySpan<double> point, Span<Dual<Lanes>> at)
    {
        for (int i = 0; i < unknowns.Length; i++)
        {
            VisitUnknown one = table[unknowns[i]];
            double coordinate = point[unknowns[i]];
            at[i] = new(
                one.Natural(coordinate),
                new Lanes(Vector512<double>.Zero.WithElement(i, one.Slope(coordinate)))
            );
        }
    }
}
