using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Margins of both belts, at rest, under a pull where somebody stands on the running belt.</summary>
internal readonly struct StartGrip
{
    private readonly bool direct;

    internal StartGrip(Treadmill machine, Demand demand, Answer<Force> pull)
    {
        direct = machine.DriveBelt is null || machine.DriveBelt.Tensioning == Tensioning.DirectDrive;
        LoopGeometry loop = new(machine);
        RunningBelt = pull.Ask(force => OfRunningBelt(machine, demand, loop, Si.Force.ToSi(force)));
        Answer<(TensioningGrip Grip, double Force)> drive = pull.Ask(force => OfDriveBelt(machine, loop, force));
        DriveBelt = drive.Then(at => Margin(at.Force, at.Grip.Driving, at.Grip.Braking));
        DriveBeltWorn = drive.Then(at => Margin(at.Force, at.Grip.DrivingWorn, at.Grip.BrakingWorn));
    }

    internal Answer<double> RunningBelt { get; }

    internal Answer<double> DriveBelt { get; }

    internal Answer<double> DriveBeltWorn { get; }

    internal Answer<WeakContact> FirstToSlip
    {
        get
        {
            if (RunningBelt.Missing.Why == Reason.SlackBelt)
            {
                return WeakContact.RunningBelt;
            }

            Answer<double> drive = direct ? double.PositiveInfinity : DriveBelt;
            return RunningBelt.Ask(belt =>
                drive.Then(other => belt <= other ? WeakContact.RunningBelt : WeakContact.DriveBelt)
            );
        }
    }

    // The belt's drag is spread along the loop: its mean share is one half, as in a step.
    private static Answer<double> OfRunningBelt(Treadmill machine, Demand demand, LoopGeometry loop, double pull) =>
        Inquiry
            .Of(machine.DriveRoller.Friction, Inputs.DriveRollerFriction.Name)
            .Ask(friction =>
                Inquiry
                    .TautTension(loop)
                    .Ask(tension =>
                        loop.ShareAt(Si.Length.ToSi(demand.StrikePosition))
                            .Then(share =>
                            {
                                Real ratio = TractionLaws.TensionRatio<Real>(friction, loop.DriveWrap);
                                Real drag = loop.Numbers.BeltDrag;
                                Real shared = ((pull - drag) * share) + (0.5 * drag);
                                Real demanded = Real.Max(
                                    TractionLaws.SlipDemand<Real>(pull, shared, ratio),
                                    TractionLaws.OverrunDemand<Real>(pull, shared, ratio)
                                );
                                return OperatingPointModel
                                    .Margin(TractionLaws.Grip<Real>(tension, 0, ratio), demanded)
                                    .Value;
                            })
                    )
            );

    private static Answer<(TensioningGrip Grip, double Force)> OfDriveBelt(
        Treadmill machine,
        LoopGeometry loop,
        Force pull
    )
    {
        if (machine.DriveBelt is not { } belt || belt.Tensioning == Tensioning.DirectDrive)
        {
            return new Shortfall(Reason.NotOnThisMachine, nameof(Treadmill.DriveBelt));
        }

        double force = DriveBeltLaws.CircumferentialForce<Real>(
            Si.Force.ToSi(pull),
            loop.DriveRadius,
            0.5 * loop.Numbers.RollerPulleyDiameter
        );
        return DriveBeltGrip.Of(belt, Si.Speed.FromSi(0)).Then(grip => (grip.Own, force));
    }

    private static double Margin(double force, Force driving, Force braking) =>
        OperatingPointModel.Margin<Real>(Si.Force.ToSi(force < 0 ? braking : driving), Math.Abs(force));
}
