using System.Numerics;
using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers;

/// <summary>Functions of numbers side by side: each lane takes its own path, whatever the others hold.</summary>
internal static class LaneFunctions
{
    private const double LeastNormal = 2.2250738585072014e-308;
    private const double LargestPower = 1.5;

    internal static T Exp<T>(T value)
        where T : struct, ILanes<T>, IReal<T>
    {
        // Beyond this size of one argument the runtime answers all lanes of a register by the scalar form.
        T within = T.NotAbove(T.Abs(value), 708);
        return Others(T.BaseExp(value & within), within, value, Math.Exp);
    }

    internal static T Pow<T>(T value, double exponent)
        where T : struct, ILanes<T>, IReal<T>
    {
        // Near one the logarithm's error is not yet magnified; elsewhere, and where there is none, the scalar form answers.
        T positive = T.NotAbove(LeastNormal, value);
        T power = exponent * T.Log(T.Choose(positive, value, 1));
        T within = positive & T.NotAbove(T.Abs(power), LargestPower);
        T result = T.BaseExp(power & within);
        for (ulong rest = Outside(within); rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            result = result.With(lane, Math.Pow(value[lane], exponent));
        }

        return result;
    }

    internal static T Tanh<T>(T value)
        where T : struct, ILanes<T>, IReal<T> => Others(value, default, value, Math.Tanh);

    internal static T Atan2<T>(T y, T x)
        where T : struct, ILanes<T>, IReal<T>
    {
        for (int lane = 0; lane < T.Width; lane++)
        {
            y = y.With(lane, Math.Atan2(y[lane], x[lane]));
        }

        return y;
    }

    /// <summary>The lanes outside a mask by the scalar form.</summary>
    internal static T Others<T>(T result, T within, T value, Func<double, double> scalar)
        where T : struct, ILanes<T>, IReal<T>
    {
        for (ulong rest = Outside(within); rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            result = result.With(lane, scalar(value[lane]));
        }

        return result;
    }

    /// <summary>One bit for each lane outside a mask.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static ulong Outside<T>(T within)
        where T : struct, ILanes<T>, IReal<T> => (~within).Signs;

    /// <summary>The numbers in the invariant culture, one after the other.</summary>
    internal static string Text<T>(T value)
        where T : struct, ILanes<T>, IReal<T> =>
        string.Join(' ', Enumerable.Range(0, T.Width).Select(lane => new Real(value[lane]).ToString()));
}
