using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>
/// The load of one foot along the belt over its stance, with its derivatives by the phase and its integrals over a step,
/// written out from the shapes of <see cref="GaitLaws"/>: a search asks for many derivatives of the same sines.
/// </summary>
/// <remarks>
/// $$f(u) = N (\sin \pi u + q \sin 3 \pi u) + B\,g(u)$$ with the shape $g$ of <see cref="GaitLaws.ForeAftShape"/>: a half
/// sine of rate $1/\phi$ and peak $B$, then one of rate $1/(1-\phi)$ and peak $-B\phi/(1-\phi)$. Derived in
/// docs/articles/batch-and-speed.md; tests compare with the derivatives that the number types carry and with quadratures.
/// </remarks>
internal static class StanceLaws
{
    private const double Pi2 = Math.PI * Math.PI;
    private const double Pi3 = Pi2 * Math.PI;
    private const double Pi4 = Pi2 * Pi2;

    /// <summary>Peak of the push-off that has the impulse of the braking [N], as a load: negative.</summary>
    /// <remarks>$$-B\frac{\phi}{1-\phi}$$</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T PushPeak<T>(T brakingPeak, T brakingShare)
        where T : struct, IReal<T> => -(brakingPeak * brakingShare / (1 - brakingShare));

    /// <summary>Load of a foot [N] from the sine of its wave and the load of its lobe.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Load<T>(T normal, T third, T waveSin, T lobe)
        where T : struct, IReal<T>
    {
        T twice = 2 * waveSin;
        return T.MultiplyAdd(normal * waveSin, T.MultiplyAdd(third, 3 - (twice * twice), 1), lobe);
    }

