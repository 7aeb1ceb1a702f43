using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>What the machine draws from the mains.</summary>
public static class SupplyLaws
{
    /// <summary>Power from the mains for a power at the motor's terminals [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorPower">Power at the motor's terminals [W]; negative where the motor brakes.</param>
    /// <param name="efficiency">Efficiency of the controller, $\eta$ [1], above 0.</param>
    /// <param name="standbyPower">Power of console and controller at rest [W].</param>
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
}
