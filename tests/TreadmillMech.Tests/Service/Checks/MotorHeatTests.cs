using MathNet.Numerics.OdeSolvers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class MotorHeatTests
{
    private static readonly MotorCooling Cooling = new()
    {
        Still = ThermalConductance.FromWattsPerKelvin(0.5),
        Fan = ThermalConductance.FromWattsPerKelvin(1.5),
        RatedSpeed = RotationalSpeed.FromRadiansPerSecond(400),
        TimeConstant = Duration.FromMinutes(20),
    };

    private static readonly Temperature Limit = Temperature.FromDegreesCelsius(130);

    // At the settled temperature the heat given off is the copper's heat there: a balance, not the formula.
    [Fact]
    public void WhatSettlesGivesOffWhatItMakes()
    {
        MotorHeat heat = MotorHeat.Of(Example.Machine, Example.Runner, Cooling, Limit).Value;
        double settled = heat.Settled.Value.DegreesCelsius;
        double speed = Example.Machine.At(Example.Runner).MotorSpeed.RadiansPerSecond;
        double givenOff = (0.5 + (1.5 * Math.Sqrt(speed / 400))) * (settled - 20);
        double made = (double)heat.ColdLoss.Watts * (settled + 234.5) / (20 + 234.5);
        Assert.Equal(made, givenOff, tolerance: 1e-9 * made);
    }

    // The same current at a smaller share of the rated speed: the fan gives less air.
    [Fact]
    public void AtOneCurrentASlowerFanLeavesTheMotorHotter()
    {
        MotorCooling slower = Cooling with { RatedSpeed = RotationalSpeed.FromRadiansPerSecond(1200) };
        Temperature fast = MotorHeat.Of(Example.Machine, Example.Runner, Cooling, Limit).Value.Settled.Value;
        Temperature slow = MotorHeat.Of(Example.Machine, Example.Runner, slower, Limit).Value.Settled.Value;
        Assert.True(slow > fast);
    }

    [Fact]
    public void TooLittleCoolingRunsAway()
    {
        MotorCooling poor = Cooling with
        {
            Still = ThermalConductance.FromWattsPerKelvin(0.05),
            Fan = ThermalConductance.FromWattsPerKelvin(0),
        };
        MotorHeat heat = MotorHeat.Of(Example.Machine, Example.Runner, poor, Limit).Value;
        Assert.True(heat.RunawayRatio >= 1);
        Assert.Equal(Reason.ThermalRunaway, heat.Settled.Missing.Why);
        Assert.True(heat.TimeToLimit.Value > Duration.Zero);
    }

    // The time to the limit against MathNet's fixed-step integration of C dtheta/dt = P0 (1 + alpha theta) - G theta, with
    // C = tau G; both on the settling and on the runaway side.
    [Theory]
    [InlineData(0.5, 40)]
    [InlineData(0.05, 130)]
    public void TheTimeToTheLimitIsThatOfTheDifferentialEquation(double still, double limit)
    {
        MotorCooling cooling = Cooling with
        {
            Still = ThermalConductance.FromWattsPerKelvin(still),
            Fan = ThermalConductance.FromWattsPerKelvin(0),
        };
        MotorHeat heat = MotorHeat
            .Of(Example.Machine, Example.Runner, cooling, Temperature.FromDegreesCelsius(limit))
            .Value;
        double loss = (double)heat.ColdLoss.Watts;
        double alpha = 1 / 254.5;
        double time = heat.TimeToLimit.Value.Seconds;
        double[] rise = RungeKutta.FourthOrder(
            0,
            0,
            time,
            2001,
            (_, y) => ((loss * (1 + (alpha * y))) - (still * y)) / (1200 * still)
        );
        Assert.Equal(limit - 20, rise[^1], tolerance: 1e-6 * limit);
    }

    [Fact]
    public void ALimitThatIsNeverReachedSaysSo()
    {
        MotorHeat heat = MotorHeat
            .Of(Example.Machine, Example.Runner, Cooling, Temperature.FromDegreesCelsius(220))
            .Value;
        Assert.Equal(Reason.NotInRange, heat.TimeToLimit.Missing.Why);
    }

    [Fact]
    public void ALimitBelowTheAirsTemperatureIsReachedAtOnce()
    {
        MotorCooling hot = Cooling with { Ambient = Temperature.FromDegreesCelsius(50) };
        MotorHeat heat = MotorHeat.Of(Example.Machine, Example.Runner, hot, Temperature.FromDegreesCelsius(45)).Value;
        Assert.Equal(0, heat.TimeToLimit.Value.Seconds);
    }

    [Fact]
    public void AnUnknownResistanceIsNamed()
    {
        Treadmill unknown = Example.Machine with { Motor = Example.Machine.Motor! with { Resistance = null } };
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "ArmatureResistance"),
            MotorHeat.Of(unknown, Example.Runner, Cooling, Limit).Missing
        );
    }
}
