using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How far a direct-current motor reaches within the limits of its controller.</summary>
public sealed record MotorReach
{
    /// <summary>Speed unloaded at the highest voltage; no answer where that is not known.</summary>
    public required Answer<RotationalSpeed> UnloadedSpeed { get; init; }

    /// <summary>Highest speed under the torque; no answer where it is not reached, or the highest voltage is not known.</summary>
    public required Answer<RotationalSpeed> HighestSpeed { get; init; }

    /// <summary>Largest torque within the current limit; no answer where that is not known.</summary>
    public required Answer<Torque> LargestTorque { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(MotorReach),
            (nameof(UnloadedSpeed), UnloadedSpeed),
            (nameof(HighestSpeed), HighestSpeed),
            (nameof(LargestTorque), LargestTorque)
        );

    /// <summary>The reach of a motor under a torque.</summary>
    /// <param name="motor">The motor; constant, resistance and friction must be known.</param>
    /// <param name="torque">Torque at the shaft, 0 to 100 N m.</param>
    /// <param name="winding">Temperature of the winding, -20 to 250 deg C; the motor's own where null.</param>
    /// <param name="magnets">What warm magnets do; the constant as given where null.</param>
    /// <returns>The reach; no answer where an input is not known.</returns>
    /// <exception cref="ArgumentNullException">The motor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<MotorReach> Of(
        DcMotor motor,
        Torque torque,
        Temperature? winding = null,
        Magnets? magnets = null
    )
    {
        ArgumentNullException.ThrowIfNull(motor);
        double shaft = Si.Torque.ToSi(Guard.Within(torque, Si.Torque, 0, 100, nameof(torque)));
        return MotorNumbers.Of(motor, winding, magnets).Then(numbers => Within(motor, numbers, shaft));
    }

    /// <summary>Highest belt speed of a machine under a demand: its mean torque does not hang on the speed.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="demand">Person, incline and so on; its speed does not matter.</param>
    /// <returns>The speed; no answer where an input is not known, or the motor does not drive.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    public static Answer<Speed> HighestBeltSpeed(Treadmill machine, Demand demand)
    {
        ArgumentNullException.ThrowIfNull(machine);
        OperatingPoint point = machine.At(demand);
        if (machine.Motor is null)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.MotorConstant.Name);
        }

        if (!point.MeanPull.Found)
        {
            return point.MeanPull.Missing;
        }

        double torque = point.Numbers.MotorTorque;
        return torque < 0
            ? new Shortfall(Reason.NotInRange, Outputs.MotorTorque.Name, 0, torque, Outputs.MotorTorque.Unit)
            : Of(machine.Motor, Si.Torque.FromSi(torque))
                .Then(reach => reach.HighestSpeed)
                .Flat()
                .Then(highest =>
                    Si.Speed.FromSi(
                        Si.Speed.ToSi(demand.Speed) * Si.RotationalSpeed.ToSi(highest) / point.Numbers.MotorSpeed
                    )
                );
    }

    private static MotorReach Within(DcMotor motor, MotorNumbers numbers, double torque)
    {
        Answer<double> limit = motor.VoltageLimit is { } volts
            ? Si.Voltage.ToSi(volts)
            : new Shortfall(Reason.InputUnknown, nameof(DcMotor.VoltageLimit));
        return new()
        {
            UnloadedSpeed = limit.Then(v => Turning(numbers, v, 0)).Flat(),
            HighestSpeed = limit.Then(v => Loaded(motor, numbers, v, torque)).Flat(),
            LargestTorque = motor.CurrentLimit is { } amperes
                ? Si.Torque.FromSi(
                    DcMotorLaws.Torque<Real>(Si.Current.ToSi(amperes), numbers.Friction, numbers.Constant)
                )
                : new Shortfall(Reason.InputUnknown, nameof(DcMotor.CurrentLimit)),
        };
    }

    private static Answer<RotationalSpeed> Loaded(DcMotor motor, MotorNumbers numbers, double voltage, double torque)
    {
        double current = DcMotorLaws.Current<Real>(torque, numbers.Friction, numbers.Constant);
        return motor.CurrentLimit is { } most && current > Si.Current.ToSi(most)
            ? new Shortfall(Reason.CurrentLimit, nameof(DcMotor.CurrentLimit), current, Si.Current.ToSi(most), "A")
            : Turning(numbers, voltage, torque);
    }

    private static Answer<RotationalSpeed> Turning(MotorNumbers numbers, double voltage, double torque)
    {
        double current = DcMotorLaws.Current<Real>(torque, numbers.Friction, numbers.Constant);
        double speed = DcMotorLaws.Speed<Real>(
            numbers.Constant,
            voltage,
            current,
            numbers.Resistance,
            numbers.BrushDrop
        );
        return speed > 0
            ? Si.RotationalSpeed.FromSi(speed)
            : new Shortfall(
                Reason.MotorCannotReachSpeed,
                nameof(DcMotor.VoltageLimit),
                DcMotorLaws.Voltage<Real>(numbers.Constant, 0, current, numbers.Resistance, numbers.BrushDrop),
                voltage,
                "V"
            );
    }
}
