using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class MeasurementCheckTests
{
    // By hand: 100 rad/s on 48 mm and a belt of 2 mm are 2.5 m/s; the display says 2.6.
    [Fact]
    public void ARollerTellsTheSpeed()
    {
        RollerSpeedCheck check = RollerSpeedCheck.Of(
            new(RotationalSpeed.FromRadiansPerSecond(100), RotationalSpeed.FromRadiansPerSecond(0.5)),
            Mm(48, 0.1),
            Mm(2, 0.1),
            Speed.FromMetersPerSecond(2.6)
        );
        Assert.Equal(2.5, check.Speed.Value.MetersPerSecond, tolerance: 1e-12);
        double relative = Math.Sqrt((0.005 * 0.005) + (2 * 0.002 * 0.002));
        Assert.Equal(2.5 * relative, check.Speed.StandardUncertainty.MetersPerSecond, tolerance: 1e-12);
        Estimate<Ratio> error = check.DisplayError.Value;
        Assert.Equal(0.04, error.Value.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(1.04 * relative, error.StandardUncertainty.DecimalFractions, tolerance: 1e-12);
    }

    [Fact]
    public void WithoutADisplayThereIsNoError()
    {
        Estimate<RotationalSpeed> roller = new(RotationalSpeed.FromRadiansPerSecond(100), RotationalSpeed.Zero);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "Display"),
            RollerSpeedCheck.Of(roller, Mm(48, 0), Mm(2, 0)).DisplayError.Missing
        );
        ArgumentOutOfRangeException error = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            RollerSpeedCheck.Of(roller, Mm(480, 0), Mm(2, 0))
        );
        Assert.Contains("diameter: 0.48 m is outside", error.Message, StringComparison.Ordinal);
    }

    // numpy: tan(arctan2(0.16, 1.12) + arctan(0.011)), as in the table of the laws' checks; small slopes add up.
    [Fact]
    public void TheFloorsSlopeIsAdded()
    {
        InclineCheck check = InclineCheck.Of(
            Metres(0.16, 0.001),
            Metres(1.12, 0.002),
            new(Ratio.FromDecimalFractions(0.011), Ratio.FromDecimalFractions(0.001)),
            Ratio.FromPercent(15)
        );
        double expected = Math.Tan(Math.Atan2(0.16, 1.12) + Math.Atan(0.011));
        Assert.Equal(0.16 / 1.12, check.AgainstFloor.Value.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(expected, check.AgainstHorizontal.Value.Value.DecimalFractions, tolerance: 1e-12);
        Assert.Equal(0.15 - expected, check.DisplayError.Value.Value.DecimalFractions, tolerance: 1e-12);

        // Derivative of tan(a + b) by tan a: (1 + tan2(a + b))/(1 + tan2 a), and the same by tan b.
        double slope = 0.16 / 1.12;
        double byRise = (1 + (expected * expected)) / (1 + (slope * slope));
        double byFloor = (1 + (expected * expected)) / (1 + (0.011 * 0.011));
        double ofSlope = slope * Math.Sqrt(Math.Pow(0.001 / 0.16, 2) + Math.Pow(0.002 / 1.12, 2));
        double spread = Math.Sqrt(Math.Pow(byRise * ofSlope, 2) + Math.Pow(byFloor * 0.001, 2));
        Assert.Equal(spread, check.AgainstHorizontal.Value.StandardUncertainty.DecimalFractions, tolerance: 1e-9);
    }

    [Fact]
    public void AnUnknownFloorLeavesTheGradeAgainstIt()
    {
        InclineCheck check = InclineCheck.Of(Metres(0.1, 0), Metres(1, 0), display: Ratio.FromPercent(10));
        Assert.Equal(0.1, check.AgainstFloor.Value.DecimalFractions, tolerance: 1e-12);
        Shortfall unknown = new(Reason.InputUnknown, "floorSlope");
        Assert.Equal(unknown, check.AgainstHorizontal.Missing);
        Assert.Equal(unknown, check.DisplayError.Missing);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => InclineCheck.Of(Metres(0.1, 0), Metres(0.01, 0)));
    }

    // Pulleys 28 and 84 mm, roller 50 mm, belt 2 mm: 300 rad/s at the motor are 100 at the roller and 2.6 m/s without slip.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.03, 0)]
    [InlineData(0, 0.05)]
    [InlineData(0.02, 0.04)]
    public void SlipsFollowFromSpeedsAndDiameters(double drive, double belt)
    {
        SpeedReading reading = Happened.Speeds(
            LoadState.Loaded,
            300,
            100 * (1 - drive),
            2.6 * (1 - drive) * (1 - belt)
        ) with
        {
            RelativeUncertainty = Ratio.FromPercent(0.5),
        };
        SlipCheck check = SlipCheck.Of(Machines.Plain, reading, Ratio.FromPercent(1));
        Assert.Equal(drive, check.DriveBelt.Value.Value.DecimalFractions, tolerance: 1e-9);
        Assert.Equal(belt, check.RunningBelt.Value.Value.DecimalFractions, tolerance: 1e-9);
        double whole = 1 - ((1 - drive) * (1 - belt));
        Assert.Equal(whole, check.Whole.Value.Value.DecimalFractions, tolerance: 1e-9);

        // Two speeds of 0.5 % and three diameters of 1 %.
        double relative = Math.Sqrt((2 * 0.005 * 0.005) + (3 * 0.01 * 0.01));
        Assert.Equal((1 - whole) * relative, check.Whole.Value.StandardUncertainty.DecimalFractions, tolerance: 1e-9);
    }

    [Fact]
    public void ASpeedThatWasNotReadIsNamed()
    {
        SpeedReading reading = Happened.SpeedsEmpty() with { DriveRoller = null };
        SlipCheck check = SlipCheck.Of(Machines.Plain, reading, Ratio.FromPercent(1));
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DriveRoller"), check.RunningBelt.Missing);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "DriveRoller"), check.DriveBelt.Missing);
        Assert.True(check.Whole.Found);
    }

    private static Estimate<Length> Mm(double value, double uncertainty) =>
        new(Length.FromMillimeters(value), Length.FromMillimeters(uncertainty));

    private static Estimate<Length> Metres(double value, double uncertainty) =>
        new(Length.FromMeters(value), Length.FromMeters(uncertainty));
}
