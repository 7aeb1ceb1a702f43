using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Sideways drift of a belt on a roller out of square.</summary>
public static class TrackingLaws
{
    /// <summary>Sideways drift for each metre of belt that passes, belt taken as a string [m/m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="skew">Skew of the roller, $\varphi$ [rad]; positive where the left side is the longer one.</param>
    /// <param name="centreDistance">Distance between the axes, $C$ [m].</param>
    /// <param name="loopLength">Loop length, $L$ [m].</param>
    /// <returns>Drift to the right for each metre of belt [1]: towards the side with the shorter centre distance.</returns>
    /// <remarks>$$\frac{dy}{dx} = \frac{\varphi\,C}{L}$$ An upper limit: see <see cref="BeamFactor"/>.</remarks>
    [Source(
        "Adv. Mech. Eng. 2017, doi 10.1177/1687814017695955: direction and proportionality; string limit derived in docs/articles/tracking.md"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StringDrift<T>(T skew, T centreDistance, T loopLength)
        where T : struct, IReal<T> => skew * centreDistance / loopLength;

    /// <summary>Factor by which a wide belt, a beam in its own plane, drifts less than a string [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="centreDistance">Distance between the axes, $C$ [m].</param>
    /// <param name="beltWidth">Belt width, $b$ [m].</param>
    /// <param name="strain">Strain of the belt, $\varepsilon$ [1], above 0.</param>
    /// <returns>Factor [1], from one third for a stiff belt to one for a string.</returns>
    /// <remarks>
    /// $$2h - 1, \quad h = \frac{\cosh z - \sinh z / z}{\cosh z - 1}, \quad z = \frac{C}{b}\sqrt{12\,\varepsilon}$$
    /// evaluated as $\left(1 - 2\tau/z\right)/\tau^2$ with $\tau = \tanh(z/2)$, which does not overflow; below $z = 0.05$,
    /// where that loses digits, its series $\frac13 + \frac{z^2}{45} - \frac{z^4}{1260}$.
    /// </remarks>
    [Source("Shelton 1968, Lateral dynamics of a moving web (beam under tension); docs/articles/tracking.md")]
    public static T BeamFactor<T>(T centreDistance, T beltWidth, T strain)
        where T : struct, IReal<T>
    {
        // cosh z - 1 = 2 sinh^2(z/2), sinh z = 2 sinh(z/2) cosh(z/2): with tau = tanh(z/2),
        // h = (1 + tau^2 - 2 tau/z) / (2 tau^2).
        T z = centreDistance / beltWidth * T.Sqrt(12 * strain);
        T tau = T.Tanh(0.5 * z);
        T factor = (1 - (2 * tau / z)) / (tau * tau);
        T series = (1.0 / 3.0) + (z * z * ((1.0 / 45.0) - (z * z * (1.0 / 1260.0))));
        return T.IfLess(z, 0.05, series, factor);
    }

    /// <summary>Offset at which a crowned belt settles on a roller out of square [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="driftPerMeter">Drift for each metre of belt, $g\varphi$ [1].</param>
    /// <param name="crownLength">Length of belt in which the crown brings an offset down to 1/e, $\lambda$ [m].</param>
    /// <returns>Offset [m]; beyond the room at the edge it reaches the rail, otherwise it never does.</returns>
    /// <remarks>$$y_\infty = \lambda\,g\varphi$$ the steady state of $y' = g\varphi - y/\lambda$ for each metre.</remarks>
    [Source(
        "Linear restoring crown, Yoshida et al. 2024, doi 10.15406/iratj.2024.10.00287: speed difference over a crown"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SettledOffset<T>(T driftPerMeter, T crownLength)
        where T : struct, IReal<T> => driftPerMeter * crownLength;

    /// <summary>Offset after a length of belt has passed [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstOffset">Offset at the beginning, $y_0$ [m].</param>
    /// <param name="settledOffset">Offset at which it settles, $y_\infty$ [m].</param>
    /// <param name="length">Length of belt passed, $x$ [m].</param>
    /// <param name="crownLength">Length in which the crown brings an offset down to 1/e, $\lambda$ [m], above 0.</param>
    /// <returns>Offset [m].</returns>
    /// <remarks>$$y = y_\infty + (y_0 - y_\infty)\,e^{-x/\lambda}$$</remarks>
    [Source("Solution of the linear restoring crown")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OffsetAfter<T>(T firstOffset, T settledOffset, T length, T crownLength)
        where T : struct, IReal<T> => settledOffset + ((firstOffset - settledOffset) * T.Exp(-(length / crownLength)));

    /// <summary>Tracking gain from an observed turn [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="driftChange">Change of the drift for each metre by the turn, $\Delta(dy/dx)$ [1].</param>
    /// <param name="skewChange">Change of the roller's skew by the turn, $\Delta\varphi$ [rad], not 0.</param>
    /// <param name="centreDistance">Distance between the axes, $C$ [m].</param>
    /// <param name="loopLength">Loop length, $L$ [m].</param>
    /// <returns>Gain [1]: one for a string, a third for a stiff wide belt.</returns>
    /// <remarks>$$g = \frac{\Delta(dy/dx)\,L}{\Delta\varphi\,C}$$</remarks>
    [Source("Inverse of the string drift")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ObservedGain<T>(T driftChange, T skewChange, T centreDistance, T loopLength)
        where T : struct, IReal<T> => driftChange / StringDrift(skewChange, centreDistance, loopLength);

    /// <summary>Length of belt that passes until an offset is reached on a crowned roller [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstOffset">Offset at the beginning, $y_0$ [m].</param>
    /// <param name="settledOffset">Offset at which it settles, $y_\infty$ [m].</param>
    /// <param name="offset">Offset to be reached, $y$ [m], between the other two.</param>
    /// <param name="crownLength">Length in which the crown brings an offset down to 1/e, $\lambda$ [m], above 0.</param>
    /// <returns>Length of belt, $x$ [m]; no number where it never gets there.</returns>
    /// <remarks>$$x = \lambda \ln\frac{y_\infty - y_0}{y_\infty - y}$$</remarks>
    [Source("Inverse of the linear restoring crown")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LengthToOffset<T>(T firstOffset, T settledOffset, T offset, T crownLength)
        where T : struct, IReal<T> => crownLength * T.Log((settledOffset - firstOffset) / (settledOffset - offset));

    /// <summary>Length in which a crown brings an offset down to 1/e, from two offsets [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstOffset">Offset at the beginning, $y_0$ [m].</param>
    /// <param name="settledOffset">Offset at which it settles, $y_\infty$ [m].</param>
    /// <param name="offset">Offset afterwards, $y$ [m], between the other two.</param>
    /// <param name="length">Length of belt passed between the two, $x$ [m].</param>
    /// <returns>Crown length, $\lambda$ [m].</returns>
    /// <remarks>$$\lambda = \frac{x}{\ln\dfrac{y_\infty - y_0}{y_\infty - y}}$$</remarks>
    [Source("Inverse of the linear restoring crown")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CrownLength<T>(T firstOffset, T settledOffset, T offset, T length)
        where T : struct, IReal<T> => length / T.Log((settledOffset - firstOffset) / (settledOffset - offset));

    /// <summary>Length of belt that passes until an offset is reached where nothing centres the belt [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstOffset">Offset at the beginning, $y_0$ [m].</param>
    /// <param name="offset">Offset to be reached, $y$ [m].</param>
    /// <param name="driftPerMeter">Drift for each metre of belt, $y'$ [1], not 0.</param>
    /// <returns>Length of belt, $x$ [m]; negative where it drifts away from that offset.</returns>
    /// <remarks>$$x = \frac{y - y_0}{y'}$$ the limit of a very long crown length.</remarks>
    [Source("Steady drift")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LengthAtSteadyDrift<T>(T firstOffset, T offset, T driftPerMeter)
        where T : struct, IReal<T> => (offset - firstOffset) / driftPerMeter;

    /// <summary>Offset after a length of belt has passed where nothing centres the belt [m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstOffset">Offset at the beginning, $y_0$ [m].</param>
    /// <param name="driftPerMeter">Drift for each metre of belt, $y'$ [1].</param>
    /// <param name="length">Length of belt passed, $x$ [m].</param>
    /// <returns>Offset [m].</returns>
    /// <remarks>$$y = y_0 + y' x$$</remarks>
    [Source("Steady drift")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OffsetAtSteadyDrift<T>(T firstOffset, T driftPerMeter, T length)
        where T : struct, IReal<T> => firstOffset + (driftPerMeter * length);

    /// <summary>Turns still needed until a drift is nothing, from what the turns given did [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="turns">Turns given, $n$ [1].</param>
    /// <param name="driftBefore">Drift for each metre before them, $d_0$ [1].</param>
    /// <param name="driftAfter">Drift for each metre after them, $d_1$ [1], not that before.</param>
    /// <returns>Turns [1]; positive in the direction of those given.</returns>
    /// <remarks>$$n\,\frac{d_1}{d_0 - d_1}$$ the drift changes in proportion to the turns.</remarks>
    [Source("Rule of three on the string drift")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TurnsLeft<T>(T turns, T driftBefore, T driftAfter)
        where T : struct, IReal<T> => turns * driftAfter / (driftBefore - driftAfter);

    /// <summary>Sideways drift for each metre of belt under a load off its middle, belt taken as a stiff strip [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="moment">Pull of the feet times their offset, $F y$ [N m].</param>
    /// <param name="place">Place of the load behind the axis of the front roller, $a$ [m], 0 to $C$.</param>
    /// <param name="centreDistance">Distance between the axes, $C$ [m].</param>
    /// <param name="loopLength">Loop length, $L$ [m].</param>
    /// <param name="bendingStiffness">Bending stiffness of the strand in its plane, $EI$ [N m2], above 0.</param>
    /// <returns>Drift for each metre of belt [1], positive to the side of the feet.</returns>
    /// <remarks>
    /// $$\frac{dy}{dx} = \frac{F y\,a\,(2C - 3a)}{6\,EI\,L}$$ It turns its sign where the load is two thirds of the way
    /// back. Square rollers and small tension over stiffness; an order of magnitude.
    /// </remarks>
    [Source(
        "Beam with the entry conditions of Shelton 1968 and a couple on the span; derived in docs/articles/gait.md"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T OffCentreDrift<T>(T moment, T place, T centreDistance, T loopLength, T bendingStiffness)
        where T : struct, IReal<T> =>
        moment * place * ((2 * centreDistance) - (3 * place)) / (6 * bendingStiffness * loopLength);
}
