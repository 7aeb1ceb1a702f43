using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>What time, warmth and small rollers do to the running belt.</summary>
public static class BeltLifeLaws
{
    /// <summary>Tension left after a time of relaxation [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstTension">Tension one unit of time after fitting, $T_1$ [N].</param>
    /// <param name="relaxation">Share lost in each tenfold of time, $r$ [1], 0 to below 1.</param>
    /// <param name="decades">Tenfolds of time since then, $\log_{10}(t/t_1)$ [1], 0 or more.</param>
    /// <returns>Tension [N].</returns>
    /// <remarks>$$T = T_1 (1 - r \log_{10}\tfrac{t}{t_1})$$ An empirical straight line on a logarithm of time; the share is to be measured.</remarks>
    [Source(
        "Common description of stress relaxation of polymers, logarithm of time; ISO 21181 waits for it before it reads"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RelaxedTension<T>(T firstTension, T relaxation, T decades)
        where T : struct, IReal<T> => firstTension * (1 - (relaxation * decades));

    /// <summary>Tension of a belt as warm as it runs [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension when cold, $T$ [N].</param>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <param name="expansion">Thermal expansion of the belt less that of the frame, $\alpha$ [1/K].</param>
    /// <param name="softening">Share of stiffness lost for each kelvin, $\gamma$ [1/K].</param>
    /// <param name="rise">Temperature rise, $\Delta t$ [K].</param>
    /// <returns>Tension [N].</returns>
    /// <remarks>$$T_w = (T - EA\,\alpha\,\Delta t)(1 - \gamma\,\Delta t)$$ to first order in each.</remarks>
    [Source("Derived: strain shared between stretch and expansion, stiffness linear in temperature")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WarmTension<T>(T tension, T stiffness, T expansion, T softening, T rise)
        where T : struct, IReal<T> => (tension - (stiffness * expansion * rise)) * (1 - (softening * rise));

    /// <summary>Elastic creep of a belt that transmits a pull [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tightTension">Tight-side tension, $T_1$ [N].</param>
    /// <param name="slackTension">Slack-side tension, $T_2$ [N].</param>
    /// <param name="stiffness">Belt stiffness, $EA$ [N].</param>
    /// <returns>Relative loss of speed [1], to first order in the strains; not slip.</returns>
    /// <remarks>$$\frac{T_1 - T_2}{EA}$$</remarks>
    [Source(
        "Derived: as much belt leaves a pulley as runs on to it, each strand longer by its strain; Bird 1905, Belt creep"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Creep<T>(T tightTension, T slackTension, T stiffness)
        where T : struct, IReal<T> => (tightTension - slackTension) / stiffness;

    /// <summary>Bending strain at the face of a belt on a roller [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="thickness">Thickness of the belt, $h$ [m].</param>
    /// <param name="rollerDiameter">Outside diameter of the roller, $d$ [m].</param>
    /// <returns>Strain [1].</returns>
    /// <remarks>$$\varepsilon_b = \frac{h}{d + h}$$</remarks>
    [Source("Strain of a strip bent around a circle, neutral line in the middle")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BendingStrain<T>(T thickness, T rollerDiameter)
        where T : struct, IReal<T> => thickness / (rollerDiameter + thickness);

    /// <summary>Elongation of a belt between two marks [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="distance">Distance of the marks now, $l$ [m].</param>
    /// <param name="reference">Distance of the marks on the relaxed belt, $l_0$ [m].</param>
    /// <returns>Strain [1].</returns>
    /// <remarks>$$\frac{l - l_0}{l_0}$$</remarks>
    [Source("Definition of strain")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MarkElongation<T>(T distance, T reference)
        where T : struct, IReal<T> => (distance - reference) / reference;

    /// <summary>Normal force of a tensioned belt over both ends of the deck [N].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="tension">Strand tension of the upper strand, $T$ [N].</param>
    /// <param name="frontAngle">Angle by which the deck lifts the belt's line at the front, $\delta_1$ [rad].</param>
    /// <param name="rearAngle">The same at the rear, $\delta_2$ [rad].</param>
    /// <returns>Normal force of both ends together [N]; times the friction it is a drag that grows with tension.</returns>
    /// <remarks>$$N = 2T\left(\sin\tfrac{\delta_1}{2} + \sin\tfrac{\delta_2}{2}\right)$$</remarks>
    [Source("Statics of a belt bent over an edge")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DeckEdgeForce<T>(T tension, T frontAngle, T rearAngle)
        where T : struct, IReal<T> => 2 * tension * (T.SinCos(0.5 * frontAngle).Sin + T.SinCos(0.5 * rearAngle).Sin);

    /// <summary>Tenfolds of time between two times [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstTime">First time since fitting, $t_1$ [s], above 0.</param>
    /// <param name="time">Later time since fitting, $t$ [s], above 0.</param>
    /// <returns>Tenfolds [1].</returns>
    /// <remarks>$$\log_{10}\frac{t}{t_1}$$</remarks>
    [Source("Definition of the logarithm")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Decades<T>(T firstTime, T time)
        where T : struct, IReal<T> => T.Log(time / firstTime) * (1 / Math.Log(10));

    /// <summary>Least diameter of a roller that bends a belt no more than a strain [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="thickness">Thickness of the belt, $h$ [m].</param>
    /// <param name="strain">Bending strain allowed at its face, $\varepsilon_b$ [1], above 0.</param>
    /// <returns>Outside diameter, $d$ [m].</returns>
    /// <remarks>$$d = h\left(\frac{1}{\varepsilon_b} - 1\right)$$</remarks>
    [Source("Inverse of the bending strain of a strip, neutral line in the middle")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LeastRollerDiameter<T>(T thickness, T strain)
        where T : struct, IReal<T> => thickness * ((1 / strain) - 1);

    /// <summary>Angle by which the edge of the deck bends the belt's line [rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rise">Height of the deck's face above the line of the free belt at the roller, $z$ [m].</param>
    /// <param name="distance">Distance from the roller's axis to the edge of the deck, $a$ [m], above 0.</param>
    /// <returns>Angle, $\delta$ [rad].</returns>
    /// <remarks>$$\delta = \arctan\frac{z}{a}$$ with the belt flat on the deck behind the edge.</remarks>
    [Source("Geometry")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DeckEdgeAngle<T>(T rise, T distance)
        where T : struct, IReal<T> => T.Atan2(rise, distance);
}
