using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Parts;

public sealed class InductionMotorTests
{
    // Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., example 6.2: 220 V, 60 Hz, six poles.
    private static readonly InductionMotor Example = new()
    {
        RatedFrequency = Frequency.FromHertz(60),
        PolePairs = 3,
        StatorResistance = ElectricResistance.FromOhms(0.294),
        RotorResistance = ElectricResistance.FromOhms(0.144),
        StatorReactance = ElectricResistance.FromOhms(0.503),
        RotorReactance = ElectricResistance.FromOhms(0.209),
        MagnetisingReactance = ElectricResistance.FromOhms(13.25),
        RotationalLoss = Power.FromWatts(403),
    };

    private static readonly InductionPoint Printed = Example.At(
        ElectricPotential.FromVolts(220),
        Frequency.FromHertz(60),
        Ratio.FromPercent(2)
    );

    [Fact]
    public void TheShaftTurnsAtThePrintedSpeed() =>
        Assert.Equal(1176, Printed.Speed.RevolutionsPerMinute, tolerance: 0.5);

    [Fact]
    public void TheLineCarriesThePrintedCurrent() => Assert.Equal(18.8, Printed.LineCurrent.Amperes, tolerance: 0.05);

    [Fact]
    public void TheShaftGivesThePrintedTorque() =>
        Assert.Equal(42.4, Printed.ShaftTorque.Value.NewtonMeters, tolerance: 0.05);

    [Fact]
    public void TheEfficiencyIsThePrintedOne() => Assert.Equal(0.86, Printed.Efficiency, tolerance: 0.005);

    // Balance: what goes in comes out at the shaft, or as heat of stator, rotor and rotation.
    [Theory]
    [InlineData(60, 220, 0.02)]
    [InlineData(30, 120, 0.05)]
    [InlineData(8, 40, 0.3)]
    public void PowerIsKept(double hertz, double volts, double slip)
    {
        InductionPoint point = Example.At(
            ElectricPotential.FromVolts(volts),
            Frequency.FromHertz(hertz),
            Ratio.FromDecimalFractions(slip)
        );
        double copper = 3 * point.LineCurrent.Amperes * point.LineCurrent.Amperes * 0.294;
        double gap = ((double)point.ShaftPower.Watts + 403) / (1 - slip);
        Assert.Equal((double)point.InputPower.Watts, copper + gap, tolerance: 1e-9 * gap);
    }

    [Fact]
    public void StandstillHasNoShaftTorqueToTell() =>
        Assert.Equal(
            Reason.NotInRange,
            Example
                .At(ElectricPotential.FromVolts(100), Frequency.FromHertz(60), Ratio.FromPercent(100))
                .ShaftTorque.Missing.Why
        );

    [Fact]
    public void ASlipOfNothingIsRefusedByName()
    {
        ArgumentOutOfRangeException error = Assert.Throws<OutOfRangeException>(() =>
            Example.At(ElectricPotential.FromVolts(220), Frequency.FromHertz(60), Ratio.Zero)
        );
        Assert.Contains("slip: 0 is outside", error.Message, StringComparison.Ordinal);
    }
}
