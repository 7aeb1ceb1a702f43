using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>With the readings of one subject alone and open priors, the joint estimate is that of the subject's own method.</summary>
public sealed class JointKnownChecksTests
{
    // A prior of spread 50 is worth one part in a million beside readings of 2 %.
    private const double Rounding = 1e-5;

    [Fact]
    public void LiftsAloneGiveTheLiftTest()
    {
        LiftBench bench = new(1080, 7);
        LiftAtTurns[] lifts = [bench.Lift(0.03), bench.Lift(0.05, 0, 0.0004, -0.02), bench.Lift(0.03, 1, 0, 0.015)];
        TensionEstimate alone = LiftTest.Evaluate(Machines.Plain, lifts).Value;
        VisitEstimate joint = Of(Machines.Plain, lifts[0].Lift, lifts[1].Lift, Happened.Turned(1), lifts[2].Lift);
        Same(alone.RestTension, joint.RestTensionAsFound.Value, f => f.Newtons);
        Same(alone.RelaxedForcePerWidth, joint.RelaxedForcePerWidth.Value, f => f.NewtonsPerMeter);
        Estimate<Force> after = LiftTest.TensionAfter(Machines.Plain, alone, 1, 1).Value;
        Same(after, joint.RestTensionNow.Value, f => f.Newtons);
    }

    [Fact]
    public void LiftsOnAKnownBeltGiveTheLiftTest()
    {
        LiftAtTurns lift = new LiftBench(900, 8).Lift(0.04);
        Treadmill machine = Machines.Plain with { Belt = Machines.Known.Belt };
        TensionEstimate alone = LiftTest.Evaluate(machine, [lift]).Value;
        Same(alone.RestTension, Of(machine, lift.Lift).RestTensionAsFound.Value, f => f.Newtons);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void APullAloneGivesTheFrictionFromAPull(bool uncoupled)
    {
        PullReading pull = Happened.Pull(0.21) with { MotorUncoupled = uncoupled };
        Estimate<double> alone = DeckFriction.FromPull(pull.Mass, pull.LoadedPull, pull.EmptyPull).Value;
        Same(alone, Of(Machines.Plain, pull).DeckFrictionAsFound.Value, f => f);
    }

    [Fact]
    public void UnloadedPointsAloneGiveTheMotorConstant()
    {
        Treadmill machine = Machines.Plain with { Motor = new() { Resistance = ElectricResistance.FromOhms(1.03) } };
        VisitOptions sure = OpenPriors.ButStiffness with
        {
            GivenValueSpread = OpenPriors.ButStiffness.GivenValueSpread with { Value = 1e-4 },
            LeastCurrentUncertainty = OpenPriors.ButStiffness.LeastCurrentUncertainty with { Value = 1e-6 },
        };
        MotorCurrentReading low = Point(1.5, 1.1, 55, 150);
        MotorCurrentReading high = Point(3, 1.35, 108, 300);
        Estimate<MotorConstant> alone = DeckFriction
            .MotorConstantFromUnloadedPoints(
                (low.Voltage!.Value, low.Current, low.MotorSpeed!.Value),
                (high.Voltage!.Value, high.Current, high.MotorSpeed!.Value),
                ElectricResistance.FromOhms(1.03)
            )
            .Value;
        Estimate<MotorConstant> joint = VisitEstimate
            .Of(Visits.Make(machine, low, high), sure)
            .Value.MotorConstant.Value;

        // Here the currents are uncertain as well: 2 % of 1.1 A at 1.03 ohm is 0.02 V beside 0.4 V of meter and speed.
        Close.To(alone.Value.VoltSecondsPerRadian, joint.Value.VoltSecondsPerRadian, 1e-3);
        Close.To(alone.StandardUncertainty.VoltSecondsPerRadian, joint.StandardUncertainty.VoltSecondsPerRadian, 5e-3);
    }

    [Fact]
    public void ALockedPullGivesTheRollersFriction()
    {
        LiftAtTurns lift = new LiftBench(1080, 8).Lift(0.03);
        Treadmill machine = Machines.Plain with { Belt = Machines.Known.Belt, DriveBelt = null };
        TensionEstimate tension = LiftTest.Evaluate(machine, [lift]).Value;
        Force pull = Force.FromNewtons(620);
        Estimate<double> alone = RollerFriction.FromLockedPull(machine, pull, tension.RestTension).Value;
        Estimate<double> joint = Of(
            machine,
            lift.Lift,
            Happened.Locked(620, SlidContact.RunningBelt)
        ).DriveRollerFrictionNow.Value;
        Same(alone, joint, f => f);
    }

    private static MotorCurrentReading Point(double speed, double amperes, double volts, double radians) =>
        Happened.Motor(LoadState.Unloaded, amperes, speed) with
        {
            Voltage = ElectricPotential.FromVolts(volts),
            MotorSpeed = RotationalSpeed.FromRadiansPerSecond(radians),
        };

    private static VisitEstimate Of(Treadmill machine, params VisitEvent[] events) =>
        VisitEstimate.Of(Visits.Make(machine, events), OpenPriors.ButStiffness).Value;

    private static void Same<T>(Estimate<T> expected, Estimate<T> found, Func<T, double> number)
        where T : struct
    {
        Close.To(number(expected.Value), number(found.Value), Rounding);
        Close.To(number(expected.StandardUncertainty), number(found.StandardUncertainty), Rounding);
    }
}
