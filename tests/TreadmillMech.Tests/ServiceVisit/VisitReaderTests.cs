using System.Text;
using TreadmillMech.Json;
using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>What a good file says arrives in the library's parts, unit by unit.</summary>
public sealed class VisitReaderTests
{
    [Fact]
    public void TheBundledSlippingVisitArrivesWhole()
    {
        VisitFile document = Read(Sample.Slipping);
        Treadmill machine = document.Visit.Machine;
        Assert.Equal("Larkspur 12 (invented)", document.MachineName);
        Assert.Equal(0.508, machine.Belt.Width.Meters, 1e-15);
        Assert.Equal(0.002, machine.Belt.Thickness.Meters, 1e-15);
        Assert.Null(machine.Belt.RelaxedForcePerWidth);
        Assert.Null(machine.RestTension);
        Assert.Equal("M8x1.25", machine.TakeUp.Thread.Designation);
        Assert.Equal(DriveEnd.Front, machine.DriveEnd);
        Assert.Equal(Tensioning.SlidingMotor, machine.DriveBelt!.Tensioning);
        Assert.Equal(136.0777, machine.Plate!.LargestUserMass!.Value.Kilograms, 1e-4);
        Assert.Equal(15e-6, machine.Plate.LubricantDose!.Value.CubicMeters, 1e-18);
        Assert.Equal(3.57632, document.Visit.TestDemand.Speed.MetersPerSecond, 1e-12);
        Assert.Equal(0.5, document.Visit.EarlierTurns);
        Assert.Equal(22, document.Visit.Events.Length);
        MotorCurrentReading current = Assert.IsType<MotorCurrentReading>(document.Visit.Events[6]);
        Assert.Equal(1.47, current.Current.Amperes, 1e-15);
        Assert.Equal(55.2, current.Voltage!.Value.Volts, 1e-12);
        Assert.True(current.Zeroed);
        Assert.IsType<MainsCurrentReading>(document.Visit.Events[20]);
    }

    [Fact]
    public void FieldsThatAreLeftOutKeepTheLibrarysDefaults()
    {
        Treadmill machine = Read(Sample.Healthy).Visit.Machine;
        Assert.Equal(new RunningBelt { Width = Length.FromMeters(0.5) }.MassPerArea, machine.Belt.MassPerArea);
        Assert.Equal(new DcMotor().BrushDrop, machine.Motor!.BrushDrop);
        Assert.Null(machine.Deck.Friction);
    }

