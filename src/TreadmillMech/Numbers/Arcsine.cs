using System.Runtime.CompilerServices;

namespace TreadmillMech.Numbers;

/// <summary>Arcsine of numbers side by side: a polynomial up to one half, lane by lane beyond.</summary>
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
    internal static T Of<T>(T sine)
        where T : struct, ILanes<T>, IReal<T>
    {
        T within = T.NotAbove(T.Abs(sine), Half);
        ulong rest = LaneFunctions.Outside(within);
        return rest == 0 ? Inside(sine) : Anywhere(sine, within);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Inside<T>(T sine)
        where T : struct, ILanes<T>, IReal<T>
    {
        T square = sine * sine;
        T sum = T.MultiplyAdd(square, A27, A25);
        sum = T.MultiplyAdd(square, sum, A23);
        sum = T.MultiplyAdd(square, sum, A21);
        sum = T.MultiplyAdd(square, sum, A19);
        sum = T.MultiplyAdd(square, sum, A17);
        sum = T.MultiplyAdd(square, sum, A15);
        sum = T.MultiplyAdd(square, sum, A13);
        sum = T.MultiplyAdd(square, sum, A11);
        sum = T.MultiplyAdd(square, sum, A9);
        sum = T.MultiplyAdd(square, sum, A7);
        sum = T.MultiplyAdd(square, sum, A5);
        sum = T.MultiplyAdd(square, sum, A3);
        return T.MultiplyAdd(sine * square, sum, sine);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Anywhere<T>(T sine, T within)
        where T : struct, ILanes<T>, IReal<T> => LaneFunctions.Others(Inside(sine & within), within, sine, Math.Asin);
}
