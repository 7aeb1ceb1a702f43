using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers.Integration;

/// <summary>Sizes of steps from errors of steps.</summary>
/// <remarks>
/// Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I, section II.4: the error of the embedded order 3
/// goes with the fourth power of the step.
/// </remarks>
internal static class StepControl
{
    private const double Safety = 0.9;
    private const double Least = 0.2;
    private const double Most = 5;

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
        for (int i = 0; i < error.Length; i++)
        {
            T scale = absolute[i] + (relative * T.Max(T.Abs(state[i]), T.Abs(next[i])));
            T ratio = T.Abs(error[i]) / scale;

            // A comparison with NaN is false: it counts as infinite.
            worst = T.Max(worst, T.IfLess(ratio, double.MaxValue, ratio, double.PositiveInfinity));
        }

        return worst;
    }

    /// <summary>Factor from this step to the next, or to the next attempt.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Factor<T>(T size)
        where T : struct, IReal<T> => T.Max(Least, T.Min(Most, Safety / T.Sqrt(T.Sqrt(T.Max(size, 1e-12)))));
}
