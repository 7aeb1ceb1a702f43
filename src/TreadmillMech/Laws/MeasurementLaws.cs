using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Speeds, inclines and slips from what can be read.</summary>
public static class MeasurementLaws
{
    /// <summary>Belt speed from counted passes of a mark [m/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="loopLength">Loop length, $L$ [m].</param>
    /// <param name="passes">Passes counted, $n$ [1].</param>
    /// <param name="time">Time they took, $t$ [s], above 0.</param>
    /// <returns>Belt speed [m/s].</returns>
    /// <remarks>$$v = \frac{nL}{t}$$</remarks>
    [Source("Definition of speed")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpeedFromPasses<T>(T loopLength, T passes, T time)
        where T : struct, IReal<T> => passes * loopLength / time;

    /// <summary>Belt speed from the roller's speed [m/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="angularSpeed">Angular speed of the roller, $\omega$ [rad/s]; not its revolutions a second.</param>
    /// <param name="rollerDiameter">Outside diameter, $d$ [m].</param>
    /// <param name="beltThickness">Belt thickness, $h$ [m].</param>
    /// <returns>Speed of the belt's neutral line, no slip [m/s].</returns>
    /// <remarks>$$v = \omega\,\frac{d + h}{2}$$</remarks>
    [Source("Kinematics of rolling")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SpeedFromRoller<T>(T angularSpeed, T rollerDiameter, T beltThickness)
        where T : struct, IReal<T> => 0.5 * angularSpeed * (rollerDiameter + beltThickness);

    /// <summary>Relative error of a display [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="shown">Shown value, $v_d$ [m/s].</param>
    /// <param name="measured">Measured value, $v$ [m/s], not 0.</param>
    /// <returns>Error [1]; positive where the display reads high.</returns>
    /// <remarks>$$\frac{v_d - v}{v}$$</remarks>
    [Source("Definition of relative error")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DisplayError<T>(T shown, T measured)
        where T : struct, IReal<T> => (shown - measured) / measured;

    /// <summary>Grade of the deck on a floor that slopes itself [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rise">Rise of the front over the rear, from the floor, $z$ [m].</param>
    /// <param name="run">Horizontal distance between the two, $x$ [m], above 0.</param>
    /// <param name="floorSlope">Slope of the floor, positive where it climbs to the front, $g_0$ [1].</param>
    /// <returns>Grade against the horizontal [1].</returns>
    /// <remarks>$$\tan(\arctan\tfrac{z}{x} + \arctan g_0)$$</remarks>
    [Source("Sum of two angles")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Grade<T>(T rise, T run, T floorSlope)
        where T : struct, IReal<T>
    {
        T slope = rise / run;
        return (slope + floorSlope) / (1 - (slope * floorSlope));
    }

    /// <summary>Slip from a ratio of speeds under load and unloaded [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="loadedRatio">Driven over driving speed under load, $i$ [1].</param>
    /// <param name="unloadedRatio">The same unloaded, $i_0$ [1], above 0.</param>
    /// <returns>Slip [1].</returns>
    /// <remarks>$$s = 1 - \frac{i}{i_0}$$ no diameter is needed.</remarks>
    [Source("Khurmi and Gupta, Theory of Machines, ch. 11, slip of belt")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Slip<T>(T loadedRatio, T unloadedRatio)
        where T : struct, IReal<T> => 1 - (loadedRatio / unloadedRatio);

    /// <summary>Relative standard uncertainty of a product or quotient of two readings [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="first">Relative standard uncertainty of one, $u_1$ [1].</param>
    /// <param name="second">Relative standard uncertainty of the other, $u_2$ [1].</param>
    /// <returns>Relative standard uncertainty [1].</returns>
    /// <remarks>$$\sqrt{u_1^2 + u_2^2}$$ for independent readings.</remarks>
    [Source("JCGM 100:2008, 5.1.6, eq. 12")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RelativeUncertaintyOfTwo<T>(T first, T second)
        where T : struct, IReal<T> => CombinedUncertainty(first, 1, second);

    /// <summary>Standard uncertainty with one more independent reading in it [1], in the unit of the result.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="before">Standard uncertainty without that reading, $u_0$ [1], in the unit of the result.</param>
    /// <param name="sensitivity">Derivative of the result by the reading, over the unit of both, $c$ [1].</param>
    /// <param name="uncertainty">Standard uncertainty of the reading, over its unit, $u$ [1].</param>
    /// <returns>Standard uncertainty [1].</returns>
    /// <remarks>$$\sqrt{u_0^2 + (c\,u)^2}$$ to first order.</remarks>
    [Source("JCGM 100:2008, 5.1.2, eq. 10")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CombinedUncertainty<T>(T before, T sensitivity, T uncertainty)
        where T : struct, IReal<T>
    {
        T share = sensitivity * uncertainty;
        return T.Sqrt((before * before) + (share * share));
    }

    /// <summary>Angular speed of a roller at a belt speed [rad/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="speed">Belt speed, $v$ [m/s].</param>
    /// <param name="rollerDiameter">Outside diameter, $d$ [m], above 0.</param>
    /// <param name="beltThickness">Belt thickness, $h$ [m].</param>
    /// <returns>Angular speed, no slip, $\omega$ [rad/s].</returns>
    /// <remarks>$$\omega = \frac{2v}{d + h}$$</remarks>
    [Source("Kinematics of rolling; the inverse of SpeedFromRoller")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RollerSpeed<T>(T speed, T rollerDiameter, T beltThickness)
        where T : struct, IReal<T> => 2 * speed / (rollerDiameter + beltThickness);
}