    [Fact]
    public void EveryFieldOfEveryPartIsRead()
    {
        const string Json = """
            {
              "format": "treadmillmech-visit/1",
              "machine": {
                "name": "Everything (invented)",
                "runningBelt": {
                  "width": "50 cm", "thickness": "1.9 mm", "massPerArea": "2 kg/m2", "relaxedForcePerWidth": "8 N/mm"
                },
                "driveRoller": {
                  "diameter": "2.5 in", "friction": "0.3", "inertia": "20 kg cm2", "hubStiffness": "900 N/mm"
                },
                "tailRoller": { "diameter": "50 mm", "friction": 0.25 },
                "centreDistance": "4.75 ft",
                "driveEnd": "rear",
                "takeUp": {
                  "lead": "1.25 mm", "adjustedEnd": "front", "bolts": "1", "clockwiseTightens": false,
                  "boltSpacing": "22 in", "boltAngle": "10 deg", "threadLeft": "30 mm",
                  "leftTurns": "0.5 turn", "rightTurns": "-0.25 turns"
                },
                "deck": { "friction": 0.2, "footZoneLength": "1 m", "footZoneWidth": "40 cm", "preWaxed": true },
                "restTension": "1.1 kN",
                "beltDrag": "6 lbf",
                "driveBelt": {
                  "tensioning": "slack-side idler", "motorPulleyDiameter": "28 mm", "rollerPulleyDiameter": "84 mm",
                  "centreDistance": "190 mm", "tension": "260 N", "friction": 0.35, "grooveAngle": "40 °",
                  "massPerLength": "80 g/m"
                },
                "motor": {
                  "constant": "36.7 V/krpm", "resistance": "800 mohm", "resistanceTemperature": "68 °F",
                  "windingTemperature": "80 deg C", "brushDrop": "1.5 V", "frictionTorque": "0.15 N m",
                  "voltageLimit": "180 V", "currentLimit": "25 A", "canBrake": true
                },
                "supply": {
                  "voltage": "230 V", "controllerEfficiency": 0.9, "powerFactor": "62 %", "standbyPower": "8 W",
                  "circuitRating": "16 A"
                },
                "plate": { "largestUserMass": "150 kg", "highestSpeed": "20 km/h", "lubricantDose": "0.5 US fl oz" }
              },
              "testDemand": {
                "person": { "mass": "180 lb", "cadence": "170 steps/min" },
                "speed": "9 km/h", "grade": "2 %", "strikePosition": "35 cm", "gait": "running",
                "rails": { "weightShare": "10 %", "forwardForce": "-20 N" }, "brakingStep": 0.4
              },
              "events": [
                { "reading": "lift", "height": "1 in", "force": "20 lbf", "rollersLocked": true, "uncertainty": "2 %" },
                { "reading": "mainsPower", "state": "loaded", "power": "0.6 kW", "beltSpeed": "3 m/s", "userMass": "80 kg" },
                { "action": "driveBelt", "work": "replaced" }
              ]
            }
            """;
        Visit visit = Read(Json).Visit;
        Treadmill machine = visit.Machine;
        Assert.Equal(8000, machine.Belt.RelaxedForcePerWidth!.Value.NewtonsPerMeter, 1e-9);
        Assert.Equal(2, machine.Belt.MassPerArea.KilogramsPerSquareMeter, 1e-12);
        Assert.Equal(0.0635, machine.DriveRoller.Diameter.Meters, 1e-15);
        Assert.Equal(0.3, machine.DriveRoller.Friction);
        Assert.Equal(0.002, machine.DriveRoller.Inertia!.Value.KilogramSquareMeters, 1e-15);
        Assert.Equal(9e5, machine.DriveRoller.HubStiffness!.Value.NewtonsPerMeter, 1e-6);
        Assert.Equal(0.25, machine.TailRoller.Friction);
        Assert.Equal(1.4478, machine.CentreDistance.Meters, 1e-12);
        Assert.Equal(DriveEnd.Rear, machine.DriveEnd);
        Assert.Equal(0.00125, machine.TakeUp.Thread.Lead.Meters, 1e-15);
        Assert.Equal(DriveEnd.Front, machine.TakeUp.AdjustedEnd);
        Assert.Equal(1, machine.TakeUp.Bolts);
        Assert.False(machine.TakeUp.ClockwiseTightens);
        Assert.Equal(0.5588, machine.TakeUp.BoltSpacing!.Value.Meters, 1e-12);
        Assert.Equal(10, machine.TakeUp.BoltAngle.Degrees, 1e-9);
        Assert.Equal(0.03, machine.TakeUp.ThreadLeft!.Value.Meters, 1e-15);
        Assert.Equal((0.5, -0.25), (machine.TakeUp.LeftTurns, machine.TakeUp.RightTurns));
        Assert.Equal((0.2, true), (machine.Deck.Friction!.Value, machine.Deck.PreWaxed));
        Assert.Equal(1, machine.Deck.FootZoneLength!.Value.Meters);
        Assert.Equal(0.4, machine.Deck.FootZoneWidth!.Value.Meters);
        Assert.Equal(1100, machine.RestTension!.Value.Newtons, 1e-9);
        Assert.Equal(26.689329691563, machine.BeltDrag!.Value.Newtons, 1e-9);
        Assert.Equal(Tensioning.SlackSideIdler, machine.DriveBelt!.Tensioning);
        Assert.Equal(260, machine.DriveBelt.Tension!.Value.Newtons);
        Assert.Equal(0.35, machine.DriveBelt.Friction);
        Assert.Equal(40, machine.DriveBelt.GrooveAngle.Degrees, 1e-9);
        Assert.Equal(0.08, machine.DriveBelt.MassPerLength!.Value.KilogramsPerMeter, 1e-12);
        Assert.Equal(0.3504592, machine.Motor!.Constant!.Value.VoltSecondsPerRadian, 1e-7);
        Assert.Equal(0.8, machine.Motor.Resistance!.Value.Ohms, 1e-12);
        Assert.Equal(20, machine.Motor.ResistanceTemperature.DegreesCelsius, 1e-9);
        Assert.Equal(80, machine.Motor.WindingTemperature.DegreesCelsius, 1e-9);
        Assert.Equal(1.5, machine.Motor.BrushDrop.Volts);
        Assert.Equal(0.15, machine.Motor.FrictionTorque!.Value.NewtonMeters);
        Assert.Equal(180, machine.Motor.VoltageLimit!.Value.Volts);
        Assert.Equal(25, machine.Motor.CurrentLimit!.Value.Amperes);
        Assert.True(machine.Motor.CanBrake);
        Assert.Equal(0.9, machine.Supply!.ControllerEfficiency!.Value.DecimalFractions);
        Assert.Equal(0.62, machine.Supply.PowerFactor);
        Assert.Equal(8, (double)machine.Supply.StandbyPower.Watts);
        Assert.Equal(16, machine.Supply.CircuitRating!.Value.Amperes);
        Assert.Equal(20, machine.Plate!.HighestSpeed!.Value.KilometersPerHour, 1e-9);
        Assert.Equal(14.786764781, machine.Plate.LubricantDose!.Value.Milliliters, 1e-8);
        Assert.Equal(81.6466266, visit.TestDemand.Person.Mass.Kilograms, 1e-9);
        Assert.Equal(170 / 60.0, visit.TestDemand.Person.Cadence!.Value.Hertz, 1e-12);
        Assert.Equal(0.02, visit.TestDemand.Grade.DecimalFractions, 1e-15);
        Assert.Equal(0.35, visit.TestDemand.StrikePosition.Meters, 1e-15);
        Assert.Equal(Gait.Running, visit.TestDemand.Gait);
        Assert.Equal(0.1, visit.TestDemand.Rails!.WeightShare.DecimalFractions, 1e-15);
        Assert.Equal(-20, visit.TestDemand.Rails.ForwardForce.Newtons);
        Assert.Equal(0.4, visit.TestDemand.BrakingStep);
        Assert.Null(visit.EarlierTurns);
        LiftReading lift = Assert.IsType<LiftReading>(visit.Events[0]);
        Assert.True(lift.RollersLocked);
        Assert.Equal(0.0254, lift.Height.Meters, 1e-15);
        Assert.Equal(88.96443230521, lift.Force.Newtons, 1e-9);
        Assert.Equal(0.02, lift.RelativeUncertainty!.Value.DecimalFractions, 1e-15);
        MainsPowerReading power = Assert.IsType<MainsPowerReading>(visit.Events[1]);
        Assert.Equal(600, (double)power.Power.Watts, 1e-9);
        Assert.Equal(80, power.UserMass!.Value.Kilograms);
        Assert.True(Assert.IsType<DriveBeltAction>(visit.Events[2]).Replaced);
    }

