using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>What the take-up bolts do to the loop: centre distance, skew of the roller, strain across the belt.</summary>
public static class TakeUpLaws
{
    /// <summary>Change of centre distance on the belt's middle line [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="leftTravel">Travel of the left bolt, $s_l$ [m]; positive tightens.</param>
    /// <param name="rightTravel">Travel of the right bolt, $s_r$ [m]; positive tightens.</param>
    /// <param name="boltAngle">Angle between the bolts and the line of centres, $\gamma$ [rad], below pi/2.</param>
    /// <returns>Change of centre distance, $\Delta C$ [m].</returns>
    /// <remarks>$$\Delta C = \tfrac{s_l + s_r}{2} \cos\gamma$$</remarks>
    [Source("Derived: the roller's middle moves by the mean of its ends, projected on the line of centres")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CentreDistanceChange<T>(T leftTravel, T rightTravel, T boltAngle)
        where T : struct, IReal<T> => 0.5 * (leftTravel + rightTravel) * T.SinCos(boltAngle).Cos;

    /// <summary>Skew of the adjusted roller out of square [rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="leftTravel">Travel of the left bolt, $s_l$ [m]; positive tightens.</param>
    /// <param name="rightTravel">Travel of the right bolt, $s_r$ [m]; positive tightens.</param>
    /// <param name="boltAngle">Angle between the bolts and the line of centres, $\gamma$ [rad].</param>
    /// <param name="boltSpacing">Distance between the bolts across the belt, $w$ [m], above 0.</param>
    /// <returns>Skew, $\varphi$ [rad]; positive where the left side is the longer one.</returns>
    /// <remarks>$$\varphi = \frac{(s_l - s_r)\cos\gamma}{w}$$ for small angles.</remarks>
    [Source("Derived: small rotation of the roller about its middle")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Skew<T>(T leftTravel, T rightTravel, T boltAngle, T boltSpacing)
        where T : struct, IReal<T> => (leftTravel - rightTravel) * T.SinCos(boltAngle).Cos / boltSpacing;

    /// <summary>Elongation of the belt by a change of centre distance [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="centreDistanceChange">Change of centre distance, $\Delta C$ [m].</param>
    /// <param name="strandAngle">Strand angle, $a$ [rad].</param>
    /// <param name="loopLength">Loop length, $L$ [m], above 0.</param>
    /// <returns>Strain, $\varepsilon$ [1].</returns>
    /// <remarks>$$\varepsilon = \frac{2\,\Delta C \cos a}{L}$$</remarks>
    [Source("Derived from the loop length, docs/articles/conventions.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Elongation<T>(T centreDistanceChange, T strandAngle, T loopLength)
        where T : struct, IReal<T> => LoopLaws.LengthSlope(strandAngle) * centreDistanceChange / loopLength;

    /// <summary>Strain that the skew adds at the tight edge of the belt, and takes away at the other [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="skew">Skew of the roller, $\varphi$ [rad]; its sign says which edge.</param>
    /// <param name="beltWidth">Belt width, $b$ [m].</param>
    /// <param name="strandAngle">Strand angle, $a$ [rad].</param>
    /// <param name="loopLength">Loop length, $L$ [m], above 0.</param>
    /// <returns>Strain of the left edge above the mean [1].</returns>
    /// <remarks>
    /// $$\varepsilon_e = \frac{\varphi\, b \cos a}{L}$$ from the centre distance at the edge, longer by
    /// $\varphi\, b/2$. An upper bound: the belt relieves it by creeping sideways and by shear.
    /// </remarks>
    [Source("Derived from the loop length at the belt's edge, docs/articles/conventions.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T EdgeStrain<T>(T skew, T beltWidth, T strandAngle, T loopLength)
        where T : struct, IReal<T> => Elongation(0.5 * skew * beltWidth, strandAngle, loopLength);

    /// <summary>Axial force of one take-up bolt [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="hubLoad">Load of the belt on the adjusted roller, $H$ [N].</param>
    /// <param name="bolts">Number of bolts that share it, $n$ [1], above 0.</param>
    /// <param name="boltAngle">Angle between the bolts and the line of centres, $\gamma$ [rad].</param>
    /// <returns>Axial force, $F$ [N]; the guide carries the rest.</returns>
    /// <remarks>$$F = \frac{H \cos\gamma}{n}$$ without friction in the guide: the work of the bolts is that of the roller, $n F\,s = H\,\Delta C$ with $\Delta C = s\cos\gamma$.</remarks>
    [Source("Derived: virtual work with CentreDistanceChange")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BoltForce<T>(T hubLoad, T bolts, T boltAngle)
        where T : struct, IReal<T> => hubLoad * T.SinCos(boltAngle).Cos / bolts;

    /// <summary>Travel of the roller for each newton on it by the stretch of the take-up bolts [m/N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="stressArea">Stress area of one bolt, $A_s$ [m2], above 0.</param>
    /// <param name="elasticModulus">Elastic modulus of the bolts, $E$ [Pa], above 0.</param>
    /// <param name="freeLength">Length of bolt that is under load, $l_b$ [m].</param>
    /// <param name="bolts">Number of bolts that share the load, $n$ [1], above 0.</param>
    /// <param name="boltAngle">Angle between the bolts and the line of centres, $\gamma$ [rad].</param>
    /// <returns>Compliance, $1/k$ [m/N].</returns>
    /// <remarks>$$\frac1k = \frac{l_b\cos^2\gamma}{n E A_s}$$</remarks>
    [Source(
        "Derived: stiffness of a rod, Shigley's Mechanical Engineering Design, 9th ed., 8-5, eq. 8-17 with the threaded part alone, and virtual work"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BoltCompliance<T>(T stressArea, T elasticModulus, T freeLength, T bolts, T boltAngle)
        where T : struct, IReal<T>
    {
        T cos = T.SinCos(boltAngle).Cos;
        return freeLength * cos * cos / (bolts * elasticModulus * stressArea);
    }
}
