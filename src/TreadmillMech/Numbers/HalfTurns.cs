using System.Numerics;
using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers;

/// <summary>Sine and cosine of pi times a number, for one number and for several.</summary>
/// <remarks>
/// <para>
/// The number is split into a multiple of one half and a rest of at most one quarter, both exact; the rest goes into
/// polynomials that leave 1.5e-17 of the sine and 3e-17 of the cosine (interpolated in Chebyshev's points with sixty
/// digits). With the rounding the error stays below two units in the last place, which a test bounds on the whole domain.
/// </para>
/// <para>One and several take the same steps: the same bits, wherever both have fused multiplication and addition.</para>
/// </remarks>
internal static class HalfTurns
{
    // Beyond it every number is a multiple of one half, and the split below would lose its last bit.
    private const double Largest = 1125899906842624;

    // Adding it leaves an integer in the lowest bits of the sum.
    private const double Shift = 6755399441055744;

    private const double PiRest = 1.2246467991473532e-16;
    private const double S3 = -5.167712780049969;
    private const double S5 = 2.5501640398766154;
    private const double S7 = -0.5992645291845385;
    private const double S9 = 0.08214587730641625;
    private const double S11 = -0.0073701436435937495;
    private const double S13 = 0.00046221110224187623;
    private const double C2 = -4.934802200544679;
    private const double C4 = 4.058712126416765;
    private const double C6 = -1.3352627688538095;
    private const double C8 = 0.23533063028399223;
    private const double C10 = -0.025806887964701878;
    private const double C12 = 0.001929493874894941;
    private const double C14 = -0.00010370082971594627;

    internal static (double Sin, double Cos) SinCos(double halfTurns)
    {
        if (!(Math.Abs(halfTurns) < Largest))
        {
            return double.SinCosPi(halfTurns);
        }

        double shifted = (2 * halfTurns) + Shift;
        double rest = halfTurns - (0.5 * (shifted - Shift));
        double square = rest * rest;
        double sum = double.FusedMultiplyAdd(square, S13, S11);
        sum = double.FusedMultiplyAdd(square, sum, S9);
        sum = double.FusedMultiplyAdd(square, sum, S7);
        sum = double.FusedMultiplyAdd(square, sum, S5);
        sum = double.FusedMultiplyAdd(square, sum, S3);
        sum = double.FusedMultiplyAdd(square, sum, PiRest);
        double sin = double.FusedMultiplyAdd(rest, Math.PI, rest * sum);
        sum = double.FusedMultiplyAdd(square, C14, C12);
        sum = double.FusedMultiplyAdd(square, sum, C10);
        sum = double.FusedMultiplyAdd(square, sum, C8);
        sum = double.FusedMultiplyAdd(square, sum, C6);
        sum = double.FusedMultiplyAdd(square, sum, C4);
        sum = double.FusedMultiplyAdd(square, sum, C2);
        double cos = double.FusedMultiplyAdd(square, sum, 1);

        // By quarters of a turn: odd ones exchange sine and cosine; the signs go with the second bit.
        long quarters = BitConverter.DoubleToInt64Bits(shifted);
        long sinBits = BitConverter.DoubleToInt64Bits(sin);
        long cosBits = BitConverter.DoubleToInt64Bits(cos);
        long exchange = (sinBits ^ cosBits) & -(quarters & 1);
        return (
            BitConverter.Int64BitsToDouble(sinBits ^ exchange ^ ((quarters & 2) << 62)),
            BitConverter.Int64BitsToDouble(cosBits ^ exchange ^ (((quarters + 1) & 2) << 62))
        );
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Sin, T Cos) SinCos<T>(T halfTurns)
        where T : struct, ILanes<T>, IReal<T> =>
        T.AllBelow(T.Abs(halfTurns), Largest) ? Inside(halfTurns) : Anywhere(halfTurns);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T Sin, T Cos) Inside<T>(T halfTurns)
        where T : struct, ILanes<T>, IReal<T>
    {
        T shifted = halfTurns + halfTurns + Shift;
        T rest = halfTurns - ((shifted - Shift) * 0.5);
        T square = rest * rest;
        T sum = T.MultiplyAdd(square, S13, S11);
        sum = T.MultiplyAdd(square, sum, S9);
        sum = T.MultiplyAdd(square, sum, S7);
        sum = T.MultiplyAdd(square, sum, S5);
        sum = T.MultiplyAdd(square, sum, S3);
        sum = T.MultiplyAdd(square, sum, PiRest);
        T sin = T.MultiplyAdd(rest, Math.PI, rest * sum);
        sum = T.MultiplyAdd(square, C14, C12);
        sum = T.MultiplyAdd(square, sum, C10);
        sum = T.MultiplyAdd(square, sum, C8);
        sum = T.MultiplyAdd(square, sum, C6);
        sum = T.MultiplyAdd(square, sum, C4);
        sum = T.MultiplyAdd(square, sum, C2);
        return Turned(sin, T.MultiplyAdd(square, sum, 1), shifted);
    }

    /// <summary>
    /// By quarters of a turn, in the lowest bits of a number: odd ones exchange sine and cosine; the signs go with the
    /// second bit.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Sin, T Cos) Turned<T>(T sin, T cos, T quarters)
        where T : struct, ILanes<T>, IReal<T>
    {
        T even = T.Clear(quarters & T.Pattern(1));
        T sinSign = T.ShiftLeft(quarters & T.Pattern(2), 62);
        T cosSign = T.ShiftLeft(T.AddBits(quarters, T.Pattern(1)) & T.Pattern(2), 62);
        return (T.Choose(even, sin, cos) ^ sinSign, T.Choose(even, cos, sin) ^ cosSign);
    }

    /// <summary>The same where some lanes are beyond the split.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (T Sin, T Cos) Anywhere<T>(T halfTurns)
        where T : struct, ILanes<T>, IReal<T>
    {
        T within = T.Below(T.Abs(halfTurns), Largest);
        (T sin, T cos) = Inside(halfTurns & within);
        for (ulong rest = LaneFunctions.Outside(within); rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            (double s, double c) = double.SinCosPi(halfTurns[lane]);
            (sin, cos) = (sin.With(lane, s), cos.With(lane, c));
        }

        return (sin, cos);
    }
}
