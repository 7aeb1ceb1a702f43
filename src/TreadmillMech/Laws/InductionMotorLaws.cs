using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Laws;

/// <summary>Three-phase induction motor on an inverter: the circuit of one phase in the steady state.</summary>
public static class InductionMotorLaws
{
    /// <summary>Synchronous speed [rad/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="angularFrequency">Electrical angular frequency, $\omega_e$ [rad/s].</param>
    /// <param name="polePairs">Pairs of poles, $p$ [1], 1 or more.</param>
    /// <returns>Speed, $\omega_s$ [rad/s].</returns>
    /// <remarks>$$\omega_s = \omega_e/p$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., eq. 4.40")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T SynchronousSpeed<T>(T angularFrequency, T polePairs)
        where T : struct, IReal<T> => angularFrequency / polePairs;

    /// <summary>Speed at a slip [rad/s].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="synchronousSpeed">Synchronous speed, $\omega_s$ [rad/s].</param>
    /// <param name="slip">Slip, $s$ [1].</param>
    /// <returns>Speed, $\omega$ [rad/s].</returns>
    /// <remarks>$$\omega = (1 - s)\,\omega_s$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.1, eq. 6.3")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShaftSpeed<T>(T synchronousSpeed, T slip)
        where T : struct, IReal<T> => synchronousSpeed * (1 - slip);

