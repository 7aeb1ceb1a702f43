using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Geometry of an open belt around two rollers. Radii reach to the belt's neutral line.</summary>
public static class LoopLaws
{
    /// <summary>Angle between a strand and the line of centres [rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="radius">Radius of the roller looked at, $r_1$ [m], above 0.</param>
    /// <param name="otherRadius">Radius of the other roller, $r_2$ [m], above 0.</param>
    /// <param name="centreDistance">Distance between the axes, $C$ [m], above $|r_1 - r_2|$.</param>
    /// <returns>Angle $a$ [rad]; positive where the roller looked at is the larger one.</returns>
    /// <remarks>$$\sin a = \frac{r_1 - r_2}{C}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 17-2, eq. 17-1 (open belt)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StrandAngle<T>(T radius, T otherRadius, T centreDistance)
        where T : struct, IReal<T> => T.Asin((radius - otherRadius) / centreDistance);

    /// <summary>Wrap of the belt on the roller whose strand angle is given [rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="strandAngle">Strand angle as seen from that roller, $a$ [rad].</param>
    /// <returns>Wrap, $\theta$ [rad].</returns>
    /// <remarks>$$\theta = \pi + 2a$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 17-2, eq. 17-1 (open belt)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Wrap<T>(T strandAngle)
        where T : struct, IReal<T> => Math.PI + (2 * strandAngle);

    /// <summary>Free length of one strand between the rollers [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="centreDistance">Distance between the axes, $C$ [m].</param>
    /// <param name="strandAngle">Strand angle, $a$ [rad].</param>
    /// <returns>Strand length [m].</returns>
    /// <remarks>$$\ell = C \cos a$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 17-2, eq. 17-2, straight part")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StrandLength<T>(T centreDistance, T strandAngle)
        where T : struct, IReal<T> => centreDistance * T.SinCos(strandAngle).Cos;

    /// <summary>Length of the loop [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="radius">Radius of one roller, $r_1$ [m].</param>
    /// <param name="otherRadius">Radius of the other, $r_2$ [m].</param>
    /// <param name="centreDistance">Distance between the axes, $C$ [m].</param>
    /// <returns>Loop length, $L$ [m].</returns>
    /// <remarks>$$L = 2C\cos a + r_1(\pi + 2a) + r_2(\pi - 2a)$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 17-2, eq. 17-2 (open belt)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Length<T>(T radius, T otherRadius, T centreDistance)
        where T : struct, IReal<T>
    {
        T a = StrandAngle(radius, otherRadius, centreDistance);
        return (2 * StrandLength(centreDistance, a)) + (radius * Wrap(a)) + (otherRadius * Wrap(-a));
    }

    /// <summary>Loop length gained for each length of centre distance [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="strandAngle">Strand angle, $a$ [rad].</param>
    /// <returns>Derivative $dL/dC$ [1].</returns>
    /// <remarks>
    /// $$\frac{dL}{dC} = 2\cos a$$ exactly: what the strands lose by tilting, the wraps gain.
    /// </remarks>
    [Source("Derived from the loop length, docs/articles/conventions.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LengthSlope<T>(T strandAngle)
        where T : struct, IReal<T> => 2 * T.SinCos(strandAngle).Cos;
}
