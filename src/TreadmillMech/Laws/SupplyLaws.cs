using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>What the machine draws from the mains.</summary>
public static class SupplyLaws
{
    /// <summary>Power from the mains for a power at the motor's terminals [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorPower">Power at the motor's terminals, $P_m$ [W]; negative where the motor brakes.</param>
    /// <param name="efficiency">Efficiency of the controller, $\eta$ [1], above 0.</param>
    /// <param name="standbyPower">Power of console and controller at rest, $P_0$ [W].</param>
    /// <returns>Mains power [W]. Braking power is turned into heat, not fed back.</returns>
    /// <remarks>$$P = P_0 + \max(0, P_m)/\eta$$</remarks>
    [Source("Definition of efficiency")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MainsPower<T>(T motorPower, T efficiency, T standbyPower)
        where T : struct, IReal<T> => standbyPower + (T.Max(0, motorPower) / efficiency);

    /// <summary>Current from single-phase mains [A].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mainsPower">Mains power, $P$ [W].</param>
    /// <param name="mainsVoltage">Mains voltage, root mean square, $V$ [V], above 0.</param>
    /// <param name="powerFactor">Power factor, $\lambda$ [1], above 0.</param>
    /// <returns>Mains current, root mean square [A].</returns>
    /// <remarks>$$I = \frac{P}{V \lambda}$$</remarks>
    [Source("Definition of the power factor")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T MainsCurrent<T>(T mainsPower, T mainsVoltage, T powerFactor)
        where T : struct, IReal<T> => mainsPower / (mainsVoltage * powerFactor);

    /// <summary>Root mean square of two loads in turn [1], in the unit of the loads.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="firstLoad">First load, a current or power over a reference, $a$ [1].</param>
    /// <param name="firstShare">Share of time under it, $q$ [1], 0 to 1.</param>
    /// <param name="secondLoad">Second load, $b$ [1].</param>
    /// <returns>Root mean square [1].</returns>
    /// <remarks>$$\sqrt{q a^2 + (1 - q) b^2}$$ Apply it again for more than two.</remarks>
    [Source("Definition of the root mean square")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RmsOfTwo<T>(T firstLoad, T firstShare, T secondLoad)
        where T : struct, IReal<T> =>
        T.Sqrt((firstShare * firstLoad * firstLoad) + ((1 - firstShare) * secondLoad * secondLoad));

    /// <summary>Root mean square of a load that climbs in a straight line [1], in the unit of the load.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="from">Load at the beginning, $a$ [1].</param>
    /// <param name="to">Load at the end, $b$ [1].</param>
    /// <returns>Root mean square [1].</returns>
    /// <remarks>$$\sqrt{\tfrac13 (a^2 + ab + b^2)}$$</remarks>
    [Source("Dubey, Fundamentals of Electrical Drives, ch. 4; integral of a squared straight line")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RmsOfRamp<T>(T from, T to)
        where T : struct, IReal<T> => T.Sqrt(((from * from) + (from * to) + (to * to)) * (1.0 / 3.0));

    /// <summary>Current a branch circuit bears for a lasting load [A].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rating">Rating of the circuit, $I_r$ [A].</param>
    /// <returns>Current [A].</returns>
    /// <remarks>$$I = 0.8\,I_r$$ A caution; local codes differ and come first.</remarks>
    [Source("US National Electrical Code 210.19 and 210.20")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T LastingCurrent<T>(T rating)
        where T : struct, IReal<T> => 0.8 * rating;
}
