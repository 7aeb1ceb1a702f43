using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class LiftTestOneLiftTests
{
    // 1080 N: a belt of 8 N/mm and 450 mm at 0.3 % (derived).
    [Theory]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(12)]
    [InlineData(13)]
    public void OneLowLiftTellsTheTensionWithinATenthWhateverTheStiffness(double perWidth)
    {
        TensionEstimate found = LiftTest.Evaluate(Machines.Plain, [new LiftBench(1080, perWidth).Lift(0.03)]).Value;
        double tension = found.RestTension.Value.Newtons;
        Assert.InRange(tension, 0.9 * 1080, 1.1 * 1080);
        Assert.InRange(Math.Abs(tension - 1080), 0, 2 * found.RestTension.StandardUncertainty.Newtons);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(13)]
    public void OneLiftDoesNotTellTheStiffnessAndLeavesThePriorBand(double perWidth)
    {
        TensionEstimate found = LiftTest.Evaluate(Machines.Plain, [new LiftBench(1080, perWidth).Lift(0.03)]).Value;
        Assert.False(found.StiffnessObserved);

        // The prior band of the options: 8 N/mm, 40 %.
        Close.To(8, found.RelaxedForcePerWidth.Value.NewtonsPerMillimeter, 1e-6);
        Close.To(3.2, found.RelaxedForcePerWidth.StandardUncertainty.NewtonsPerMillimeter, 1e-6);
    }

    [Theory]
    [InlineData(5, 0.03)]
    [InlineData(8, 0.06)]
    [InlineData(13, 0.1)]
    public void WithTheStiffnessKnownALiftOfAnyHeightTellsTheTension(double perWidth, double height)
    {
        Treadmill machine = Machines.Plain with
        {
            Belt = Machines.Plain.Belt with { RelaxedForcePerWidth = Machines.PerWidth(perWidth) },
        };
        TensionEstimate found = LiftTest.Evaluate(machine, [new LiftBench(1080, perWidth).Lift(height)]).Value;
        Close.To(1080, found.RestTension.Value.Newtons, 0.01);
        Assert.True(found.StiffnessObserved);
    }

    [Theory]
    [InlineData(8, 0.03)]
    [InlineData(8, 0.05)]
    [InlineData(13, 0.05)]
    public void ALockedLiftIsReadWithTheSpanAlone(double perWidth, double height)
    {
        LiftBench bench = new(1080, perWidth);
        Treadmill machine = Machines.Plain with
        {
            Belt = Machines.Plain.Belt with { RelaxedForcePerWidth = Machines.PerWidth(perWidth) },
        };
        LiftAtTurns locked = bench.Lift(height, locked: true);
        Close.To(1080, LiftTest.Evaluate(machine, [locked]).Value.RestTension.Value.Newtons, 0.01);

        // Read as if the rollers had turned, the same force comes out as too much tension.
        LiftAtTurns mistaken = locked with
        {
            Lift = locked.Lift with { RollersLocked = false },
        };
        Assert.True(LiftTest.Evaluate(machine, [mistaken]).Value.RestTension.Value.Newtons > 1.1 * 1080);
    }

    [Theory]
    [InlineData(2e5)]
    [InlineData(2e6)]
    public void SpringsOfTheHubsAreReckonedWith(double spring)
    {
        LiftBench bench = new(1080, 8, spring);
        ForcePerLength hub = ForcePerLength.FromNewtonsPerMeter(spring);
        Treadmill machine = Machines.Known with
        {
            DriveRoller = Machines.Known.DriveRoller with { HubStiffness = hub },
            TailRoller = Machines.Known.TailRoller with { HubStiffness = hub },
        };
        LiftAtTurns[] lifts = [bench.Lift(0.05), bench.Lift(0.05, 1)];
        Close.To(1080, LiftTest.Evaluate(machine, lifts).Value.RestTension.Value.Newtons, 0.01);
    }
}
