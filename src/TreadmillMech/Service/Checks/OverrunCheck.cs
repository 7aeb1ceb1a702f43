using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Whether a user on an incline drives the belt faster than set, and where that ends.</summary>
/// <remarks>
/// A belt that overruns can throw its user: find out by calculation and unloaded, not with a person on it. Means over the
/// stride; a light flywheel may let go within a step sooner.
/// </remarks>
public sealed record OverrunCheck
{
    /// <summary>Who moves the belt.</summary>
    public required OverrunState State { get; init; }

    /// <summary>Mean force at the belt that is left over after all dry friction; negative where the motor must drive.</summary>
    public required Force Push { get; init; }

    /// <summary>Grade above which this user drives the motor; no answer where other drags hold the whole weight.</summary>
    public required Answer<Ratio> CriticalGrade { get; init; }

    /// <summary>Deck friction below which this user drives the motor at this grade; a service can bring it about.</summary>
    public required double CriticalFriction { get; init; }

    /// <summary>
    /// Belt speed at which a drag in proportion to speed holds an overrunning drive. No answer where the belt does not overrun,
    /// or no such drag is known: dry friction alone never ends it.
    /// </summary>
    public required Answer<Speed> SettledSpeed { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(OverrunCheck),
            (nameof(State), State),
            (nameof(Push), Push),
            (nameof(CriticalGrade), CriticalGrade),
            (nameof(CriticalFriction), CriticalFriction),
            (nameof(SettledSpeed), SettledSpeed)
        );

    /// <summary>The overrun of a machine under a demand.</summary>
    /// <param name="machine">The machine; deck friction, belt drag and the motor's friction must be known.</param>
    /// <param name="demand">Person, speed and grade.</param>
    /// <param name="drag">Drag in proportion to speed; null where not known.</param>
    /// <returns>The check; no answer where an input is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The drag's torque or speed is outside 1e-4 to 20 N m, 1 to 1500 rad/s.</exception>
    public static Answer<OverrunCheck> Of(Treadmill machine, Demand demand, SpeedDrag? drag = null)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        (double Torque, double Speed)? growing = drag is { } known
            ? (
                Si.Torque.ToSi(Guard.Within(known.Torque, Si.Torque, 1e-4, 20, "drag.Torque")),
                Si.RotationalSpeed.ToSi(Guard.Within(known.Speed, Si.RotationalSpeed, 1, 1500, "drag.Speed"))
            )
            : null;
        if (machine.Motor?.FrictionTorque is not { } friction)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.MotorFrictionTorque.Name);
        }

        OperatingPoint point = machine.At(demand);
        return point.MeanPull.Then(pull =>
            At(machine, demand, point, Si.Force.ToSi(pull), Si.Torque.ToSi(friction), growing)
        );
    }

    private static OverrunCheck At(
        Treadmill machine,
        Demand demand,
        OperatingPoint point,
        double pull,
        double friction,
        (double Torque, double Speed)? drag
    )
    {
        double beltSpeed = Si.Speed.ToSi(demand.Speed);
        double motorSpeed = Si.RotationalSpeed.ToSi(point.MotorSpeed);
        double motorDrag = OverrunLaws.DragAtBelt<Real>(friction, motorSpeed, beltSpeed);
        double push = -pull - motorDrag;
        double? settled = drag is { } growing ? Settled(push, growing, motorSpeed, beltSpeed) : null;
        OverrunState state =
            pull >= 0 ? OverrunState.MotorDrives
            : push <= 0 || settled <= beltSpeed ? OverrunState.FrictionHolds
            : machine.Motor!.CanBrake ? OverrunState.DriveBrakes
            : OverrunState.Overruns;

        double weight = GaitLaws.MeanNormalForce<Real>(
            Si.Mass.ToSi(demand.Person.Mass),
            0,
            demand.Rails is null ? 0 : Si.Ratio.ToSi(demand.Rails.WeightShare)
        );
        double other =
            Si.Force.ToSi(machine.BeltDrag!.Value)
            + motorDrag
            + (demand.Rails is null ? 0 : Si.Force.ToSi(demand.Rails.ForwardForce));
        return new()
        {
            State = state,
            Push = Si.Force.FromSi(push),
            CriticalGrade =
                Math.Abs(other) < weight
                    ? Si.Ratio.FromSi(Math.Tan(OverrunLaws.Incline<Real>(machine.Deck.Friction!.Value, other, weight)))
                    : new Shortfall(Reason.NotInRange, nameof(demand.Rails), other, weight, "N"),
            CriticalFriction = OverrunLaws.DeckFriction<Real>(Math.Atan(Si.Ratio.ToSi(demand.Grade)), other, weight),
            SettledSpeed =
                state != OverrunState.Overruns ? new Shortfall(Reason.NotInRange, nameof(Push), 0, push, "N")
                : settled is { } speed ? Si.Speed.FromSi(speed)
                : new Shortfall(Reason.InputUnknown, nameof(drag)),
        };
    }

    private static double Settled(double push, (double Torque, double Speed) drag, double motorSpeed, double beltSpeed)
    {
        double torque = OverrunLaws.TorqueAtMotor<Real>(push, motorSpeed, beltSpeed);
        return beltSpeed * OverrunLaws.SettledSpeed<Real>(torque, drag.Torque, drag.Speed) / motorSpeed;
    }
}
