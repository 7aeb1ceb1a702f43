using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>A step towards a top from the derivatives at a place near it.</summary>
[SkipLocalsInit]
internal static class Ascent
{
    // A step of the fourth order from nearer than this leaves 1e-11 of a piece.
    private const double Near = 4e-4;
    private const double SmallTerm = 1e-9;
    private const double Nothing = 1e-14;
    private const double Interval = 1.0 / StepNodes<Real>.Intervals;

    /// <summary>
    /// Where the slope vanishes, by the inverse of its Taylor series: $d - p d + (2 p^2 - r) d$ with Newton's step
    /// $d = -h'/h''$, $p = d h'''/(2 h'')$ and $r = d^2 h''''/(6 h'')$.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static Top<T> Step<T>(in FootJet<T> jet, in Top<T> top, out T curvature, out T settled)
        where T : struct, IReal<T>
    {
        T inverse = 1 / jet.F2;
        T newton = -(jet.F1 * inverse);
        T perCurvature = newton * inverse;
        T p = 0.5 * jet.F3 * perCurvature;
        T r = 1.0 / 6.0 * jet.F4 * newton * perCurvature;
        T last = newton * ((2 * p * p) - r);
        T series = newton - (newton * p) + last;

        // Far from the top the series need not converge; where the curve bends the wrong way there is none.
        T far = T.IfLess(T.Abs(p) + T.Abs(r), 0.25, series, newton);
        T step = T.IfLess(jet.F2, 0, far, T.IfLess(0, jet.F1, 0.5 * Interval, -0.5 * Interval));
        T high = T.Min(top.Low + Interval, 1 - WorstPhases.Edge);
        T place = T.Max(T.Max(top.Low, WorstPhases.Edge), T.Min(high, top.Place + step));
        T move = place - top.Place;
        T slope = T.MultiplyAdd(
            move,
            T.MultiplyAdd(move, T.MultiplyAdd(move, jet.F4 * (1.0 / 24), jet.F3 * (1.0 / 6)), 0.5 * jet.F2),
            jet.F1
        );
        curvature = T.MultiplyAdd(move, T.MultiplyAdd(0.5 * move, jet.F4, jet.F3), jet.F2);
        T close = T.IfLess(T.Abs(newton), Near, T.IfLess(T.Abs(last), SmallTerm, 1, 0), 0);
        settled = T.IfLess(T.Abs(move), Nothing, 1, close);
        return new(top.Piece, place, top.Low, T.MultiplyAdd(move, slope, jet.F0));
    }
}
