using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Load of belts on the hubs and bearings of rollers and pulleys.</summary>
public static class HubLaws
{
    /// <summary>Load on a hub: vector sum of both strands [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstTension">Tension of one strand above the centrifugal part, $T_1$ [N].</param>
    /// <param name="secondTension">Tension of the other above the centrifugal part, $T_2$ [N].</param>
    /// <param name="wrap">Wrap, $\theta$ [rad].</param>
    /// <returns>Hub load, $H$ [N].</returns>
    /// <remarks>
    /// $$H = \sqrt{T_1^2 + T_2^2 - 2 T_1 T_2 \cos\theta} = \sqrt{(T_1 - T_2)^2 + 4 T_1 T_2 \sin^2(\theta/2)}$$
    /// evaluated in the second form. At half a turn of wrap it is the sum of the tensions.
    /// </remarks>
    [Source(
        "Law of cosines on the strand forces; Khurmi and Gupta, A Textbook of Machine Design, belts: load on the shaft"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T HubLoad<T>(T firstTension, T secondTension, T wrap)
        where T : struct, IReal<T>
    {
        T difference = firstTension - secondTension;
        T sin = T.SinCos(0.5 * wrap).Sin;
        return T.Sqrt((difference * difference) + (4 * firstTension * secondTension * sin * sin));
    }

    /// <summary>Load on the hub of one side of a roller, where what a person adds acts off the middle [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="evenLoad">Load of both hubs that is even on both sides: that at rest, $H_0$ [N].</param>
    /// <param name="addedLoad">Load of both hubs that the person adds, $\Delta H$ [N]; negative where they relieve.</param>
    /// <param name="offset">Distance of the added load from the middle towards this side, $y$ [m].</param>
    /// <param name="hubSpacing">Distance between both hubs, $w$ [m], above 0.</param>
    /// <returns>Load on the hub of this side [N]; for the other, with the opposite offset.</returns>
    /// <remarks>
    /// $$\frac{H_0}{2} + \Delta H \left(\frac12 + \frac{y}{w}\right)$$ A bound: the belt spreads what one edge carries over
    /// its width on the way to the roller.
    /// </remarks>
    [Source("Statics of a shaft on two hubs; docs/articles/gait.md")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SideLoad<T>(T evenLoad, T addedLoad, T offset, T hubSpacing)
        where T : struct, IReal<T> => (0.5 * evenLoad) + (addedLoad * (0.5 + (offset / hubSpacing)));

    /// <summary>Load on the bearing next to an overhanging pulley [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Load of the belt on the pulley, $H$ [N].</param>
    /// <param name="overhang">Distance of the pulley from the near bearing, $a$ [m].</param>
    /// <param name="spacing">Distance between the bearings, $b$ [m], above 0.</param>
    /// <returns>Load [N], larger than that on the pulley.</returns>
    /// <remarks>$$\frac{H(a + b)}{b}$$</remarks>
    [Source(
        "Moments about the far bearing; Shigley's Mechanical Engineering Design, 9th ed., table A-9, simple supports, overhanging load"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T NearBearingLoad<T>(T load, T overhang, T spacing)
        where T : struct, IReal<T> => load * (overhang + spacing) / spacing;

    /// <summary>Load on the other bearing of a shaft with an overhanging pulley [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="load">Load of the belt on the pulley, $H$ [N].</param>
    /// <param name="overhang">Distance of the pulley from the near bearing, $a$ [m].</param>
    /// <param name="spacing">Distance between the bearings, $b$ [m], above 0.</param>
    /// <returns>Load [N], of the opposite direction.</returns>
    /// <remarks>$$\frac{H a}{b}$$</remarks>
    [Source(
        "Moments about the near bearing; Shigley's Mechanical Engineering Design, 9th ed., table A-9, simple supports, overhanging load"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FarBearingLoad<T>(T load, T overhang, T spacing)
        where T : struct, IReal<T> => load * overhang / spacing;
}
