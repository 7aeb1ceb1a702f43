using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Permanent-magnet direct-current motor in the steady state.</summary>
/// <remarks>The motor constant is both volt seconds per radian and newton metres per ampere.</remarks>
public static class DcMotorLaws
{
    /// <summary>Voltage at the motor's terminals [V].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorConstant">Motor constant, $k$ [V s/rad].</param>
    /// <param name="motorSpeed">Speed, $\omega$ [rad/s].</param>
    /// <param name="current">Armature current, $I$ [A].</param>
    /// <param name="resistance">Armature resistance at its temperature, $R$ [ohm].</param>
    /// <param name="brushDrop">Voltage lost at both brushes, $V_b$ [V].</param>
    /// <returns>Voltage, $V$ [V].</returns>
    /// <remarks>$$V = k\,\omega + I R + V_b$$ for a current that drives; where it brakes, the drop is negative.</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Voltage<T>(T motorConstant, T motorSpeed, T current, T resistance, T brushDrop)
        where T : struct, IReal<T> => (motorConstant * motorSpeed) + (current * resistance) + brushDrop;

    /// <summary>Speed at a voltage and a current [rad/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorConstant">Motor constant, $k$ [V s/rad], above 0.</param>
    /// <param name="voltage">Voltage at the terminals, $V$ [V].</param>
    /// <param name="current">Armature current, $I$ [A].</param>
    /// <param name="resistance">Armature resistance, $R$ [ohm].</param>
    /// <param name="brushDrop">Voltage lost at both brushes, $V_b$ [V].</param>
    /// <returns>Speed, $\omega$ [rad/s].</returns>
    /// <remarks>$$\omega = \frac{V - I R - V_b}{k}$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Speed<T>(T motorConstant, T voltage, T current, T resistance, T brushDrop)
        where T : struct, IReal<T> => (voltage - (current * resistance) - brushDrop) / motorConstant;

    /// <summary>Armature current for a torque at the shaft [A].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="torque">Torque at the shaft, $M$ [N m].</param>
    /// <param name="frictionTorque">Torque lost inside the motor, $M_f$ [N m].</param>
    /// <param name="motorConstant">Motor constant, $k$ [N m/A], above 0.</param>
    /// <returns>Armature current, $I$ [A].</returns>
    /// <remarks>$$I = \frac{M + M_f}{k}$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Current<T>(T torque, T frictionTorque, T motorConstant)
        where T : struct, IReal<T> => (torque + frictionTorque) / motorConstant;

