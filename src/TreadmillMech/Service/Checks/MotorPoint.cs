using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>A permanent-magnet motor at one torque, one speed and its temperatures, in the steady state.</summary>
public sealed record MotorPoint
{
    /// <summary>Motor constant at the magnets' temperature.</summary>
    public required MotorConstant Constant { get; init; }

    /// <summary>Resistance of the armature at the winding's temperature.</summary>
    public required ElectricResistance Resistance { get; init; }

    /// <summary>Armature current; negative where the motor brakes.</summary>
    public required ElectricCurrent Current { get; init; }

    /// <summary>Mean voltage at the terminals.</summary>
    public required ElectricPotential Voltage { get; init; }

    /// <summary>Heat in the armature.</summary>
    public required Power CopperLoss { get; init; }

    /// <summary>Electrical power taken in; negative where a braking drive has to get rid of it.</summary>
    public required Power ElectricalPower { get; init; }

    /// <summary>Power at the shaft; negative where the load drives the motor.</summary>
    public required Power ShaftPower { get; init; }

    /// <summary>Shaft power over electrical power; no answer unless both are above nothing.</summary>
    public Answer<Ratio> Efficiency =>
        Si.Power.ToSi(ElectricalPower) > 0 && Si.Power.ToSi(ShaftPower) > 0
            ? Si.Ratio.FromSi(Si.Power.ToSi(ShaftPower) / Si.Power.ToSi(ElectricalPower))
            : new Shortfall(Reason.NotInRange, nameof(ShaftPower), 0, Si.Power.ToSi(ShaftPower), "W");

    /// <summary>Whether the motor brakes.</summary>
    public bool Brakes => Si.Current.ToSi(Current) < 0;

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(MotorPoint),
            (nameof(Constant), Constant),
            (nameof(Resistance), Resistance),
            (nameof(Current), Current),
            (nameof(Voltage), Voltage),
            (nameof(CopperLoss), CopperLoss),
            (nameof(ElectricalPower), ElectricalPower),
            (nameof(ShaftPower), ShaftPower),
            (nameof(Efficiency), Efficiency),
            (nameof(Brakes), Brakes)
        );

    /// <summary>Share of time the controller puts its bus on the motor.</summary>
    /// <param name="busVoltage">Voltage of the rectified bus, 10 V to 600 V, measured under load.</param>
    /// <returns>The share; no answer where the bus is too low for this speed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside the range.</exception>
    public Answer<double> DutyRatio(ElectricPotential busVoltage)
    {
        double bus = Si.Voltage.ToSi(Guard.Within(busVoltage, Si.Voltage, 10, 600, nameof(busVoltage)));
        double duty = DcMotorLaws.DutyRatio<Real>(Si.Voltage.ToSi(Voltage), bus);
        return duty <= 1
            ? duty
            : new Shortfall(Reason.MotorCannotReachSpeed, nameof(busVoltage), Si.Voltage.ToSi(Voltage), bus, "V");
    }

    /// <summary>The point of a motor at a torque and a speed.</summary>
    /// <param name="motor">The motor; constant, resistance and friction must be known.</param>
    /// <param name="torque">Torque at the shaft, -100 to 100 N m; negative where the load drives the motor.</param>
    /// <param name="speed">Speed forwards, 0 to 1500 rad/s.</param>
    /// <param name="winding">Temperature of the winding, -20 to 250 deg C; the motor's own where null.</param>
    /// <param name="magnets">What warm magnets do; the constant as given where null.</param>
    /// <returns>
    /// The point; no answer where an input is not known, voltage or current is beyond the controller's limit, or a controller
    /// that only pushes would have to brake.
    /// </returns>
    /// <exception cref="ArgumentNullException">The motor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<MotorPoint> Of(
        DcMotor motor,
        Torque torque,
        RotationalSpeed speed,
        Temperature? winding = null,
        Magnets? magnets = null
    )
    {
        ArgumentNullException.ThrowIfNull(motor);
        double shaft = Si.Torque.ToSi(Guard.Within(torque, Si.Torque, -100, 100, nameof(torque)));
        double turning = Si.RotationalSpeed.ToSi(Guard.Within(speed, Si.RotationalSpeed, 0, 1500, nameof(speed)));
        return MotorNumbers.Of(motor, winding, magnets).Then(numbers => At(motor, numbers, shaft, turning)).Flat();
    }

    private static Answer<MotorPoint> At(DcMotor motor, MotorNumbers numbers, double torque, double speed)
    {
        double current = DcMotorLaws.Current<Real>(torque, numbers.Friction, numbers.Constant);
        if (current < 0 && !motor.CanBrake)
        {
            return new Shortfall(
                Reason.DriveCannotBrake,
                Outputs.MotorTorque.Name,
                torque,
                -numbers.Friction,
                Outputs.MotorTorque.Unit
            );
        }

        if (motor.CurrentLimit is { } most && Math.Abs(current) > Si.Current.ToSi(most))
        {
            return new Shortfall(
                Reason.CurrentLimit,
                nameof(DcMotor.CurrentLimit),
                Math.Abs(current),
                Si.Current.ToSi(most),
                "A"
            );
        }

        double drop = current < 0 ? -numbers.BrushDrop : numbers.BrushDrop;
        double voltage = DcMotorLaws.Voltage<Real>(numbers.Constant, speed, current, numbers.Resistance, drop);
        if (motor.VoltageLimit is { } limit && voltage > Si.Voltage.ToSi(limit))
        {
            return new Shortfall(
                Reason.MotorCannotReachSpeed,
                nameof(DcMotor.VoltageLimit),
                voltage,
                Si.Voltage.ToSi(limit),
                "V"
            );
        }

        return new MotorPoint
        {
            Constant = Si.MotorConstant.FromSi(numbers.Constant),
            Resistance = Si.Resistance.FromSi(numbers.Resistance),
            Current = Si.Current.FromSi(current),
            Voltage = Si.Voltage.FromSi(voltage),
            CopperLoss = Si.Power.FromSi(DcMotorLaws.CopperLoss<Real>(current, numbers.Resistance)),
            ElectricalPower = Si.Power.FromSi(DcMotorLaws.TerminalPower<Real>(voltage, current)),
            ShaftPower = Si.Power.FromSi(DcMotorLaws.ShaftPower<Real>(torque, speed)),
        };
    }
}
