using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>A three-phase induction motor on an inverter, as the equivalent circuit of one star-connected phase.</summary>
/// <remarks>Reactances are those at the rated frequency; at another they go with it. Iron loss counts as rotational loss.</remarks>
public sealed partial record InductionMotor
{
    internal const double LeastSlip = 1e-6;

    /// <summary>Frequency at which the reactances hold, 10 Hz to 400 Hz.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is outside the range.</exception>
    public required Frequency RatedFrequency
    {
        get;
        init => field = Guard.Within(value, Si.Frequency, 10, 400);
    }

    /// <summary>Pairs of poles, 1 to 12.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the range.</exception>
    public required int PolePairs
    {
        get;
        init => field = (int)Guard.Within(value, Si.One, 1, 12);
    }

    /// <summary>Stator resistance of a phase, 0.001 to 200 ohm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is outside the range.</exception>
    public required ElectricResistance StatorResistance
    {
        get;
        init => field = Guard.Within(value, Si.Resistance, 0.001, 200);
    }

    /// <summary>Stator leakage reactance of a phase, 0.001 to 200 ohm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The reactance is outside the range.</exception>
    public required ElectricResistance StatorReactance
    {
        get;
        init => field = Guard.Within(value, Si.Resistance, 0.001, 200);
    }

    /// <summary>Rotor resistance of a phase, referred to the stator, 0.001 to 200 ohm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is outside the range.</exception>
    public required ElectricResistance RotorResistance
    {
        get;
        init => field = Guard.Within(value, Si.Resistance, 0.001, 200);
    }

    /// <summary>Rotor leakage reactance of a phase, referred to the stator, 0.001 to 200 ohm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The reactance is outside the range.</exception>
    public required ElectricResistance RotorReactance
    {
        get;
        init => field = Guard.Within(value, Si.Resistance, 0.001, 200);
    }

    /// <summary>Magnetising reactance of a phase, 0.1 to 5000 ohm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The reactance is outside the range.</exception>
    public required ElectricResistance MagnetisingReactance
    {
        get;
        init => field = Guard.Within(value, Si.Resistance, 0.1, 5000);
    }

    /// <summary>Power lost by friction, fan and iron, 0 to 5 kW; 0 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside the range.</exception>
    public Power RotationalLoss
    {
        get;
        init => field = Guard.Within(value, Si.Power, 0, 5000);
    } = Si.Power.FromSi(0);

    /// <summary>The motor at a voltage, a frequency and a slip.</summary>
    /// <param name="lineVoltage">Voltage between two lines, root mean square, 1 V to 700 V.</param>
    /// <param name="frequency">Frequency of the inverter, 1 Hz to 400 Hz.</param>
    /// <param name="slip">Slip, above 0 to 1: driving.</param>
    /// <returns>Speed, current, torque and efficiency there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public InductionPoint At(ElectricPotential lineVoltage, Frequency frequency, Ratio slip)
    {
        InductionCircuit circuit = Circuit(lineVoltage, frequency);
        return circuit.At(Si.Ratio.ToSi(Guard.Within(slip, Si.Ratio, LeastSlip, 1, nameof(slip))));
    }

    /// <summary>The largest torque at a voltage and a frequency, and where it stands.</summary>
    /// <param name="lineVoltage">Voltage between two lines, root mean square, 1 V to 700 V.</param>
    /// <param name="frequency">Frequency of the inverter, 1 Hz to 400 Hz.</param>
    /// <returns>Breakdown torque at the shaft, and slip and speed there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public InductionBreakdown Breakdown(ElectricPotential lineVoltage, Frequency frequency) =>
        Circuit(lineVoltage, frequency).Breakdown();

    /// <summary>The motor where it gives a torque, on the steady side of its curve.</summary>
    /// <param name="lineVoltage">Voltage between two lines, root mean square, 1 V to 700 V.</param>
    /// <param name="frequency">Frequency of the inverter, 1 Hz to 400 Hz.</param>
    /// <param name="shaftTorque">Torque at the shaft, 0 to 1000 N m: driving.</param>
    /// <returns>
    /// Slip, speed, current and so on there; no answer where the torque is above the largest at this voltage and frequency.
    /// </returns>
    /// <remarks>The slip is sought between nothing and that of the largest torque, where it is unique.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Answer<InductionPoint> AtTorque(ElectricPotential lineVoltage, Frequency frequency, Torque shaftTorque)
    {
        InductionCircuit circuit = Circuit(lineVoltage, frequency);
        return circuit.AtTorque(Si.Torque.ToSi(Guard.Within(shaftTorque, Si.Torque, 0, 1000, nameof(shaftTorque))));
    }

    private InductionCircuit Circuit(ElectricPotential lineVoltage, Frequency frequency)
    {
        double volts = Si.Voltage.ToSi(Guard.Within(lineVoltage, Si.Voltage, 1, 700, nameof(lineVoltage)));
        double hertz = Si.Frequency.ToSi(Guard.Within(frequency, Si.Frequency, 1, 400, nameof(frequency)));
        double scale = hertz / Si.Frequency.ToSi(RatedFrequency);
        return new()
        {
            PhaseVoltage = volts / Math.Sqrt(3),
            SynchronousSpeed = InductionMotorLaws.SynchronousSpeed<Real>(2 * Math.PI * hertz, PolePairs),
            StatorResistance = Si.Resistance.ToSi(StatorResistance),
            StatorReactance = scale * Si.Resistance.ToSi(StatorReactance),
            RotorResistance = Si.Resistance.ToSi(RotorResistance),
            RotorReactance = scale * Si.Resistance.ToSi(RotorReactance),
            MagnetisingReactance = scale * Si.Resistance.ToSi(MagnetisingReactance),
            RotationalLoss = Si.Power.ToSi(RotationalLoss),
        };
    }
}
