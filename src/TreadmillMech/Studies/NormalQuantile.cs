using System.Numerics;
using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>Inverse of the standard normal distribution.</summary>
/// <remarks>
/// Wichura 1988, algorithm AS 241, Applied Statistics 37: quotients of polynomials in three ranges (coefficients from
/// memory; a test compares with MathNet and with published quantiles). Its error is near 1e-16, with the rounding and the
/// logarithm of the tails below 4e-15 of the quantile.
/// </remarks>
internal static class NormalQuantile
{
    private const double Middle = 0.425;
    private const double FarTail = 5;

    // What the middle range does not answer: fifteen in a hundred.
    private const int Tails = RowKernel.Tile;

    /// <summary>Turns shares into quantiles in place.</summary>
    /// <param name="shares">Shares between 0 and 1, a multiple of eight of them, as many as a tile has at most.</param>
    internal static unsafe void Of<T>(Span<double> shares)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        fixed (double* start = shares)
        {
            Of<T>(start, shares.Length);
        }
    }

    [SkipLocalsInit]
    private static unsafe void Of<T>(double* shares, int count)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        // The tails are brought together, so that their logarithms are taken of full registers.
        double* tails = stackalloc double[Tails + T.Width];
        ushort* places = stackalloc ushort[Tails];
        int others = 0;
        for (int i = 0; i < count; i += T.Width)
        {
            T share = T.Load(shares + i);
            T q = share - 0.5;
            for (ulong rest = LaneFunctions.Outside(T.Below(T.Abs(q), Middle)); rest != 0; rest &= rest - 1)
            {
                int place = i + BitOperations.TrailingZeroCount(rest);
                places[others] = (ushort)place;
                tails[others++] = shares[place];
            }

            (q * Central(T.MultiplyAdd(-q, q, Middle * Middle))).Store(shares + i);
        }

        for (int i = 0; i < others; i += T.Width)
        {
            ((T)0.01).Store(tails + others);
            Outer(T.Load(tails + i)).Store(tails + i);
        }

        for (int i = 0; i < others; i++)
        {
            shares[places[i]] = tails[i];
        }
    }

    private static T Outer<T>(T share)
        where T : struct, ILanes<T>, IReal<T>
    {
        T depth = T.Sqrt(-T.Log(T.Min(share, 1 - share)));
        T tail = Tail(depth - 1.6);
        if (!T.AllBelow(depth, FarTail))
        {
            tail = T.IfLess(depth, FarTail, tail, Far(depth - FarTail));
        }

        return T.IfLess(share, 0.5, -tail, tail);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Central<T>(T r)
        where T : struct, ILanes<T>, IReal<T> =>
        Polynomial(
            r,
            2.5090809287301226727e+3,
            3.3430575583588128105e+4,
            6.7265770927008700853e+4,
            4.5921953931549871457e+4,
            1.3731693765509461125e+4,
            1.9715909503065514427e+3,
            1.3314166789178437745e+2,
            3.3871328727963666080e+0
        )
        / Polynomial(
            r,
            5.2264952788528545610e+3,
            2.8729085735721942674e+4,
            3.9307895800092710610e+4,
            2.1213794301586595867e+4,
            5.3941960214247511077e+3,
            6.8718700749205790830e+2,
            4.2313330701600911252e+1,
            1
        );

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Tail<T>(T r)
        where T : struct, ILanes<T>, IReal<T> =>
        Polynomial(
            r,
            7.74545014278341407640e-4,
            2.27238449892691845833e-2,
            2.41780725177450611770e-1,
            1.27045825245236838258e+0,
            3.64784832476320460504e+0,
            5.76949722146069140550e+0,
            4.63033784615654529590e+0,
            1.42343711074968357734e+0
        )
        / Polynomial(
            r,
            1.05075007164441684324e-9,
            5.47593808499534494600e-4,
            1.51986665636164571966e-2,
            1.48103976427480074590e-1,
            6.89767334985100004550e-1,
            1.67638483018380384940e+0,
            2.05319162663775882187e+0,
            1
        );

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Far<T>(T r)
        where T : struct, ILanes<T>, IReal<T> =>
        Polynomial(
            r,
            2.01033439929228813265e-7,
            2.71155556874348757815e-5,
            1.24266094738807843860e-3,
            2.65321895265761230930e-2,
            2.96560571828504891230e-1,
            1.78482653991729133580e+0,
            5.46378491116411436990e+0,
            6.65790464350110377720e+0
        )
        / Polynomial(
            r,
            2.04426310338993978564e-15,
            1.42151175831644588870e-7,
            1.84631831751005468180e-5,
            7.86869131145613259100e-4,
            1.48753612908506148525e-2,
            1.36929880922735805310e-1,
            5.99832206555887937690e-1,
            1
        );

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Polynomial<T>(
        T r,
        double c7,
        double c6,
        double c5,
        double c4,
        double c3,
        double c2,
        double c1,
        double c0
    )
        where T : struct, ILanes<T>, IReal<T>
    {
        T sum = T.MultiplyAdd(r, c7, c6);
        sum = T.MultiplyAdd(r, sum, c5);
        sum = T.MultiplyAdd(r, sum, c4);
        sum = T.MultiplyAdd(r, sum, c3);
        sum = T.MultiplyAdd(r, sum, c2);
        sum = T.MultiplyAdd(r, sum, c1);
        return T.MultiplyAdd(r, sum, c0);
    }
}
