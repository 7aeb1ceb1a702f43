using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers.Integration;

/// <summary>Sizes of steps from errors of steps.</summary>
/// <remarks>
/// Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, section II.4: the error of the embedded order 3
/// goes with the fourth power of the step. From one step to the next the filter H211b of Soderlind, Digital filters in
/// adaptive time-stepping, ACM TOMS 29, 2003, with b = 4: a strand that swings makes errors that rise and fall with its
/// phase, and a step that followed the last of them alone would be taken back at the next. A step whose error is far below what
/// it may be is followed by one from that error alone.
/// </remarks>
[SkipLocalsInit]
internal static class StepControl
{
    private const double Safety = 0.9;
    private const double Least = 0.2;
    private const double Most = 5;

    /// <summary>Smaller errors count as this.</summary>
    private const double LeastError = 1e-4;

    // Errors of a step that is far too short, as after an edge: the filter alone would grow it too slowly.
    private const double FarBelow = 0.06;

    /// <summary>Largest of the errors over what each state may err; infinite where one is not finite.</summary>
    internal static T Size<T>(
        ReadOnlySpan<T> error,
        ReadOnlySpan<T> state,
        ReadOnlySpan<T> next,
        ReadOnlySpan<double> absolute,
        double relative
    )
        where T : struct, IReal<T>
    {
        T worst = 0;
        int i = 0;
        if (T.Width == 1 && error.Length >= Vector512<double>.Count)
        {
            // Eight states of one case at once; the last eight overlap those before them.
            ReadOnlySpan<double> errors = MemoryMarshal.Cast<T, double>(error);
            ReadOnlySpan<double> from = MemoryMarshal.Cast<T, double>(state);
            ReadOnlySpan<double> to = MemoryMarshal.Cast<T, double>(next);
            int last = errors.Length - Vector512<double>.Count;
            Vector512<double> ratios = Ratios(errors[last..], from[last..], to[last..], absolute[last..], relative);
            for (; i < last; i += Vector512<double>.Count)
            {
                Vector512<double> more = Ratios(errors[i..], from[i..], to[i..], absolute[i..], relative);
                ratios = Vector512.ConditionalSelect(Vector512.GreaterThan(more, ratios), more, ratios);
            }

            for (int lane = 0; lane < Vector512<double>.Count; lane++)
            {
                worst = T.Max(worst, ratios[lane]);
            }

            return worst;
        }

        for (; i < error.Length; i++)
        {
            T scale = absolute[i] + (relative * T.Max(T.Abs(state[i]), T.Abs(next[i])));
            T ratio = T.Abs(error[i]) / scale;

            // A comparison with NaN is false: it counts as infinite.
            worst = T.Max(worst, T.IfLess(ratio, double.MaxValue, ratio, double.PositiveInfinity));
        }

        return worst;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Ratios(
        ReadOnlySpan<double> error,
        ReadOnlySpan<double> state,
        ReadOnlySpan<double> next,
        ReadOnlySpan<double> absolute,
        double relative
    )
    {
        Vector512<double> from = Vector512.Abs(Vector512.Create(state));
        Vector512<double> to = Vector512.Abs(Vector512.Create(next));
        Vector512<double> size = Vector512.ConditionalSelect(Vector512.GreaterThan(from, to), from, to);
        Vector512<double> ratio =
            Vector512.Abs(Vector512.Create(error)) / (Vector512.Create(absolute) + (relative * size));
        return Vector512.ConditionalSelect(
            Vector512.LessThan(ratio, Vector512.Create(double.MaxValue)),
            ratio,
            Vector512.Create(double.PositiveInfinity)
        );
    }

    /// <summary>Factor from a step to the next.</summary>
    /// <param name="error">Its error, 1 at most.</param>
    /// <param name="errorBefore">Error of the step before.</param>
    /// <param name="size">Its size.</param>
    /// <param name="sizeBefore">Size of the step before; 0 where there is none to look back to.</param>
    internal static T Next<T>(T error, T errorBefore, T size, T sizeBefore)
        where T : struct, IReal<T>
    {
        T now = T.Max(error, LeastError);
        T before = T.IfLess(0, sizeBefore, T.Max(errorBefore, LeastError), now);
        T square = T.IfLess(0, sizeBefore, size * size / (sizeBefore * sizeBefore), 1);
        T product = T.IfLess(now, FarBelow, now * now * now * now, now * before * square * square);
        return T.Max(Least, T.Min(Most, Safety / T.Sqrt(T.Sqrt(T.Sqrt(T.Sqrt(product))))));
    }

    /// <summary>Factor from a step that is taken back to the next attempt.</summary>
    internal static T Again<T>(T error)
        where T : struct, IReal<T> => T.Max(Least, T.Min(Safety, Safety / T.Sqrt(T.Sqrt(T.Max(error, LeastError)))));
}
