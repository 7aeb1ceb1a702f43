using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class HeatCheckTests
{
    private static readonly Temperature Limit = Temperature.FromDegreesCelsius(130);

    private static readonly MotorCooling Fanned = new()
    {
        Still = ThermalConductance.FromWattsPerKelvin(0.1),
        Fan = ThermalConductance.FromWattsPerKelvin(3),
        RatedSpeed = RotationalSpeed.FromRadiansPerSecond(400),
    };

    // Theraja vol. III, Ex. 45.9: 90 min, half an hour, 40 kW: 75.13 kW; Ex. 45.10: 2 h, one hour, 15 hp: 24 hp.
    // Subrahmanyam, Electric Drives, Ex. 5.2: 1.5 h, two hours, constant losses half of the copper's: 1.2397.
    [Theory]
    [InlineData(30, 90, 0, 40, 75.13, 0.005)]
    [InlineData(60, 120, 0, 15, 24, 0.5)]
    [InlineData(120, 90, 0.5, 1, 1.2397, 5e-5)]
    public void ShortTimeRatingsArePrinted(
        double minutes,
        double constant,
        double constantLoss,
        double lasting,
        double printed,
        double tolerance
    )
    {
        Duration time = Duration.FromMinutes(minutes);
        Duration tau = Duration.FromMinutes(constant);
        double load = ShortTimeCheck.LoadFor(time, tau, constantLoss);
        Assert.Equal(printed, lasting * load, tolerance);

        // And the other way: the load of that rating is borne for that time.
        ShortTimeCheck check = ShortTimeCheck.Of(load, tau, constantLoss);
        Assert.Equal(time.Seconds, check.TimeAllowed.Value.Seconds, tolerance: 1e-6);
    }

    // Theraja, Ex. 45.14: from 20 K towards 85 K at 2.4 h, 45.58 K after 1.2 h (70.58 deg C at ambient 25).
    [Fact]
    public void AWarmMotorBearsALoadForThePrintedTime()
    {
        ShortTimeCheck check = ShortTimeCheck.Of(
            Math.Sqrt(85 / 45.58),
            Duration.FromHours(2.4),
            0,
            Ratio.FromDecimalFractions(20 / 45.58)
        );
        Assert.Equal(1.2, check.TimeAllowed.Value.Hours, tolerance: 0.0004);
    }

    [Fact]
    public void ALoadWithinTheLastingOneIsBorneForEver()
    {
        Assert.Equal(Reason.NotInRange, ShortTimeCheck.Of(1, Duration.FromHours(1), 0.3).TimeAllowed.Missing.Why);
        Assert.True(
            ShortTimeCheck.Of(2, Duration.FromHours(1), 0).TimeAllowed.Value
                > ShortTimeCheck.Of(3, Duration.FromHours(1), 0).TimeAllowed.Value
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => ShortTimeCheck.Of(2, Duration.FromSeconds(1), 0));
    }

    // By hand: half of a rise is lost in ln 2 time constants.
    [Fact]
    public void CoolingByHand() =>
        Assert.Equal(
            60 * Math.Log(2),
            ShortTimeCheck.TimeToCool(Ratio.FromPercent(50), Duration.FromMinutes(60)).Minutes,
            tolerance: 1e-9
        );

    // Textbook examples of a 30 kW motor (public copy, solved there with fsolve): 30 and 45 K after 40 and 80 min;
    // 20 and 30 K after 30 and 60 min.
    [Theory]
    [InlineData(30, 45, 40, 57.71, 60)]
    [InlineData(20, 30, 30, 43.28, 40)]
    public void ARunTellsItsEnd(double first, double second, double minutes, double constant, double rise)
    {
        Temperature cold = Temperature.FromDegreesCelsius(25);
        HeatingRun run = HeatingRun
            .Of(
                cold,
                Temperature.FromDegreesCelsius(25 + first),
                Temperature.FromDegreesCelsius(25 + second),
                Duration.FromMinutes(minutes)
            )
            .Value;
        Assert.Equal(constant, run.TimeConstant.Minutes, tolerance: 0.005);
        Assert.Equal(rise, run.FinalRise.Kelvins, tolerance: 0.05);
        Assert.Equal(25 + rise, run.FinalTemperature.DegreesCelsius, tolerance: 0.05);
        Assert.Equal(90 / rise, run.Conductance(Power.FromWatts(90)).WattsPerKelvin, tolerance: 0.002);
    }

    [Theory]
    [InlineData(30, 60, Reason.ReadingsContradict)]
    [InlineData(30, 29, Reason.NotObservable)]
    [InlineData(0, 10, Reason.NotObservable)]
    public void ARunWithoutAnEndInSightHasNoAnswer(double first, double second, Reason why) =>
        Assert.Equal(
            why,
            HeatingRun
                .Of(
                    Temperature.FromDegreesCelsius(20),
                    Temperature.FromDegreesCelsius(20 + first),
                    Temperature.FromDegreesCelsius(20 + second),
                    Duration.FromMinutes(20)
                )
                .Missing.Why
        );

    // In a cycle that repeats itself, the load leads from the lowest rise back to the highest.
    [Fact]
    public void ACycleClosesOnItself()
    {
        IntermittentHeat heat = IntermittentHeat.Of(
            TemperatureDelta.FromKelvins(80),
            Duration.FromMinutes(10),
            Duration.FromMinutes(15),
            Duration.FromMinutes(30),
            Duration.FromMinutes(50)
        );
        double back = 80 + ((heat.Lowest.Kelvins - 80) * Math.Exp(-10.0 / 30));
        Assert.Equal(heat.Highest.Kelvins, back, tolerance: 1e-9);
        Assert.InRange(heat.Highest.Kelvins, heat.Lowest.Kelvins, 80);
    }

    // Dubey, Electrical Drives, Ex. 4.3: 0 to 400 kW in 5 min, 500 kW 5 min, 400 kW 4 min, idle 2 min: 367 kW.
    [Fact]
    public void TheRootMeanSquareOfACycleIsPrinted()
    {
        double load = LoadCycle.Rms(Spell(0, 1, 5), Spell(1.25, 1.25, 5), Spell(1, 1, 4), Spell(0, 0, 2));
        Assert.Equal(367, 400 * load, tolerance: 0.5);
        Assert.Throws<ArgumentException>(() => LoadCycle.Rms());
        Assert.Throws<ArgumentNullException>(() => LoadCycle.Rms(Spell(1, 1, 1), null!));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Spell(11, 1, 1));
    }

    // Copper: twice the resistance of 0 deg C stands at 234.5; the sum t + 234.5 goes with the quotient of both.
    [Fact]
    public void TheWindingsTemperatureFollowsFromTwoResistances()
    {
        WindingCheck winding = WindingCheck
            .Of(Ohms(1, 0.01), Temperature.FromDegreesCelsius(0), TemperatureDelta.FromKelvins(1), Ohms(2, 0.02))
            .Value;
        Assert.Equal(234.5, winding.Temperature.DegreesCelsius, tolerance: 1e-9);
        Assert.Equal(234.5, winding.Rise.Kelvins, tolerance: 1e-9);
        double spread = Math.Sqrt((469 * 469 * 2 * 0.0001) + 4);
        Assert.Equal(spread, winding.StandardUncertainty.Kelvins, tolerance: 1e-9);
        Assert.Equal(
            Reason.ReadingsContradict,
            WindingCheck
                .Of(Ohms(1, 0), Temperature.FromDegreesCelsius(20), TemperatureDelta.Zero, Ohms(0.3, 0))
                .Missing.Why
        );
    }

    [Fact]
    public void WithAShaftFanTheSlowestWalkIsTheWorst()
    {
        WorstHeat worst = Worst(Fanned);
        Assert.Equal(0.3, worst.Speed.MetersPerSecond, tolerance: 1e-12);
        Assert.Equal(30, worst.Speeds.Length);
        double hottest = worst.Speeds.Max(at => at.Heat.Value.Settled.Value.DegreesCelsius);
        Assert.Equal(hottest, worst.Heat.Settled.Value.DegreesCelsius, tolerance: 1e-9);
    }

    // Without a fan the cooling is the same at every speed: the worst is where the current is largest, not the slowest.
    [Fact]
    public void WithoutAFanTheWorstIsTheLargestCurrent()
    {
        MotorCooling still = Fanned with
        {
            Still = ThermalConductance.FromWattsPerKelvin(1.5),
            Fan = ThermalConductance.FromWattsPerKelvin(0),
        };
        WorstHeat worst = Worst(still);
        double most = worst.Speeds.Max(at =>
            Example.Machine.At(Example.Walker with { Speed = at.Speed }).RmsCurrent.Value.Amperes
        );
        Assert.Equal(
            most,
            Example.Machine.At(Example.Walker with { Speed = worst.Speed }).RmsCurrent.Value.Amperes,
            tolerance: 1e-12
        );
        Assert.True(worst.Speed.MetersPerSecond > 0.5);
    }

    [Fact]
    public void AnUnknownStaysUnknownAtEverySpeed()
    {
        Treadmill unknown = Example.Machine with { Motor = null };
        Assert.Equal(
            Reason.InputUnknown,
            WorstHeat.Of(unknown, Example.Walker, Fanned, Limit, Metres(0.3), Metres(3)).Missing.Why
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            WorstHeat.Of(Example.Machine, Example.Walker, Fanned, Limit, Metres(3), Metres(1))
        );
    }

    // By hand: 12 A are all that a circuit of 15 A bears for a lasting load.
    [Fact]
    public void ALastingLoadMayTakeFourFifthsOfTheCircuit()
    {
        CircuitCheck check = CircuitCheck.Of(ElectricCurrent.FromAmperes(15), ElectricCurrent.FromAmperes(12));
        Assert.Equal(1, check.LastingShare, tolerance: 1e-12);
        Assert.Equal(0.8, check.RatingShare, tolerance: 1e-12);
        Assert.Equal(12, check.LastingLimit.Amperes, tolerance: 1e-12);
    }

    [Fact]
    public void TheMachinesCurrentIsPowerOverVoltageAndPowerFactor()
    {
        Treadmill machine = Example.Machine with
        {
            Supply = Example.Machine.Supply! with { CircuitRating = ElectricCurrent.FromAmperes(10) },
        };
        OperatingPoint point = machine.At(Example.Runner);
        CircuitCheck check = CircuitCheck.Of(machine, Example.Runner).Value;
        Assert.Equal((double)point.MainsPower.Value.Watts / (230 * 0.7), check.MainsCurrent.Amperes, tolerance: 1e-9);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "CircuitRating"),
            CircuitCheck.Of(Example.Machine, Example.Runner).Missing
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "PowerFactor"),
            CircuitCheck
                .Of(machine with { Supply = machine.Supply with { PowerFactor = null } }, Example.Runner)
                .Missing
        );
    }

    private static WorstHeat Worst(MotorCooling cooling) =>
        WorstHeat.Of(Example.Machine, Example.Walker, cooling, Limit, Metres(0.3), Metres(3.2), 30).Value;

    private static Speed Metres(double value) => Speed.FromMetersPerSecond(value);

    private static LoadSpell Spell(double from, double to, double minutes) =>
        new()
        {
            From = from,
            To = to,
            Time = Duration.FromMinutes(minutes),
        };

    private static Estimate<ElectricResistance> Ohms(double value, double uncertainty) =>
        new(ElectricResistance.FromOhms(value), ElectricResistance.FromOhms(uncertainty));
}
