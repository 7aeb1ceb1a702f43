using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers;

/// <summary>Sine and cosine of pi times a number, for one number and for eight.</summary>
/// <remarks>
/// <para>
/// The number is split into a multiple of one half and a rest of at most one quarter, both exact; the rest goes into
/// polynomials that leave 1.5e-17 of the sine and 3e-17 of the cosine (interpolated in Chebyshev's points with sixty
/// digits). With the rounding the error stays below two units in the last place, which a test bounds on the whole domain.
/// </para>
/// <para>One and eight take the same steps: the same bits, wherever both have fused multiplication and addition.</para>
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
    internal static (Vector512<double> Sin, Vector512<double> Cos) SinCos(Vector512<double> halfTurns)
    {
        Vector512<double> size = Vector512.Abs(halfTurns);
        return Vector512.LessThanAll(size, Vector512.Create(Largest)) ? Inside(halfTurns) : SinCos(halfTurns, size);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Vector512<double> Sin, Vector512<double> Cos) Inside(Vector512<double> halfTurns)
    {
        Vector512<double> shifted = halfTurns + halfTurns + Vector512.Create(Shift);
        Vector512<double> rest = halfTurns - ((shifted - Vector512.Create(Shift)) * 0.5);
        Vector512<double> square = rest * rest;
        Vector512<double> sum = Vector512.FusedMultiplyAdd(square, Vector512.Create(S13), Vector512.Create(S11));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(S9));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(S7));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(S5));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(S3));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(PiRest));
        Vector512<double> sin = Vector512.FusedMultiplyAdd(rest, Vector512.Create(Math.PI), rest * sum);
        sum = Vector512.FusedMultiplyAdd(square, Vector512.Create(C14), Vector512.Create(C12));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(C10));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(C8));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(C6));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(C4));
        sum = Vector512.FusedMultiplyAdd(square, sum, Vector512.Create(C2));
        Vector512<double> cos = Vector512.FusedMultiplyAdd(square, sum, Vector512<double>.One);

        Vector512<ulong> quarters = shifted.AsUInt64();
        Vector512<double> even = Vector512.Equals(quarters & Vector512<ulong>.One, Vector512<ulong>.Zero).AsDouble();
        Vector512<ulong> second = Vector512.Create(2UL);
        Vector512<ulong> sinSign = (quarters & second) << 62;
        Vector512<ulong> cosSign = ((quarters + Vector512<ulong>.One) & second) << 62;
        return (
            Vector512.ConditionalSelect(even, sin, cos) ^ sinSign.AsDouble(),
            Vector512.ConditionalSelect(even, cos, sin) ^ cosSign.AsDouble()
        );
    }

    /// <summary>The same where some lanes are beyond the split.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (Vector512<double> Sin, Vector512<double> Cos) SinCos(
        Vector512<double> halfTurns,
        Vector512<double> size
    )
    {
        Vector512<double> within = Vector512.LessThan(size, Vector512.Create(Largest));
        (Vector512<double> sin, Vector512<double> cos) = Inside(halfTurns & within);
        for (ulong rest = ~within.ExtractMostSignificantBits() & 0xFF; rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            (double s, double c) = double.SinCosPi(halfTurns[lane]);
            sin = sin.WithElement(lane, s);
            cos = cos.WithElement(lane, c);
        }

        return (sin, cos);
    }
}
