using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class MotorCheckTests
{
    private const double Rpm = 2 * Math.PI / 60;

    private static readonly DcMotor Plain = Motor(0.35, 1);

    // Fitzgerald, Electric Machinery 6e, Ex. 7.1: 125 V induced at 3000 rpm, 0.02 ohm, 128 V: 150 A, 19.2 and 18.75 kW, 59.7 N m.
    [Fact]
    public void AMotorAtAPointIsThePrintedOne()
    {
        MotorPoint point = MotorPoint
            .Of(Motor(125 / (3000 * Rpm), 0.02), Torque.FromNewtonMeters(59.7), Turning(3000 * Rpm))
            .Value;
        Assert.Equal(150, point.Current.Amperes, tolerance: 0.5);
        Assert.Equal(128, point.Voltage.Volts, tolerance: 0.5);
        Assert.Equal(19.2, (double)point.ElectricalPower.Watts / 1000, tolerance: 0.05);
        Assert.Equal(18.75, (double)point.ShaftPower.Watts / 1000, tolerance: 0.016);
        Assert.False(point.Brakes);
    }

    // Fitzgerald, Ex. 7.9: 1.03 ohm, 0.22 V s/rad, 61 W lost; 275 W at 1700 rpm take 48 V.
    [Fact]
    public void AMotorWithFrictionTakesThePrintedVoltage()
    {
        double speed = 1700 * Rpm;
        DcMotor motor = Motor(0.22, 1.03) with { FrictionTorque = Torque.FromNewtonMeters(61 / speed) };
        MotorPoint point = MotorPoint.Of(motor, Torque.FromNewtonMeters(275 / speed), Turning(speed)).Value;
        Assert.Equal(48, point.Voltage.Volts, tolerance: 0.02);
    }

    // What goes in comes out at the shaft, or is lost in copper, brushes and friction.
    [Theory]
    [InlineData(1.5, 200)]
    [InlineData(-1.5, 200)]
    [InlineData(0, 50)]
    public void PowerIsKept(double torque, double speed)
    {
        DcMotor motor = Plain with
        {
            BrushDrop = ElectricPotential.FromVolts(1.5),
            FrictionTorque = Torque.FromNewtonMeters(0.1),
            CanBrake = true,
        };
        MotorPoint point = MotorPoint.Of(motor, Torque.FromNewtonMeters(torque), Turning(speed)).Value;
        double lost = (double)point.CopperLoss.Watts + (1.5 * Math.Abs(point.Current.Amperes)) + (0.1 * speed);
        Assert.Equal((double)point.ElectricalPower.Watts, (double)point.ShaftPower.Watts + lost, tolerance: 1e-9);
        Assert.Equal(torque < 0, point.Brakes);
        Assert.Equal(torque > 0, point.Efficiency.Found);
    }

    // Copper from 20 to 100 deg C gains a factor 334.5/254.5; ferrite loses 0.2 % a kelvin (from memory): 80 K are 16 %.
    [Fact]
    public void AWarmMotorTakesMoreCurrentAndLosesMore()
    {
        Magnets magnets = new()
        {
            LossPerKelvin = Ratio.FromPercent(0.2),
            ConstantTemperature = Temperature.FromDegreesCelsius(20),
            Temperature = Temperature.FromDegreesCelsius(100),
        };
        Torque torque = Torque.FromNewtonMeters(1.4);
        MotorPoint cold = MotorPoint.Of(Plain, torque, Turning(200)).Value;
        MotorPoint warm = MotorPoint
            .Of(Plain, torque, Turning(200), Temperature.FromDegreesCelsius(100), magnets)
            .Value;
        Assert.Equal(4, cold.Current.Amperes, tolerance: 1e-12);
        Assert.Equal(4 / 0.84, warm.Current.Amperes, tolerance: 1e-12);
        Assert.Equal(334.5 / 254.5, warm.Resistance.Ohms, tolerance: 1e-12);
        Assert.Equal(
            334.5 / 254.5 / (0.84 * 0.84),
            (double)warm.CopperLoss.Watts / (double)cold.CopperLoss.Watts,
            tolerance: 1e-9
        );
    }

    [Fact]
    public void TheDutyRatioIsTheShareOfTheBus()
    {
        MotorPoint point = MotorPoint.Of(Plain, Torque.FromNewtonMeters(1.4), Turning(200)).Value;
        Assert.Equal(74.0 / 160, point.DutyRatio(ElectricPotential.FromVolts(160)).Value, tolerance: 1e-12);
        Assert.Equal(Reason.MotorCannotReachSpeed, point.DutyRatio(ElectricPotential.FromVolts(60)).Missing.Why);
    }

    [Fact]
    public void LimitsAreAnsweredWithBothNumbers()
    {
        DcMotor limited = Plain with
        {
            VoltageLimit = ElectricPotential.FromVolts(90),
            CurrentLimit = ElectricCurrent.FromAmperes(10),
        };
        Shortfall current = MotorPoint.Of(limited, Torque.FromNewtonMeters(4.2), Turning(10)).Missing;
        Assert.Equal(Reason.CurrentLimit, current.Why);
        Assert.Equal(12, current.Needed, tolerance: 1e-9);
        Shortfall voltage = MotorPoint.Of(limited, Torque.FromNewtonMeters(0.7), Turning(300)).Missing;
        Assert.Equal(Reason.MotorCannotReachSpeed, voltage.Why);
        Assert.Equal(107, voltage.Needed, tolerance: 1e-9);
        Assert.Equal(
            Reason.DriveCannotBrake,
            MotorPoint.Of(limited, Torque.FromNewtonMeters(-0.1), Turning(10)).Missing.Why
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "MotorFrictionTorque"),
            MotorPoint.Of(Plain with { FrictionTorque = null }, Torque.Zero, Turning(1)).Missing
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => MotorPoint.Of(Plain, Torque.Zero, Turning(-1)));
    }

    // Burman, Special Electrical Machines, Ex. 4.1: 0.12 V s/rad at 48 V: 3819 rpm. The printed digits are cut off, not rounded.
    [Fact]
    public void TheUnloadedSpeedIsThePrintedOne()
    {
        DcMotor motor = Motor(0.12, 0.5) with { VoltageLimit = ElectricPotential.FromVolts(48) };
        RotationalSpeed speed = MotorReach.Of(motor, Torque.Zero).Value.UnloadedSpeed.Value;
        Assert.Equal(3819, Math.Floor(speed.RevolutionsPerMinute));
    }

    // At the highest speed under a torque, the point takes just the voltage limit.
    [Theory]
    [InlineData(0.2)]
    [InlineData(2)]
    public void AtTheHighestSpeedThePointTakesTheVoltageLimit(double torque)
    {
        DcMotor motor = Plain with
        {
            VoltageLimit = ElectricPotential.FromVolts(120),
            CurrentLimit = ElectricCurrent.FromAmperes(10),
            FrictionTorque = Torque.FromNewtonMeters(0.1),
        };
        MotorReach reach = MotorReach.Of(motor, Torque.FromNewtonMeters(torque)).Value;
        MotorPoint point = MotorPoint
            .Of(motor with { VoltageLimit = null }, Torque.FromNewtonMeters(torque), reach.HighestSpeed.Value)
            .Value;
        Assert.Equal(120, point.Voltage.Volts, tolerance: 1e-9);
        Assert.True(reach.UnloadedSpeed.Value > reach.HighestSpeed.Value);
        Assert.Equal((0.35 * 10) - 0.1, reach.LargestTorque.Value.NewtonMeters, tolerance: 1e-12);
        Assert.Equal(
            Reason.CurrentLimit,
            MotorReach.Of(motor, Torque.FromNewtonMeters(5)).Value.HighestSpeed.Missing.Why
        );
    }

    // At the highest belt speed the operating point's voltage is the limit.
    [Fact]
    public void TheHighestBeltSpeedTakesTheVoltageLimit()
    {
        Treadmill machine = OperatingPoints.Example.Machine;
        machine = machine with { Motor = machine.Motor! with { VoltageLimit = ElectricPotential.FromVolts(100) } };
        Demand demand = OperatingPoints.Example.Walker;
        Speed highest = MotorReach.HighestBeltSpeed(machine, demand).Value;
        OperatingPoint there = OperatingPoints.Example.Machine.At(demand with { Speed = highest });
        Assert.Equal(100, there.MotorVoltage.Value.Volts, tolerance: 1e-6);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "VoltageLimit"),
            MotorReach.HighestBeltSpeed(OperatingPoints.Example.Machine, demand).Missing
        );
    }

    private static RotationalSpeed Turning(double value) => RotationalSpeed.FromRadiansPerSecond(value);

    private static DcMotor Motor(double constant, double resistance) =>
        new()
        {
            Constant = MotorConstant.FromVoltSecondsPerRadian(constant),
            Resistance = ElectricResistance.FromOhms(resistance),
            BrushDrop = ElectricPotential.Zero,
            FrictionTorque = Torque.Zero,
        };
}