    /// <summary>Root mean square of a current that goes with a fluctuating pull [A].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="meanCurrent">Mean current, $\bar I$ [A].</param>
    /// <param name="currentPerPull">Current for each newton of pull, $c$ [A/N].</param>
    /// <param name="meanPull">Mean pull, $\bar F$ [N].</param>
    /// <param name="meanSquarePull">Mean of the squared pull, $\overline{F^2}$ [N2].</param>
    /// <returns>Root mean square current [A].</returns>
    /// <remarks>$$I_{rms} = \sqrt{\bar I^2 + c^2 \left(\overline{F^2} - \bar F^2\right)}$$</remarks>
    [Source("Definition of the root mean square of a constant plus a fluctuation of mean zero")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T RmsCurrent<T>(T meanCurrent, T currentPerPull, T meanPull, T meanSquarePull)
        where T : struct, IReal<T> =>
        T.Sqrt(
            (meanCurrent * meanCurrent)
                + (currentPerPull * currentPerPull * T.Max(0, meanSquarePull - (meanPull * meanPull)))
        );

    /// <summary>Resistance of a copper winding at another temperature [ohm].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="resistance">Resistance at the first temperature, $R_1$ [ohm].</param>
    /// <param name="temperature">First temperature, $t_1$ [deg C].</param>
    /// <param name="otherTemperature">Temperature asked for, $t_2$ [deg C].</param>
    /// <returns>Resistance, $R_2$ [ohm].</returns>
    /// <remarks>$$R_2 = R_1\,\frac{t_2 + 234.5}{t_1 + 234.5}$$</remarks>
    [Source("IEEE 112: rise of resistance, copper, 234.5; IEC 60034-1 rounds it to 235")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CopperResistance<T>(T resistance, T temperature, T otherTemperature)
        where T : struct, IReal<T> => resistance * (otherTemperature + 234.5) / (temperature + 234.5);

    /// <summary>Motor constant from two unloaded points [V s/rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="lowVoltage">Voltage at the lower speed, $V_1$ [V].</param>
    /// <param name="highVoltage">Voltage at the higher speed, $V_2$ [V].</param>
    /// <param name="lowSpeed">Lower motor speed, $\omega_1$ [rad/s].</param>
    /// <param name="highSpeed">Higher motor speed, $\omega_2$ [rad/s], not equal to the lower.</param>
    /// <param name="lowCurrent">Armature current at the lower speed, $I_1$ [A].</param>
    /// <param name="highCurrent">Armature current at the higher speed, $I_2$ [A].</param>
    /// <param name="resistance">Armature resistance, $R$ [ohm]; matters little unloaded.</param>
    /// <returns>Motor constant, $k$ [V s/rad].</returns>
    /// <remarks>
    /// $$k = \frac{(V_2 - V_1) - R (I_2 - I_1)}{\omega_2 - \omega_1}$$ The brushes' drop cancels.
    /// </remarks>
    [Source("Difference of the voltage equation at two points; Fitzgerald et al., Electric Machinery, 6th ed., ch. 7")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ConstantFromTwoPoints<T>(
        T lowVoltage,
        T highVoltage,
        T lowSpeed,
        T highSpeed,
        T lowCurrent,
        T highCurrent,
        T resistance
    )
        where T : struct, IReal<T> =>
        (highVoltage - lowVoltage - (resistance * (highCurrent - lowCurrent))) / (highSpeed - lowSpeed);

    /// <summary>Motor constant with warm magnets [V s/rad].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorConstant">Motor constant at the first temperature, $k$ [V s/rad].</param>
    /// <param name="coefficient">Loss of flux for each kelvin, $\beta$ [1/K]; about 0.002 for ferrite, from memory.</param>
    /// <param name="rise">Temperature rise of the magnets, $\Delta t$ [K].</param>
    /// <returns>Motor constant [V s/rad].</returns>
    /// <remarks>$$k' = k\,(1 - \beta\,\Delta t)$$</remarks>
    [Source("Reversible temperature coefficient of remanence, IEC 60404-8-1, table A.1")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T WarmConstant<T>(T motorConstant, T coefficient, T rise)
        where T : struct, IReal<T> => motorConstant * (1 - (coefficient * rise));

    /// <summary>Heat in the armature [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rmsCurrent">Root mean square current, $I_{rms}$ [A].</param>
    /// <param name="resistance">Armature resistance at its temperature, $R$ [ohm].</param>
    /// <returns>Power [W].</returns>
    /// <remarks>$$P = I_{rms}^2 R$$</remarks>
    [Source("Joule")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T CopperLoss<T>(T rmsCurrent, T resistance)
        where T : struct, IReal<T> => rmsCurrent * rmsCurrent * resistance;

    /// <summary>Share of time a switching controller puts the bus on the motor [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="motorVoltage">Mean voltage at the motor, $V$ [V].</param>
    /// <param name="busVoltage">Voltage of the rectified bus, $V_b$ [V], above 0.</param>
    /// <returns>Duty ratio [1]; above 1 the speed cannot be reached.</returns>
    /// <remarks>$$d = V/V_b$$</remarks>
    [Source("Mohan, Undeland and Robbins, Power Electronics, 7-3, step-down converter in continuous conduction")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T DutyRatio<T>(T motorVoltage, T busVoltage)
        where T : struct, IReal<T> => motorVoltage / busVoltage;

    /// <summary>Electrical power at the motor's terminals [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="voltage">Voltage at the terminals, $V$ [V].</param>
    /// <param name="current">Armature current, $I$ [A].</param>
    /// <returns>Power, $P$ [W]; negative where the motor brakes and gives power back.</returns>
    /// <remarks>$$P = V I$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7, example 7.1")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T TerminalPower<T>(T voltage, T current)
        where T : struct, IReal<T> => voltage * current;

    /// <summary>Mechanical power at a shaft [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="torque">Torque at the shaft, $M$ [N m].</param>
    /// <param name="speed">Speed, $\omega$ [rad/s].</param>
    /// <returns>Power, $P$ [W].</returns>
    /// <remarks>$$P = M\omega$$</remarks>
    [Source("Definition of power; Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7, example 7.1")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShaftPower<T>(T torque, T speed)
        where T : struct, IReal<T> => torque * speed;

    /// <summary>Torque at the shaft for an armature current [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="current">Armature current, $I$ [A].</param>
    /// <param name="frictionTorque">Torque lost inside the motor, $M_f$ [N m].</param>
    /// <param name="motorConstant">Motor constant, $k$ [N m/A].</param>
    /// <returns>Torque at the shaft, $M$ [N m].</returns>
    /// <remarks>$$M = kI - M_f$$ turning forwards.</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., ch. 7")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Torque<T>(T current, T frictionTorque, T motorConstant)
        where T : struct, IReal<T> => (motorConstant * current) - frictionTorque;
}
