using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>A three-phase induction motor on an inverter, as the equivalent circuit of one star-connected phase.</summary>
/// <remarks>Reactances are those at the rated frequency; at another they go with it. Iron loss counts as rotational loss.</remarks>
public sealed record InductionMotor
{
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
        double phase =
            Si.Voltage.ToSi(Guard.Within(lineVoltage, Si.Voltage, 1, 700, nameof(lineVoltage))) / Math.Sqrt(3);
        double hertz = Si.Frequency.ToSi(Guard.Within(frequency, Si.Frequency, 1, 400, nameof(frequency)));
        double s = Si.Ratio.ToSi(Guard.Within(slip, Si.Ratio, 1e-6, 1, nameof(slip)));
        double scale = hertz / Si.Frequency.ToSi(RatedFrequency);
        double r1 = Si.Resistance.ToSi(StatorResistance);
        double x1 = scale * Si.Resistance.ToSi(StatorReactance);
        double r2 = Si.Resistance.ToSi(RotorResistance);
        double x2 = scale * Si.Resistance.ToSi(RotorReactance);
        double xm = scale * Si.Resistance.ToSi(MagnetisingReactance);
        double rf = InductionMotorLaws.FieldResistance<Real>(r2, x2, xm, s);
        double xf = InductionMotorLaws.FieldReactance<Real>(r2, x2, xm, s);
        double current = InductionMotorLaws.StatorCurrent<Real>(phase, r1, x1, rf, xf);
        double powerFactor = InductionMotorLaws.PowerFactor<Real>(r1, x1, rf, xf);
        double synchronous = InductionMotorLaws.SynchronousSpeed<Real>(2 * Math.PI * hertz, PolePairs);
        double speed = InductionMotorLaws.ShaftSpeed<Real>(synchronous, s);
        double gap = InductionMotorLaws.AirGapPower<Real>(current, rf);
        double input = 3 * phase * current * powerFactor;
        double shaft = (InductionMotorLaws.Torque<Real>(gap, synchronous) * speed) - Si.Power.ToSi(RotationalLoss);
        return new(current, powerFactor, speed, input, shaft);
    }
}
