using System.Numerics;
using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers;

/// <summary>Sine and cosine of angles side by side.</summary>
/// <remarks>
/// Multiples of a right angle are taken out in three parts (Cody and Waite 1980, from memory): the first difference is
/// exact, what the second loses is kept. The polynomials leave 7e-18 of the sine and 2e-18 of the cosine on the rest, at
/// most 45 degrees (interpolated in Chebyshev's points with sixty digits). A test bounds the error by one unit in the last
/// place; beyond <see cref="Largest"/> the base library answers.
/// </remarks>
internal static class Angles
{
    private const double Largest = 1000;

    // Adding it leaves an integer in the lowest bits of the sum.
    private const double Shift = 6755399441055744;
    private const double Quarter = 1.5707963267948966;
    private const double QuarterRest = 6.123233995736766e-17;
    private const double QuarterLast = -1.4973849048591833e-33;

    private const double S3 = -0.16666666666666666;
    private const double S5 = 0.008333333333333331;
    private const double S7 = -0.0001984126984126504;
    private const double S9 = 2.7557319219320575e-06;
    private const double S11 = -2.5052106225992787e-08;
    private const double S13 = 1.6058530596390244e-10;
    private const double S15 = -7.586636867766497e-13;
    private const double C4 = 0.041666666666666664;
    private const double C6 = -0.0013888888888887389;
    private const double C8 = 2.48015872987544e-05;
    private const double C10 = -2.7557317265876615e-07;
    private const double C12 = 2.087614504910828e-09;
    private const double C14 = -1.1382544623404291e-11;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Sin, T Cos) SinCos<T>(T angle)
        where T : struct, ILanes<T>, IReal<T> => T.AllBelow(T.Abs(angle), Largest) ? Inside(angle) : Anywhere(angle);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (T Sin, T Cos) Inside<T>(T angle)
        where T : struct, ILanes<T>, IReal<T>
    {
        T shifted = T.MultiplyAdd(angle, 2 / Math.PI, Shift);
        T quarters = shifted - Shift;
        T first = T.MultiplyAdd(-quarters, Quarter, angle);
        T second = quarters * QuarterRest;
        T rest = first - second;
        T lost = first - rest - second - T.MultiplyAdd(quarters, QuarterRest, -second);
        lost = T.MultiplyAdd(-quarters, QuarterLast, lost);
        T square = rest * rest;

        T sum = T.MultiplyAdd(square, S15, S13);
        sum = T.MultiplyAdd(square, sum, S11);
        sum = T.MultiplyAdd(square, sum, S9);
        sum = T.MultiplyAdd(square, sum, S7);
        sum = T.MultiplyAdd(square, sum, S5);
        sum = T.MultiplyAdd(square, sum, S3);

        // A change of the angle changes the sine by itself times the cosine. Minus zero stays so.
        T half = 0.5 * square;
        T sin = rest + T.MultiplyAdd(rest * square, sum, lost * (1 - half));
        sin |= rest & T.Pattern(1UL << 63);

        sum = T.MultiplyAdd(square, C14, C12);
        sum = T.MultiplyAdd(square, sum, C10);
        sum = T.MultiplyAdd(square, sum, C8);
        sum = T.MultiplyAdd(square, sum, C6);
        sum = T.MultiplyAdd(square, sum, C4);
        T most = 1 - half;
        T cos = most + (1 - most - half + T.MultiplyAdd(square * square, sum, -(rest * lost)));
        return HalfTurns.Turned(sin, cos, shifted);
    }

    /// <summary>The same where some lanes are beyond the largest.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (T Sin, T Cos) Anywhere<T>(T angle)
        where T : struct, ILanes<T>, IReal<T>
    {
        T within = T.Below(T.Abs(angle), Largest);
        (T sin, T cos) = Inside(angle & within);
        for (ulong rest = LaneFunctions.Outside(within); rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            (double s, double c) = Math.SinCos(angle[lane]);
            (sin, cos) = (sin.With(lane, s), cos.With(lane, c));
        }

        return (sin, cos);
    }
}
