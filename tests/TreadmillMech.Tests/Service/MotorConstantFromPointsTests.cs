using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Fitzgerald, Electric Machinery, 6th ed., Ex 7.9: R 1.03 ohm; 50 V, 2100 rpm, 1.25 A unloaded; Km 0.22.</summary>
public sealed class MotorConstantFromPointsTests
{
    private const double Resistance = 1.03;
    private const double Constant = (50 - (1.25 * Resistance)) / (2100 * Math.PI / 30);

    // The second point is the same motor at half the speed and 1 A: V = Km w + I R.
    private static readonly (ElectricPotential, ElectricCurrent, RotationalSpeed) Half = Point(
        (Constant * 1050 * Math.PI / 30) + Resistance,
        1,
        1050
    );

    private static readonly (ElectricPotential, ElectricCurrent, RotationalSpeed) Whole = Point(50, 1.25, 2100);

    [Fact]
    public void TheTextbooksMotorConstantComesBack()
    {
        double found = DeckFriction
            .MotorConstantFromUnloadedPoints(Half, Whole, ElectricResistance.FromOhms(Resistance))
            .Value.Value.VoltSecondsPerRadian;
        Close.To(Constant, found, 1e-12);

        // Printed: 0.22.
        Close.Within(0.22, found, 0.005);
    }

    // Left out, the resistance costs R dI / dw = 1.03 x 0.25 / 109.96 = 0.00234 V s/rad, within one ohm's uncertainty.
    [Fact]
    public void WithoutTheResistanceItIsOffByLessThanStated()
    {
        Estimate<MotorConstant> found = DeckFriction.MotorConstantFromUnloadedPoints(Half, Whole).Value;
        double off = found.Value.VoltSecondsPerRadian - Constant;
        Close.To(Resistance * 0.25 / (1050 * Math.PI / 30), off, 1e-9);
        Assert.True(off <= 2 * found.StandardUncertainty.VoltSecondsPerRadian);
    }

    [Fact]
    public void ABrushDropCancels()
    {
        (ElectricPotential, ElectricCurrent, RotationalSpeed) Raised(
            (ElectricPotential Voltage, ElectricCurrent Current, RotationalSpeed Speed) point
        ) => (point.Voltage + ElectricPotential.FromVolts(2), point.Current, point.Speed);

        ElectricResistance ohms = ElectricResistance.FromOhms(Resistance);
        Close.To(
            Constant,
            DeckFriction
                .MotorConstantFromUnloadedPoints(Raised(Half), Raised(Whole), ohms)
                .Value.Value.VoltSecondsPerRadian,
            1e-12
        );
    }

    [Fact]
    public void PointsTooCloseTogetherOrInTheWrongOrderTellNothing()
    {
        Shortfall close = DeckFriction.MotorConstantFromUnloadedPoints(Point(45, 1.2, 1900), Whole).Missing;
        Assert.Equal(Reason.NotObservable, close.Why);
        Close.To(1.2 * 1900 * Math.PI / 30, close.Needed);
        Close.To(2100 * Math.PI / 30, close.Available);
        Assert.Equal(Reason.NotObservable, DeckFriction.MotorConstantFromUnloadedPoints(Whole, Half).Missing.Why);
    }

    [Fact]
    public void AVoltageThatFallsWithSpeedContradicts() =>
        Assert.Equal(
            Reason.ReadingsContradict,
            DeckFriction.MotorConstantFromUnloadedPoints(Point(60, 1, 1050), Whole).Missing.Why
        );

    private static (ElectricPotential, ElectricCurrent, RotationalSpeed) Point(
        double volts,
        double amperes,
        double rpm
    ) =>
        (
            ElectricPotential.FromVolts(volts),
            ElectricCurrent.FromAmperes(amperes),
            RotationalSpeed.FromRadiansPerSecond(rpm * Math.PI / 30)
        );
}