    [Fact]
    public void TheExampleOfTheHelpTextIsRead()
    {
        Sample.Outcome help = Sample.Run("--help");
        Assert.Equal(0, help.Code);
        Assert.Empty(help.Errors);
        int start = help.Output.IndexOf("\n{", StringComparison.Ordinal);
        int end = help.Output.LastIndexOf('}') + 1;
        Visit visit = Read(help.Output[start..end]).Visit;

        // One of every kind of event that the library has: nothing may be left to guess.
        Assert.Equal(
            typeof(VisitEvent)
                .Assembly.GetExportedTypes()
                .Where(static type => type.IsSubclassOf(typeof(VisitEvent)) && !type.IsAbstract)
                .Select(static type => type.Name)
                .Order(),
            visit.Events.Select(static e => e.GetType().Name).Distinct().Order()
        );
        Assert.Equal(ExampleVisit.Json, help.Output[(start + 1)..end]);
    }

    [Fact]
    public void TheHelpTextFitsThePage() =>
        Assert.All(Sample.Run("-h").Output.Split('\n'), static line => Assert.InRange(line.Length, 0, 100));

    [Fact]
    public void AByteOrderMarkAndWindowsLineEndsAreTaken()
    {
        byte[] text = Encoding.UTF8.GetBytes(Sample.Healthy.Replace("\n", "\r\n", StringComparison.Ordinal));
        Assert.True(VisitFile.ReadUtf8([0xEF, 0xBB, 0xBF, .. text]).Found);
        string bad = Sample.Change(Sample.Healthy, "\"82 kg\"", "\"82\"").Text;
        Assert.Equal(
            Sample.RunOn(bad).Errors.Split("line ")[1],
            Sample.RunOn(bad.Replace("\n", "\r\n", StringComparison.Ordinal)).Errors.Split("line ")[1]
        );
    }

    internal static VisitFile Read(string json)
    {
        Parsed<VisitFile> parsed = VisitFile.Read(json);
        Assert.True(parsed.Found, string.Join('\n', parsed.Describe("file")));
        return parsed.Value;
    }
}
