using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class DeckFrictionPowerTests
{
    private const double Weight = 80 * 9.80665;

    // 80 kg at 10 km/h on friction 0.20 take 435.9 W at the belt (derived: mean power is mu m g v for any waveform);
    // at an efficiency of 0.65 that is 670.6 W more from the mains.
    [Fact]
    public void FrictionComesBackFromThePowerItTakes()
    {
        double extra = 435.9 / 0.65;
        Close.To(0.2, Friction(150 + extra, 150, 0, 10 / 3.6).Value.Value, 2e-4);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.12)]
    public void UphillTheUserDrivesTheBeltAndTheFrictionIsMore(double grade)
    {
        // Pull = 0.65 x 300 W / 2 m/s = 97.5 N.
        double along = Math.Sqrt(1 + (grade * grade));
        Close.To((97.5 / Weight * along) + grade, Friction(450, 150, grade, 2).Value.Value, 1e-12);
    }

    [Fact]
    public void LoadedPowerBelowEmptyPowerContradicts() =>
        Assert.Equal(Reason.ReadingsContradict, Friction(140, 150, 0, 2).Missing.Why);

    // The efficiency cancels in the ratio of two such values on the level.
    [Fact]
    public void TheRatioBeforeAndAfterNeedsNoEfficiency()
    {
        double low = Friction(550, 150, 0, 2, 0.5).Value.Value / Friction(350, 150, 0, 2, 0.5).Value.Value;
        double high = Friction(550, 150, 0, 2, 0.8).Value.Value / Friction(350, 150, 0, 2, 0.8).Value.Value;
        Close.To(2, low);
        Close.To(2, high);
    }

    [Theory]
    [InlineData(0, 2, 0.65, "mass")]
    [InlineData(80, 0, 0.65, "beltSpeed")]
    [InlineData(80, 2, 0, "efficiency")]
    [InlineData(80, 2, -0.5, "efficiency")]
    public void WhatMustBeAboveNothingIsNamed(double kilograms, double speed, double efficiency, string name)
    {
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(
            name,
            () =>
                DeckFriction.FromMainsPower(
                    Mass.FromKilograms(kilograms),
                    Power.FromWatts(450),
                    Power.FromWatts(150),
                    Speed.FromMetersPerSecond(speed),
                    Ratio.Zero,
                    new(efficiency, 0.1)
                )
        );
        Assert.Contains("is not above 0", error.Message, StringComparison.Ordinal);
    }

    internal static Answer<Estimate<double>> Friction(
        double loaded,
        double empty,
        double grade,
        double speed,
        double efficiency = 0.65
    ) =>
        DeckFriction.FromMainsPower(
            Mass.FromKilograms(80),
            Power.FromWatts(loaded),
            Power.FromWatts(empty),
            Speed.FromMetersPerSecond(speed),
            Ratio.FromDecimalFractions(grade),
            new(efficiency, 0.1)
        );
}