    /// <summary>Real part of the impedance of rotor and magnetising branch side by side [ohm].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rotorResistance">Rotor resistance, $R_2$ [ohm].</param>
    /// <param name="rotorReactance">Rotor reactance, $X_2$ [ohm].</param>
    /// <param name="magnetisingReactance">Magnetising reactance, $X_m$ [ohm].</param>
    /// <param name="slip">Slip, $s$ [1], not 0.</param>
    /// <returns>Resistance, $R_f$ [ohm].</returns>
    /// <remarks>$$R_f + jX_f = \left(\frac{R_2}{s} + jX_2\right) \parallel jX_m$$</remarks>
    [Source(
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, example 6.2: rotor and magnetising branch in parallel"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FieldResistance<T>(T rotorResistance, T rotorReactance, T magnetisingReactance, T slip)
        where T : struct, IReal<T>
    {
        T load = rotorResistance / slip;
        T sum = rotorReactance + magnetisingReactance;
        return load * magnetisingReactance * magnetisingReactance / ((load * load) + (sum * sum));
    }

    /// <summary>Imaginary part of the impedance of rotor and magnetising branch side by side [ohm].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="rotorResistance">Rotor resistance, $R_2$ [ohm].</param>
    /// <param name="rotorReactance">Rotor reactance, $X_2$ [ohm].</param>
    /// <param name="magnetisingReactance">Magnetising reactance, $X_m$ [ohm].</param>
    /// <param name="slip">Slip, $s$ [1], not 0.</param>
    /// <returns>Reactance, $X_f$ [ohm].</returns>
    /// <remarks>$$X_f = X_m\,\frac{(R_2/s)^2 + X_2(X_2 + X_m)}{(R_2/s)^2 + (X_2 + X_m)^2}$$</remarks>
    [Source(
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, example 6.2: rotor and magnetising branch in parallel"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T FieldReactance<T>(T rotorResistance, T rotorReactance, T magnetisingReactance, T slip)
        where T : struct, IReal<T>
    {
        T load = rotorResistance / slip;
        T sum = rotorReactance + magnetisingReactance;
        return magnetisingReactance * ((load * load) + (rotorReactance * sum)) / ((load * load) + (sum * sum));
    }

    /// <summary>Current of one stator phase [A].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="phaseVoltage">Voltage of one phase, root mean square, $V$ [V].</param>
    /// <param name="statorResistance">Stator resistance, $R_1$ [ohm].</param>
    /// <param name="statorReactance">Stator reactance, $X_1$ [ohm].</param>
    /// <param name="fieldResistance">Resistance of rotor and magnetising branch together, $R_f$ [ohm].</param>
    /// <param name="fieldReactance">Reactance of rotor and magnetising branch together, $X_f$ [ohm].</param>
    /// <returns>Current, root mean square [A].</returns>
    /// <remarks>$$I_1 = \frac{V}{\sqrt{(R_1 + R_f)^2 + (X_1 + X_f)^2}}$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, example 6.2")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T StatorCurrent<T>(
        T phaseVoltage,
        T statorResistance,
        T statorReactance,
        T fieldResistance,
        T fieldReactance
    )
        where T : struct, IReal<T>
    {
        T resistance = statorResistance + fieldResistance;
        T reactance = statorReactance + fieldReactance;
        return phaseVoltage / T.Sqrt((resistance * resistance) + (reactance * reactance));
    }

    /// <summary>Power factor of the motor [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="statorResistance">Stator resistance, $R_1$ [ohm].</param>
    /// <param name="statorReactance">Stator reactance, $X_1$ [ohm].</param>
    /// <param name="fieldResistance">Resistance of rotor and magnetising branch together, $R_f$ [ohm].</param>
    /// <param name="fieldReactance">Reactance of rotor and magnetising branch together, $X_f$ [ohm].</param>
    /// <returns>Power factor [1].</returns>
    /// <remarks>$$\cos\varphi = \frac{R_1 + R_f}{\sqrt{(R_1 + R_f)^2 + (X_1 + X_f)^2}}$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, example 6.2")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T PowerFactor<T>(T statorResistance, T statorReactance, T fieldResistance, T fieldReactance)
        where T : struct, IReal<T>
    {
        T resistance = statorResistance + fieldResistance;
        T reactance = statorReactance + fieldReactance;
        return resistance / T.Sqrt((resistance * resistance) + (reactance * reactance));
    }

    /// <summary>Power across the air gap of three phases [W].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="statorCurrent">Current of one phase, $I_1$ [A].</param>
    /// <param name="fieldResistance">Resistance of rotor and magnetising branch together, $R_f$ [ohm].</param>
    /// <returns>Power [W].</returns>
    /// <remarks>$$P_g = 3 I_1^2 R_f$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, eq. 6.17")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T AirGapPower<T>(T statorCurrent, T fieldResistance)
        where T : struct, IReal<T> => 3 * statorCurrent * statorCurrent * fieldResistance;

    /// <summary>Torque across the air gap [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="airGapPower">Power across the air gap, $P_g$ [W].</param>
    /// <param name="synchronousSpeed">Synchronous speed, $\omega_s$ [rad/s], above 0.</param>
    /// <returns>Torque [N m]; the shaft's is less by friction.</returns>
    /// <remarks>$$M = P_g/\omega_s$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, eq. 6.25")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Torque<T>(T airGapPower, T synchronousSpeed)
        where T : struct, IReal<T> => airGapPower / synchronousSpeed;

    /// <summary>Voltage that the rotor sees: of one phase, with the rotor open [V].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="phaseVoltage">Voltage of one phase, root mean square, $V$ [V].</param>
    /// <param name="statorResistance">Stator resistance, $R_1$ [ohm].</param>
    /// <param name="statorReactance">Stator reactance, $X_1$ [ohm].</param>
    /// <param name="magnetisingReactance">Magnetising reactance, $X_m$ [ohm].</param>
    /// <returns>Voltage, $V_e$ [V].</returns>
    /// <remarks>$$V_e = \frac{V X_m}{\sqrt{R_1^2 + (X_1 + X_m)^2}}$$</remarks>
    [Source(
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.5, Thevenin equivalent of stator and magnetising branch"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T EquivalentVoltage<T>(T phaseVoltage, T statorResistance, T statorReactance, T magnetisingReactance)
        where T : struct, IReal<T>
    {
        T sum = statorReactance + magnetisingReactance;
        return phaseVoltage * magnetisingReactance / T.Sqrt((statorResistance * statorResistance) + (sum * sum));
    }

    /// <summary>Resistance that the rotor sees: stator and magnetising branch side by side [ohm].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="statorResistance">Stator resistance, $R_1$ [ohm].</param>
    /// <param name="statorReactance">Stator reactance, $X_1$ [ohm].</param>
    /// <param name="magnetisingReactance">Magnetising reactance, $X_m$ [ohm].</param>
    /// <returns>Resistance, $R_e$ [ohm].</returns>
    /// <remarks>$$R_e = \frac{R_1 X_m^2}{R_1^2 + (X_1 + X_m)^2}$$</remarks>
    [Source(
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.5, Thevenin equivalent of stator and magnetising branch"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T EquivalentResistance<T>(T statorResistance, T statorReactance, T magnetisingReactance)
        where T : struct, IReal<T> => FieldResistance(statorResistance, statorReactance, magnetisingReactance, 1);

    /// <summary>Reactance that the rotor sees: stator and magnetising branch side by side [ohm].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="statorResistance">Stator resistance, $R_1$ [ohm].</param>
    /// <param name="statorReactance">Stator reactance, $X_1$ [ohm].</param>
    /// <param name="magnetisingReactance">Magnetising reactance, $X_m$ [ohm].</param>
    /// <returns>Reactance, $X_e$ [ohm].</returns>
    /// <remarks>$$X_e = X_m\,\frac{R_1^2 + X_1(X_1 + X_m)}{R_1^2 + (X_1 + X_m)^2}$$</remarks>
    [Source(
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.5, Thevenin equivalent of stator and magnetising branch"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T EquivalentReactance<T>(T statorResistance, T statorReactance, T magnetisingReactance)
        where T : struct, IReal<T> => FieldReactance(statorResistance, statorReactance, magnetisingReactance, 1);

    /// <summary>Slip at the largest torque across the air gap [1].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="equivalentResistance">Resistance that the rotor sees, $R_e$ [ohm].</param>
    /// <param name="equivalentReactance">Reactance that the rotor sees, $X_e$ [ohm].</param>
    /// <param name="rotorResistance">Rotor resistance, $R_2$ [ohm].</param>
    /// <param name="rotorReactance">Rotor reactance, $X_2$ [ohm].</param>
    /// <returns>Slip, $s_b$ [1]; above 1 the torque rises down to standstill.</returns>
    /// <remarks>$$s_b = \frac{R_2}{\sqrt{R_e^2 + (X_e + X_2)^2}}$$</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.5, eq. 6.34: slip at maximum torque")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BreakdownSlip<T>(T equivalentResistance, T equivalentReactance, T rotorResistance, T rotorReactance)
        where T : struct, IReal<T>
    {
        T reactance = equivalentReactance + rotorReactance;
        return rotorResistance / T.Sqrt((equivalentResistance * equivalentResistance) + (reactance * reactance));
    }

    /// <summary>Largest torque across the air gap while driving [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="equivalentVoltage">Voltage that the rotor sees, $V_e$ [V].</param>
    /// <param name="equivalentResistance">Resistance that the rotor sees, $R_e$ [ohm].</param>
    /// <param name="equivalentReactance">Reactance that the rotor sees, $X_e$ [ohm].</param>
    /// <param name="rotorReactance">Rotor reactance, $X_2$ [ohm].</param>
    /// <param name="synchronousSpeed">Synchronous speed, $\omega_s$ [rad/s], above 0.</param>
    /// <returns>Torque, $M_b$ [N m].</returns>
    /// <remarks>$$M_b = \frac{3 V_e^2}{2\omega_s\left(R_e + \sqrt{R_e^2 + (X_e + X_2)^2}\right)}$$ The rotor's resistance moves its slip, not its size.</remarks>
    [Source("Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.5, eq. 6.36: maximum torque")]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T BreakdownTorque<T>(
        T equivalentVoltage,
        T equivalentResistance,
        T equivalentReactance,
        T rotorReactance,
        T synchronousSpeed
    )
        where T : struct, IReal<T>
    {
        T reactance = equivalentReactance + rotorReactance;
        T impedance = T.Sqrt((equivalentResistance * equivalentResistance) + (reactance * reactance));
        return 1.5 * equivalentVoltage * equivalentVoltage / (synchronousSpeed * (equivalentResistance + impedance));
    }

    /// <summary>Torque at the shaft [N m].</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="gapTorque">Torque across the air gap, $M$ [N m].</param>
    /// <param name="rotationalLoss">Power lost by friction, fan and iron, $P_r$ [W].</param>
    /// <param name="shaftSpeed">Speed of the shaft, $\omega$ [rad/s], above 0.</param>
    /// <returns>Torque [N m].</returns>
    /// <remarks>$$M_{shaft} = M - \frac{P_r}{\omega}$$</remarks>
    [Source(
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., 6.4, example 6.2: rotational losses taken off at the shaft"
    )]
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShaftTorque<T>(T gapTorque, T rotationalLoss, T shaftSpeed)
        where T : struct, IReal<T> => gapTorque - (rotationalLoss / shaftSpeed);
}
