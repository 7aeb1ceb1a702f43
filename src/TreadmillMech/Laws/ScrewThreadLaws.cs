using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Geometry of screw threads: diameters, stress area, travel per turn.</summary>
/// <remarks>
/// Metric and unified threads share the 60 degree profile but not the definition of the stress area: each family has a
/// law of its own, and using one for the other errs by 1 to 2 per cent.
/// </remarks>
public static class ScrewThreadLaws
{
    /// <summary>Pitch diameter of a 60 degree thread [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="diameter">Nominal diameter, $d$ [m], above 0.</param>
    /// <param name="pitch">Pitch, $P$ [m], above 0.</param>
    /// <returns>Pitch diameter, $d_2$ [m].</returns>
    /// <remarks>$$d_2 = d - \tfrac{3\sqrt3}{8} P$$</remarks>
    [Source("ISO 724:1993, clause 4; the same profile in ASME B1.1")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PitchDiameter<T>(T diameter, T pitch)
        where T : struct, IReal<T> => diameter - (0.649519052838329 * pitch);

    /// <summary>Minor diameter of the basic 60 degree profile [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="diameter">Nominal diameter, $d$ [m], above 0.</param>
    /// <param name="pitch">Pitch, $P$ [m], above 0.</param>
    /// <returns>Minor diameter, $D_1$ [m].</returns>
    /// <remarks>$$D_1 = d - \tfrac{5\sqrt3}{8} P$$</remarks>
    [Source("ISO 724:1993, clause 4")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MinorDiameter<T>(T diameter, T pitch)
        where T : struct, IReal<T> => diameter - (1.08253175473055 * pitch);

    /// <summary>Root diameter of a metric bolt thread with rounded root [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="diameter">Nominal diameter, $d$ [m], above 0.</param>
    /// <param name="pitch">Pitch, $P$ [m], above 0.</param>
    /// <returns>Root diameter, $d_3$ [m].</returns>
    /// <remarks>$$d_3 = d - \tfrac{17\sqrt3}{24} P$$</remarks>
    [Source("DIN 13-1, root of the external thread (H/6 rounding)")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RootDiameter<T>(T diameter, T pitch)
        where T : struct, IReal<T> => diameter - (1.22686932202795 * pitch);

    /// <summary>Tensile stress area of a metric bolt [m2].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="diameter">Nominal diameter, $d$ [m], above 0.</param>
    /// <param name="pitch">Pitch, $P$ [m], above 0.</param>
    /// <returns>Stress area, $A_s$ [m2].</returns>
    /// <remarks>$$A_s = \tfrac{\pi}{4} (d - 0.938194\,P)^2$$</remarks>
    [Source("ISO 898-1:2013, 9.1.6.1: pi/4 ((d2 + d3)/2)^2")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MetricStressArea<T>(T diameter, T pitch)
        where T : struct, IReal<T>
    {
        T mean = diameter - (0.938194187433141 * pitch);
        return Math.PI / 4 * mean * mean;
    }

    /// <summary>Tensile stress area of a unified (inch) bolt [m2].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="diameter">Nominal diameter, $D$ [m], above 0.</param>
    /// <param name="pitch">Pitch, one inch over the threads per inch, $1/n$ [m], above 0.</param>
    /// <returns>Stress area, $A_s$ [m2].</returns>
    /// <remarks>$$A_s = \tfrac{\pi}{4} (D - 0.974279/n)^2$$</remarks>
    [Source("ASME B1.1, tensile stress area: pi/4 (D - 9 sqrt(3)/(16 n))^2")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T UnifiedStressArea<T>(T diameter, T pitch)
        where T : struct, IReal<T>
    {
        T mean = diameter - (0.974278579257494 * pitch);
        return Math.PI / 4 * mean * mean;
    }

    /// <summary>Axial travel of a screw [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="lead">Travel in one turn, $l$ [m].</param>
    /// <param name="turns">Turns, $n$ [1]; positive tightens.</param>
    /// <returns>Travel, $s$ [m].</returns>
    /// <remarks>$$s = n\,l$$</remarks>
    [Source("Definition of lead: axial travel in one turn, Shigley's Mechanical Engineering Design, 9th ed., 8-1")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Travel<T>(T lead, T turns)
        where T : struct, IReal<T> => lead * turns;

    /// <summary>Turns of a screw for an axial travel [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="lead">Travel in one turn, $l$ [m], above 0.</param>
    /// <param name="travel">Travel, $s$ [m].</param>
    /// <returns>Turns, $n$ [1].</returns>
    /// <remarks>$$n = \frac{s}{l}$$</remarks>
    [Source("Definition of lead, Shigley's Mechanical Engineering Design, 9th ed., 8-1")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Turns<T>(T lead, T travel)
        where T : struct, IReal<T> => travel / lead;

    /// <summary>Diameter of the rod with the stress area of a screw [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stressArea">Stress area, $A_s$ [m2].</param>
    /// <returns>Diameter, $d_s$ [m].</returns>
    /// <remarks>$$d_s = \sqrt{\frac{4 A_s}{\pi}}$$</remarks>
    [Source("Area of a circle; VDI 2230:2003, 5.5")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StressDiameter<T>(T stressArea)
        where T : struct, IReal<T> => T.Sqrt(stressArea * (4 / Math.PI));
}