    /// <summary>Load of a foot [N] and its derivative by the phase [N], from sine and cosine of both its waves.</summary>
    /// <param name="normal">Load that goes with the normal force, $N$ [N].</param>
    /// <param name="third">Third harmonic, $q$ [1].</param>
    /// <param name="peak">Peak of the lobe [N].</param>
    /// <param name="rate">Half waves of the lobe in a stance, $\kappa$ [1].</param>
    /// <param name="wave">Sine and cosine of $\pi u$.</param>
    /// <param name="lobe">Sine and cosine of the lobe's angle.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Load, T Slope) Foot<T>(
        T normal,
        T third,
        T peak,
        T rate,
        (T Sin, T Cos) wave,
        (T Sin, T Cos) lobe
    )
        where T : struct, IReal<T>
    {
        T twice = 2 * wave.Sin;
        T square = twice * twice;
        T load = T.MultiplyAdd(normal * wave.Sin, T.MultiplyAdd(third, 3 - square, 1), peak * lobe.Sin);
        T inner = normal * wave.Cos * T.MultiplyAdd(3 * third, 1 - square, 1);
        return (load, Math.PI * T.MultiplyAdd(peak * rate, lobe.Cos, inner));
    }

    /// <summary>Load of a foot and its first four derivatives by the phase [N].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static FootJet<T> Jet<T>(T normal, T third, T peak, T rate, (T Sin, T Cos) wave, (T Sin, T Cos) lobe)
        where T : struct, IReal<T>
    {
        T twice = 2 * wave.Sin;
        T square = twice * twice;
        T sin = normal * wave.Sin;
        T cos = normal * wave.Cos;
        T sinThird = sin * third * (3 - square);
        T cosThird = cos * third * (1 - square);
        T lobeSin = peak * lobe.Sin;
        T lobeCos = peak * rate * lobe.Cos;
        T rates = rate * rate;
        T lobeSinRates = lobeSin * rates;
        FootJet<T> jet;
        jet.F0 = sin + sinThird + lobeSin;
        jet.F1 = Math.PI * (T.MultiplyAdd(cosThird, 3, cos) + lobeCos);
        jet.F2 = -Pi2 * (T.MultiplyAdd(sinThird, 9, sin) + lobeSinRates);
        jet.F3 = -Pi3 * T.MultiplyAdd(lobeCos, rates, T.MultiplyAdd(cosThird, 27, cos));
        jet.F4 = Pi4 * T.MultiplyAdd(lobeSinRates, rates, T.MultiplyAdd(sinThird, 81, sin));
        return jet;
    }

    /// <summary>Bound of a derivative of even order $n$ of the load of a foot by the phase [N].</summary>
    /// <param name="normal">Load that goes with the normal force, $N$ [N].</param>
    /// <param name="third">Third harmonic, $q$ [1].</param>
    /// <param name="thirdPower">$3^n$ [1].</param>
    /// <param name="lobes">The lobes' larger peak times its rate to the power $n$ [N].</param>
    /// <returns>$|N| (1 + 3^n |q|) + $ the lobes' part [N]; times $\pi^n$ the bound.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Bound<T>(T normal, T third, double thirdPower, T lobes)
        where T : struct, IReal<T> => T.MultiplyAdd(T.Abs(normal), T.MultiplyAdd(thirdPower, T.Abs(third), 1), lobes);

    /// <summary>Integral of the load over the stance, in phases [N].</summary>
    /// <remarks>$$\int_0^1 f\,du = \frac{2N}{\pi}\left(1 + \frac q3\right)$$ the lobes have no mean.</remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Sum<T>(T normal, T third)
        where T : struct, IReal<T> => 2.0 / Math.PI * normal * (1 + (1.0 / 3.0 * third));

    /// <summary>Integral of the load times the phase over the stance [N].</summary>
    /// <remarks>
    /// $$\int_0^1 u f\,du = \frac{N}{\pi}\left(1 + \frac q3\right) - \frac{B\phi}{\pi}$$
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T FirstMoment<T>(T normal, T third, T brakingPeak, T brakingShare)
        where T : struct, IReal<T> =>
        1.0 / Math.PI * ((normal * (1 + (1.0 / 3.0 * third))) - (brakingPeak * brakingShare));

    /// <summary>Integral of the square of the load over the stance [N2].</summary>
    /// <remarks>
    /// $$\int_0^1 f^2 du = \frac{N^2 (1 + q^2)}{2} + 2 N B\,(G_1 + q G_3) + \frac{B^2 \phi}{2 (1 - \phi)}$$
    /// $$G_k = \frac{\phi \sin k\pi\phi}{\pi}\left(\frac{1}{1 - k^2\phi^2} - \frac{1}{1 - k^2(1-\phi)^2}\right)$$
    /// With $k = 3$ the poles at one and two thirds are taken out: $\sin 3\pi\phi = \sin \pi(1 - 3\phi)$.
    /// </remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static T SquareSum<T>(T normal, T third, T brakingPeak, T brakingShare)
        where T : struct, IReal<T>
    {
        T rest = 1 - brakingShare;
        T first = T.SinCosPi(brakingShare).Sin * (1 / (rest * (1 + brakingShare)) - 1 / (brakingShare * (1 + rest)));
        T x = 3 * brakingShare;
        T second = (Sinc(1 - x) / (1 + x)) - (Sinc(x - 2) / (4 - x));
        T cross = brakingShare * (1.0 / Math.PI) * T.MultiplyAdd(third, second, first);
        return (0.5 * normal * normal * (1 + (third * third)))
            + (brakingPeak * ((2 * normal * cross) + (0.5 * brakingPeak * brakingShare / rest)));
    }

    /// <summary>Integral of the product of both feet's loads over the time that both are on the belt [N2].</summary>
    /// <param name="normal">Load that goes with the normal force, $N$ [N].</param>
    /// <param name="third">Third harmonic, $q$ [1].</param>
    /// <param name="brakingPeak">Peak of the braking foot, $B$ [N].</param>
    /// <param name="brakingRate">Its rate, $1/\phi$ [1].</param>
    /// <param name="pushPeak">Peak of the pushing foot [N].</param>
    /// <param name="pushRate">Its rate, $1/(1-\phi)$ [1].</param>
    /// <param name="overlap">Phases that both feet are down, $o$ [1], not beyond the end of braking.</param>
    /// <remarks>
    /// Counted back from toe-off the foot behind has the sines of a foot that lands, so this is a sum of
    /// <see cref="Pair"/> over both feet's waves.
    /// </remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static T ProductSum<T>(T normal, T third, T brakingPeak, T brakingRate, T pushPeak, T pushRate, T overlap)
        where T : struct, IReal<T>
    {
        (T Sin, T Cos) first = T.SinCosPi(overlap);
        (T Sin, T Cos) thirds = T.SinCosPi(3 * overlap);
        (T Sin, T Cos) braking = T.SinCosPi(brakingRate * overlap);
        (T Sin, T Cos) push = T.SinCosPi(pushRate * overlap);
        T waves =
            Alone(1, first, overlap)
            + (third * ((0.25 / Math.PI * ((3 * first.Sin) - thirds.Sin)) + (third * Alone(3, thirds, overlap))));
        T withPush = Pair(1, pushRate, first, push, overlap) + (third * Pair(3, pushRate, thirds, push, overlap));
        T withBraking =
            Pair(1, brakingRate, first, braking, overlap) + (third * Pair(3, brakingRate, thirds, braking, overlap));
        T lobes = Pair(brakingRate, pushRate, braking, push, overlap);
        return (normal * ((normal * waves) + (pushPeak * withPush) + (brakingPeak * withBraking)))
            + (brakingPeak * pushPeak * lobes);
    }

    /// <summary>Integral of $\sin a\pi u \sin c\pi(o - u)$ from 0 to $o$ [1].</summary>
    /// <remarks>
    /// $$\frac{c \sin a\pi o - a \sin c\pi o}{\pi (c^2 - a^2)}$$ and for equal rates $\frac12(\frac{\sin a\pi o}{a\pi} - o
    /// \cos a\pi o)$, which stands in where they differ by less than 1e-5 of their squares.
    /// </remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Pair<T>(T a, T c, (T Sin, T Cos) atA, (T Sin, T Cos) atC, T overlap)
        where T : struct, IReal<T>
    {
        T apart = (c - a) * (c + a);
        T alike = 0.5 * (Alone(a, atA, overlap) + Alone(c, atC, overlap));
        return T.IfLess(
            T.Abs(apart),
            1e-5,
            alike,
            ((c * atA.Sin) - (a * atC.Sin)) * (1.0 / Math.PI) / T.IfLess(T.Abs(apart), 1e-5, 1, apart)
        );
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Alone<T>(T rate, (T Sin, T Cos) at, T overlap)
        where T : struct, IReal<T> => 0.5 * ((at.Sin / (Math.PI * rate)) - (overlap * at.Cos));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Sinc<T>(T x)
        where T : struct, IReal<T> =>
        T.IfLess(T.Abs(x), 1e-8, Math.PI, T.SinCosPi(x).Sin / T.IfLess(T.Abs(x), 1e-8, 1, x));
}
