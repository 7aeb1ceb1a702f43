using System.Globalization;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Parts;

/// <summary>Equal things are equal, whatever unit they were given in; and texts do not depend on the culture.</summary>
public sealed class PartEqualityTests
{
    [Fact]
    public void ABeltGivenInInchesEqualsTheSameBeltInMillimetres()
    {
        RunningBelt inches = new() { Width = Length.FromInches(20), Thickness = Length.FromInches(0.08) };
        RunningBelt metric = new() { Width = Length.FromMillimeters(508), Thickness = Length.FromMillimeters(2.032) };
        Assert.Equal(metric, inches);
        Assert.Equal(metric.GetHashCode(), inches.GetHashCode());
        Assert.True(metric == inches);
        Assert.NotEqual(metric, metric with { Width = Length.FromMillimeters(509) });
    }

    [Fact]
    public void QuantitiesAreKeptInSiUnits()
    {
        Person person = new() { Mass = Mass.FromPounds(200), Cadence = Frequency.FromBeatsPerMinute(168) };
        Assert.Equal(UnitsNet.Units.MassUnit.Kilogram, person.Mass.Unit);
        Assert.Equal(UnitsNet.Units.FrequencyUnit.Hertz, person.Cadence!.Value.Unit);

        // 1 lb is 0.45359237 kg by definition.
        Assert.Equal(90.718474, person.Mass.Kilograms, 9);
        Assert.Equal(2.8, person.Cadence.Value.Hertz, 12);
    }

    [Fact]
    public void ACopyOfAMachineIsEqualAndADifferenceAnywhereIsSeen()
    {
        Treadmill machine = OperatingPoints.Example.Machine;
        Assert.Equal(machine, machine with { });
        Assert.NotEqual(machine, machine with { DriveEnd = DriveEnd.Rear });
        Assert.NotEqual(machine, machine with { Deck = machine.Deck with { Friction = 0.21 } });
        Assert.NotEqual(machine, machine with { TakeUp = machine.TakeUp with { LeftTurns = 0.25 } });
    }

    [Fact]
    public void AMissingPartIsRefusedByName()
    {
        Treadmill machine = OperatingPoints.Example.Machine;
        Assert.Equal("Belt", Assert.Throws<ArgumentNullException>(() => machine with { Belt = null! }).ParamName);
        Assert.Equal("Deck", Assert.Throws<ArgumentNullException>(() => machine with { Deck = null! }).ParamName);
        Assert.Equal("TakeUp", Assert.Throws<ArgumentNullException>(() => machine with { TakeUp = null! }).ParamName);
        Assert.Throws<ArgumentNullException>(() => machine with { DriveRoller = null! });
        Assert.Throws<ArgumentNullException>(() => machine with { TailRoller = null! });
        Assert.Throws<ArgumentNullException>(() => machine.TakeUp with { Thread = null! });
        Assert.Throws<ArgumentNullException>(() => OperatingPoints.Example.Runner with { Person = null! });
    }

    [Fact]
    public void AnUndefinedKindIsRefused()
    {
        Treadmill machine = OperatingPoints.Example.Machine;
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => machine with { DriveEnd = (DriveEnd)7 });
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => machine.TakeUp with { AdjustedEnd = (DriveEnd)(-1) });
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => OperatingPoints.Example.Runner with { Gait = (Gait)9 });
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            machine.DriveBelt! with
            {
                Tensioning = Tensioning.DirectDrive,
            }
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => machine.DriveBelt! with { Tensioning = (Tensioning)99 });
    }

    [Fact]
    public void TheResistanceOfTheWindingFollowsItsTemperature()
    {
        // Copper: R2/R1 = (t2 + 234.5)/(t1 + 234.5); from 20 to 100 deg C a factor 334.5/254.5.
        DcMotor motor = new()
        {
            Resistance = ElectricResistance.FromOhms(1),
            WindingTemperature = Temperature.FromDegreesCelsius(100),
        };
        Assert.Equal(1.314342, motor.ResistanceAtWork!.Value.Ohms, tolerance: 5e-7);
        Assert.Null(new DcMotor().ResistanceAtWork);
    }

    [Fact]
    public void AMotorConstantIsTheSameNumberInBothUnits()
    {
        // 1000 rev/min is 104.719755 rad/s.
        MotorConstant constant = MotorConstant.FromVoltageAtThousandRpm(ElectricPotential.FromVolts(104.719755));
        Assert.Equal(1, constant.VoltSecondsPerRadian, tolerance: 5e-9);
        Assert.Equal(constant.VoltSecondsPerRadian, constant.NewtonMetersPerAmpere);
        Assert.Equal(104.719755, constant.VoltageAtThousandRpm.Volts, tolerance: 5e-7);
    }

    [Fact]
    public void TextsDoNotDependOnTheCulture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CommaCulture();
            Assert.Equal("M8x1.25", ScrewThread.Parse("M8x1.25").ToString());
            Assert.Equal(
                "measured, 1.25 mm a turn",
                ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.25)).ToString()
            );
            Assert.Equal("0.35 V s/rad", MotorConstant.FromNewtonMetersPerAmpere(0.35).ToString());
            Assert.Contains(
                "0.25 m",
                Assert.Throws<OutOfRangeException>(() => new Roller { Diameter = Length.FromMillimeters(250) }).Message,
                StringComparison.Ordinal
            );
            Assert.False(ScrewThread.TryParse("M8x1,25", out _));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>A culture with a decimal comma; named cultures are not there in the invariant mode of the build.</summary>
    internal static CultureInfo CommaCulture()
    {
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "~";
        return culture;
    }
}
