using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class SlipLocationTests
{
    // Loaded, the roller keeps up with the motor to within r, and the belt with the roller to within b.
    [Theory]
    [InlineData(0, 0, SlipPlace.Nowhere)]
    [InlineData(0, 0.06, SlipPlace.RunningBelt)]
    [InlineData(0.05, 0, SlipPlace.DriveBelt)]
    [InlineData(0.05, 0.06, SlipPlace.Both)]
    [InlineData(0.009, 0.009, SlipPlace.Nowhere)]
    [InlineData(0.019, 0.019, SlipPlace.Nowhere)]
    [InlineData(0.021, 0.019, SlipPlace.DriveBelt)]
    [InlineData(0.019, 0.021, SlipPlace.RunningBelt)]
    public void SlipIsWhereARatioFallsByMoreThanTwoPercent(double drive, double belt, SlipPlace place)
    {
        SlipLocation found = SlipLocation.Of(Empty(), Under(drive, belt)).Value;
        Assert.Equal(place, found.Place);
        Close.Within(drive, found.DriveBelt.Value.Value, 1e-12);
        Close.Within(belt, found.RunningBelt.Value.Value, 1e-12);
        Close.Within(1 - ((1 - drive) * (1 - belt)), found.Whole.Value.Value, 1e-12);
    }

    [Fact]
    public void WithoutTheRollersSpeedSlipIsNotLocated()
    {
        SlipLocation found = SlipLocation
            .Of(Empty() with { DriveRoller = null }, Under(0, 0.06) with { DriveRoller = null })
            .Value;
        Assert.Equal(SlipPlace.NotLocated, found.Place);
        Assert.Equal(new(Reason.InputUnknown, "DriveRoller"), found.RunningBelt.Missing);
        Close.Within(0.06, found.Whole.Value.Value, 1e-12);
    }

    [Fact]
    public void WithoutTheMotorsSpeedTheRunningBeltIsStillJudged()
    {
        SlipLocation found = SlipLocation
            .Of(Empty() with { Motor = null }, Under(0.05, 0.06) with { Motor = null })
            .Value;
        Assert.Equal(SlipPlace.RunningBelt, found.Place);
        Assert.Equal(new(Reason.InputUnknown, "Motor"), found.DriveBelt.Missing);
    }

    [Fact]
    public void ReadingsThatShareNoTwoSpeedsTellNothing()
    {
        Answer<SlipLocation> found = SlipLocation.Of(Empty() with { Motor = null }, Under(0, 0) with { Belt = null });
        Assert.Equal(Reason.InputUnknown, found.Missing.Why);
    }

    // No diameter is asked: other pulleys, another roller, another unit of the belt scale each speed alike before and under.
    [Theory]
    [InlineData(0.5, 1.3, 0.7)]
    [InlineData(1.2, 0.4, 1.1)]
    public void NoDiameterMatters(double motor, double roller, double belt)
    {
        SlipLocation plain = SlipLocation.Of(Empty(), Under(0.01, 0.06)).Value;
        SlipLocation scaled = SlipLocation.Of(Scaled(Empty()), Scaled(Under(0.01, 0.06))).Value;
        Close.Within(plain.RunningBelt.Value.Value, scaled.RunningBelt.Value.Value, 1e-12);
        Close.Within(plain.DriveBelt.Value.Value, scaled.DriveBelt.Value.Value, 1e-12);
        Close.Within(plain.Whole.Value.Value, scaled.Whole.Value.Value, 1e-12);

        SpeedReading Scaled(SpeedReading reading) =>
            reading with
            {
                Motor = motor * reading.Motor,
                DriveRoller = roller * reading.DriveRoller,
                Belt = belt * reading.Belt,
            };
    }

    // Four speeds of 0.5 % each: sqrt(4) x 0.5 % of the quotient 0.94. Checked by drawing as well.
    [Fact]
    public void TheUncertaintyIsThatOfFourSpeeds()
    {
        double stated = SlipLocation.Of(Empty(), Under(0, 0.06)).Value.RunningBelt.Value.StandardUncertainty;
        Close.To(0.94 * 0.01, stated, 1e-9);
        Random random = new(15);
        double scatter = Enumerable
            .Range(0, 40_000)
            .Select(_ => 1 - (Draw(0.94) / Draw(1) / (Draw(1) / Draw(1))))
            .StandardDeviation();
        Close.To(scatter, stated, 0.02);

        double Draw(double value) => Normal.Sample(random, value, 0.005 * value);
    }

    [Fact]
    public void AReadingsOwnUncertaintyIsUsed()
    {
        SpeedReading sure = Under(0, 0.06) with { RelativeUncertainty = Ratio.FromPercent(1.2) };
        double stated = SlipLocation.Of(Empty(), sure).Value.RunningBelt.Value.StandardUncertainty;

        // sqrt(2 x 0.5^2 + 2 x 1.2^2) = 1.8385 %.
        Close.To(0.94 * 0.018385, stated, 1e-4);
    }

    [Fact]
    public void ReadingsOfTheWrongLoadAreErrors()
    {
        Assert.Throws<ArgumentException>("unloaded", () => SlipLocation.Of(Under(0, 0), Under(0, 0)));
        Assert.Throws<ArgumentException>("loaded", () => SlipLocation.Of(Empty(), Empty()));
        Assert.Throws<ArgumentNullException>("unloaded", () => SlipLocation.Of(null!, Empty()));
        Assert.Throws<ArgumentNullException>("loaded", () => SlipLocation.Of(Empty(), null!));
    }

    private static SpeedReading Empty() => Happened.SpeedsEmpty();

    private static SpeedReading Under(double drive, double belt) => Happened.SpeedsUnder(drive, belt);
}
