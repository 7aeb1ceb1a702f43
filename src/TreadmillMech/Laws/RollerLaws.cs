using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Rollers as bodies.</summary>
public static class RollerLaws
{
    /// <summary>Moment of inertia of a tube about its axis [kg m2].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="density">Density, $\rho$ [kg/m3].</param>
    /// <param name="diameter">Outside diameter, $d$ [m].</param>
    /// <param name="wall">Wall thickness, $w$ [m], at most half the diameter.</param>
    /// <param name="length">Length, $l$ [m].</param>
    /// <returns>Moment of inertia, $J$ [kg m2].</returns>
    /// <remarks>$$J = \frac{\pi \rho\, l}{32}\left[d^4 - (d - 2w)^4\right]$$</remarks>
    [Source("Polar moment of a hollow cylinder; Shigley's Mechanical Engineering Design, 9th ed., table A-18")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TubeInertia<T>(T density, T diameter, T wall, T length)
        where T : struct, IReal<T>
    {
        T outside = diameter * diameter;
        T bore = diameter - (2 * wall);
        T inside = bore * bore;
        return Math.PI / 32 * density * length * ((outside * outside) - (inside * inside));
    }

    /// <summary>Second moment of area of a tube [m4].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="diameter">Outside diameter, $d$ [m].</param>
    /// <param name="wall">Wall thickness, $w$ [m], at most half the diameter.</param>
    /// <returns>Second moment, $I$ [m4].</returns>
    /// <remarks>$$I = \frac{\pi}{64}\left[d^4 - (d - 2w)^4\right]$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., table A-18, hollow circle")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TubeSecondMoment<T>(T diameter, T wall)
        where T : struct, IReal<T>
    {
        T outside = diameter * diameter;
        T bore = diameter - (2 * wall);
        T inside = bore * bore;
        return Math.PI / 64 * ((outside * outside) - (inside * inside));
    }

    /// <summary>Deflection at the middle of a roller under a belt narrower than its bearing span [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Load of the belt on the roller, $W$ [N].</param>
    /// <param name="beltWidth">Belt width, $c$ [m], at most the span.</param>
    /// <param name="bearingSpan">Distance between the bearings, $L$ [m].</param>
    /// <param name="elasticModulus">Elastic modulus, $E$ [Pa].</param>
    /// <param name="secondMoment">Second moment of area, $I$ [m4].</param>
    /// <returns>Deflection [m].</returns>
    /// <remarks>$$\delta = \frac{W (8L^3 - 4c^2 L + c^3)}{384\,E I}$$ Spreading the load over the whole span reads too small.</remarks>
    [Source("Simply supported beam, uniform load on a central part; Roark's Formulas for Stress and Strain, beams")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Deflection<T>(T load, T beltWidth, T bearingSpan, T elasticModulus, T secondMoment)
        where T : struct, IReal<T> =>
        load
        * (
            (8 * bearingSpan * bearingSpan * bearingSpan)
            - (4 * beltWidth * beltWidth * bearingSpan)
            + (beltWidth * beltWidth * beltWidth)
        )
        / (384 * elasticModulus * secondMoment);

    /// <summary>Bending moment at the middle of a roller under a belt narrower than its bearing span [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Load of the belt on the roller, $W$ [N].</param>
    /// <param name="beltWidth">Belt width, $c$ [m], at most the span.</param>
    /// <param name="bearingSpan">Distance between the bearings, $L$ [m].</param>
    /// <returns>Moment [N m].</returns>
    /// <remarks>$$M = \frac{W L}{4} - \frac{W c}{8}$$</remarks>
    [Source("Statics of a simply supported beam, uniform load on a central part")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BendingMoment<T>(T load, T beltWidth, T bearingSpan)
        where T : struct, IReal<T> => load * ((0.25 * bearingSpan) - (0.125 * beltWidth));

    /// <summary>Bending stress at the face of a roller or shaft [Pa].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="moment">Bending moment, $M$ [N m].</param>
    /// <param name="diameter">Outside diameter, $d$ [m].</param>
    /// <param name="secondMoment">Second moment of area, $I$ [m4].</param>
    /// <returns>Stress [Pa]; it alternates with each turn.</returns>
    /// <remarks>$$\sigma = \frac{M d}{2 I}$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., 3-10, eq. 3-26")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BendingStress<T>(T moment, T diameter, T secondMoment)
        where T : struct, IReal<T> => 0.5 * moment * diameter / secondMoment;

    /// <summary>Bending moment of a shaft where it leaves its bearing or clamp [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Force on the overhanging end, $F$ [N].</param>
    /// <param name="overhang">Distance from the force to the bearing or clamp, $a$ [m].</param>
    /// <returns>Moment [N m].</returns>
    /// <remarks>$$M = F a$$</remarks>
    [Source("Shigley's Mechanical Engineering Design, 9th ed., table A-9, cantilever with end load")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OverhangMoment<T>(T load, T overhang)
        where T : struct, IReal<T> => load * overhang;
}
