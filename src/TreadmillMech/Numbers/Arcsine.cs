using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers;

/// <summary>Arcsine of eight numbers: a polynomial up to one half, lane by lane beyond.</summary>
/// <remarks>
/// The polynomial leaves 5e-18 of the arcsine (interpolated in Chebyshev's points with sixty digits); with the rounding
/// the error is below one unit in the last place more than the scalar form's.
/// </remarks>
internal static class Arcsine
{
    private const double Half = 0.5;
    private const double A3 = 0.16666666666666669;
    private const double A5 = 0.07499999999998433;
    private const double A7 = 0.04464285714635543;
    private const double A9 = 0.030381944138531247;
    private const double A11 = 0.02237217294214989;
    private const double A13 = 0.017352392720869973;
    private const double A15 = 0.013971212973552933;
    private const double A17 = 0.011479177415184906;
    private const double A19 = 0.01032281435018578;
    private const double A21 = 0.005457506718640358;
    private const double A23 = 0.01740087944269402;
    private const double A25 = -0.014851887071247204;
    private const double A27 = 0.028757851367421566;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Vector512<double> Of(Vector512<double> sine) =>
        Vector512.LessThanOrEqualAll(Vector512.Abs(sine), Vector512.Create(Half)) ? Inside(sine) : Anywhere(sine);

    private static Vector512<double> Inside(Vector512<double> sine)
    {
        Vector512<double> square = sine * sine;
        Vector512<double> sum = Vector512.MultiplyAddEstimate(square, Vector512.Create(A27), Vector512.Create(A25));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A23));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A21));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A19));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A17));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A15));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A13));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A11));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A9));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A7));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A5));
        sum = Vector512.MultiplyAddEstimate(square, sum, Vector512.Create(A3));
        return Vector512.MultiplyAddEstimate(sine * square, sum, sine);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Vector512<double> Anywhere(Vector512<double> sine)
    {
        Vector512<double> within = Vector512.LessThanOrEqual(Vector512.Abs(sine), Vector512.Create(Half));
        Vector512<double> angle = Inside(sine & within);
        for (ulong rest = ~within.ExtractMostSignificantBits() & 0xFF; rest != 0; rest &= rest - 1)
        {
            int lane = BitOperations.TrailingZeroCount(rest);
            angle = angle.WithElement(lane, Math.Asin(sine[lane]));
        }

        return angle;
    }
}
