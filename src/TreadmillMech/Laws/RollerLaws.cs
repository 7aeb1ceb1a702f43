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
}
