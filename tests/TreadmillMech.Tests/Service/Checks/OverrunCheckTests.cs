using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class OverrunCheckTests
{
    /// <summary>Belt drag 20 N, and 0.1 N m of the motor at a ratio of 100/30 on a radius of 26 mm.</summary>
    private const double Drag = 20 + (0.1 * 100 / 30 / 0.026);

    private static readonly Treadmill Slippery = Machine(0.05, canBrake: false);

    private static readonly Demand Uphill = Example.Walker with { Grade = Ratio.FromPercent(15) };

    // Derived: uphill at 15 % the user drives the motor below a friction of 0.15 less the losses over m g cos.
    [Fact]
    public void TheCriticalFrictionIsTheGradeLessTheLosses()
    {
        OverrunCheck check = OverrunCheck.Of(Slippery, Uphill).Value;
        double expected = 0.15 - (Drag / (90 * 9.80665 * Math.Cos(Math.Atan(0.15))));
        Assert.Equal(expected, check.CriticalFriction, tolerance: 1e-9);
        Assert.True(check.Push > Force.Zero);
        Assert.Equal(OverrunState.Overruns, check.State);
    }

    [Theory]
    [InlineData(0.999, OverrunState.Overruns)]
    [InlineData(1.001, OverrunState.FrictionHolds)]
    public void TheStateTurnsAtTheCriticalFriction(double share, OverrunState state)
    {
        double critical = OverrunCheck.Of(Slippery, Uphill).Value.CriticalFriction;
        Assert.Equal(state, OverrunCheck.Of(Machine(share * critical, canBrake: false), Uphill).Value.State);
    }

    [Theory]
    [InlineData(1.001, OverrunState.Overruns)]
    [InlineData(0.999, OverrunState.FrictionHolds)]
    public void TheStateTurnsAtTheCriticalGrade(double share, OverrunState state)
    {
        double critical = OverrunCheck.Of(Slippery, Uphill).Value.CriticalGrade.Value.DecimalFractions;
        Demand demand = Uphill with { Grade = Ratio.FromDecimalFractions(share * critical) };
        Assert.Equal(state, OverrunCheck.Of(Slippery, demand).Value.State);
    }

    [Fact]
    public void OnTheLevelTheMotorDrivesAndADriveOfFourQuadrantsBrakes()
    {
        Assert.Equal(OverrunState.MotorDrives, OverrunCheck.Of(Slippery, Example.Walker).Value.State);
        Assert.Equal(OverrunState.DriveBrakes, OverrunCheck.Of(Machine(0.05, canBrake: true), Uphill).Value.State);
    }

    // The state agrees with the operating point, which refuses a motor torque that a one-quadrant drive cannot give.
    [Theory]
    [InlineData(4)]
    [InlineData(8)]
    [InlineData(9)]
    [InlineData(12)]
    public void TheOperatingPointRefusesWhatOverruns(double percent)
    {
        Demand demand = Uphill with { Grade = Ratio.FromPercent(percent) };
        bool refused = Slippery.At(demand).MotorTorque.Missing.Why == Reason.DriveCannotBrake;
        Assert.Equal(refused, OverrunCheck.Of(Slippery, demand).Value.State == OverrunState.Overruns);
    }

    // By hand: the push's torque at the motor over the drag's torque, times its speed.
    [Fact]
    public void ADragThatGrowsWithSpeedEndsIt()
    {
        SpeedDrag drag = new(Torque.FromNewtonMeters(0.05), RotationalSpeed.FromRadiansPerSecond(100));
        OverrunCheck check = OverrunCheck.Of(Slippery, Uphill, drag).Value;
        double torque = check.Push.Newtons * 0.026 * 30 / 100;
        double belt = torque / 0.05 * 100 * 0.026 * 30 / 100;
        Assert.Equal(belt, check.SettledSpeed.Value.MetersPerSecond, tolerance: 1e-9 * belt);
        Assert.True(check.SettledSpeed.Value > Uphill.Speed);
    }

    [Fact]
    public void ADragThatHoldsAtTheSetSpeedKeepsIt()
    {
        SpeedDrag strong = new(Torque.FromNewtonMeters(5), RotationalSpeed.FromRadiansPerSecond(100));
        OverrunCheck check = OverrunCheck.Of(Slippery, Uphill, strong).Value;
        Assert.Equal(OverrunState.FrictionHolds, check.State);
        Assert.Equal(Reason.NotInRange, check.SettledSpeed.Missing.Why);
    }

    [Fact]
    public void WithoutSuchADragNothingEndsItAndThatIsSaid()
    {
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "drag"),
            OverrunCheck.Of(Slippery, Uphill).Value.SettledSpeed.Missing
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DeckFriction"),
            OverrunCheck.Of(Slippery with { Deck = new() }, Uphill).Missing
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "MotorFrictionTorque"),
            OverrunCheck.Of(Slippery with { Motor = null }, Uphill).Missing
        );
        SpeedDrag none = new(Torque.Zero, RotationalSpeed.FromRadiansPerSecond(100));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => OverrunCheck.Of(Slippery, Uphill, none));
    }

    // Hands that carry 95 % cannot be given; with 90 % of a light user on the rails the other drags hold the rest.
    [Fact]
    public void WhereOtherDragsHoldTheWholeWeightNoGradeIsCritical()
    {
        Demand light = Uphill with
        {
            Person = new() { Mass = Mass.FromKilograms(10) },
            Rails = new() { WeightShare = Ratio.FromPercent(90) },
        };
        Assert.Equal(Reason.NotInRange, OverrunCheck.Of(Slippery, light).Value.CriticalGrade.Missing.Why);
    }

    private static Treadmill Machine(double friction, bool canBrake) =>
        Example.Machine with
        {
            Deck = new() { Friction = friction },
            Motor = Example.Machine.Motor! with { CanBrake = canBrake },
        };
}
