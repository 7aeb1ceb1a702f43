using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Parts;

/// <summary>Slip for a torque, and the largest torque.</summary>
public sealed class InductionTorqueTests
{
    private static readonly ElectricPotential Volts = ElectricPotential.FromVolts(220);
    private static readonly Frequency Hertz = Frequency.FromHertz(60);

    // Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.2 and 6.3.
    private static readonly InductionMotor Example = new()
    {
        RatedFrequency = Hertz,
        PolePairs = 3,
        StatorResistance = ElectricResistance.FromOhms(0.294),
        RotorResistance = ElectricResistance.FromOhms(0.144),
        StatorReactance = ElectricResistance.FromOhms(0.503),
        RotorReactance = ElectricResistance.FromOhms(0.209),
        MagnetisingReactance = ElectricResistance.FromOhms(13.25),
        RotationalLoss = Power.FromWatts(403),
    };

    // Ex. 6.2: 42.4 N m at a slip of 0.02, 1176 rpm; near no load the slip goes with the torque.
    [Fact]
    public void ThePrintedTorqueIsGivenAtThePrintedSlip()
    {
        InductionPoint point = Example.AtTorque(Volts, Hertz, Torque.FromNewtonMeters(42.4)).Value;
        Assert.Equal(0.02, point.Slip.DecimalFractions, tolerance: 0.02 * 0.05 / 42.4);
        Assert.Equal(18.8, point.LineCurrent.Amperes, tolerance: 0.05);
    }

    // Ex. 6.3, from memory: the gap's largest torque is 175 N m, at a slip of 0.192.
    [Fact]
    public void TheBreakdownIsThePrintedOne()
    {
        InductionBreakdown breakdown = Example.Breakdown(Volts, Hertz);
        Assert.Equal(175, breakdown.GapTorque.NewtonMeters, tolerance: 0.5);
        Assert.Equal(0.192, breakdown.GapSlip.DecimalFractions, tolerance: 0.0005);
    }

    [Theory]
    [InlineData(220, 60, 403)]
    [InlineData(120, 30, 403)]
    [InlineData(40, 8, 60)]
    [InlineData(90, 60, 0)]
    public void NoOtherSlipGivesMoreTorqueThanTheBreakdown(double volts, double hertz, double loss)
    {
        InductionMotor motor = Example with { RotationalLoss = Power.FromWatts(loss) };
        ElectricPotential line = ElectricPotential.FromVolts(volts);
        Frequency frequency = Frequency.FromHertz(hertz);
        InductionBreakdown breakdown = motor.Breakdown(line, frequency);
        for (int i = 1; i < 1000; i++)
        {
            Torque torque = motor.At(line, frequency, Ratio.FromDecimalFractions(i / 1000.0)).ShaftTorque.Value;
            Assert.True(torque.NewtonMeters <= breakdown.ShaftTorque.NewtonMeters * (1 + 1e-12), $"slip {i / 1000.0}");
        }

        InductionPoint there = motor.At(line, frequency, breakdown.Slip);
        Assert.Equal(
            breakdown.ShaftTorque.NewtonMeters,
            there.ShaftTorque.Value.NewtonMeters,
            tolerance: 1e-9 * breakdown.ShaftTorque.NewtonMeters
        );
        Assert.Equal(there.Speed.RadiansPerSecond, breakdown.Speed.RadiansPerSecond, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(60)]
    [InlineData(150)]
    public void TheSlipFoundGivesTheTorqueAskedAndLiesOnTheSteadySide(double torque)
    {
        InductionPoint point = Example.AtTorque(Volts, Hertz, Torque.FromNewtonMeters(torque)).Value;
        Assert.Equal(torque, point.ShaftTorque.Value.NewtonMeters, tolerance: 1e-9);
        Assert.True(point.Slip < Example.Breakdown(Volts, Hertz).Slip);
    }

    [Fact]
    public void ATorqueAboveTheLargestHasNoAnswerAndSaysHowMuchThereIs()
    {
        double most = Example.Breakdown(Volts, Hertz).ShaftTorque.NewtonMeters;
        Shortfall missing = Example.AtTorque(Volts, Hertz, Torque.FromNewtonMeters(1.001 * most)).Missing;
        Assert.Equal(Reason.NotInRange, missing.Why);
        Assert.Equal(most, missing.Available, tolerance: 1e-9);
        Assert.True(Example.AtTorque(Volts, Hertz, Torque.FromNewtonMeters(0.999 * most)).Found);
    }

    // With a rotor of much resistance the torque rises down to standstill: the search ends there and not beyond.
    [Fact]
    public void AStarterRotorIsSoughtUpToStandstill()
    {
        InductionMotor starter = Example with
        {
            RotorResistance = ElectricResistance.FromOhms(2),
            RotationalLoss = Power.Zero,
        };
        InductionBreakdown breakdown = starter.Breakdown(Volts, Hertz);
        Assert.True(breakdown.GapSlip.DecimalFractions > 1);
        Assert.InRange(breakdown.Slip.DecimalFractions, 0.999, 1);
        Assert.True(breakdown.ShaftTorque < breakdown.GapTorque);
    }

    [Fact]
    public void TorquesOutsideTheRangeAreNamed()
    {
        ArgumentOutOfRangeException error = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            Example.AtTorque(Volts, Hertz, Torque.FromNewtonMeters(-1))
        );
        Assert.Contains("shaftTorque: -1 N m is outside 0 N m to 1000 N m", error.Message, StringComparison.Ordinal);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Example.Breakdown(ElectricPotential.Zero, Hertz));
    }
}
