using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.OperatingPoints;

/// <summary>An invented machine on which everything is known, and people on it.</summary>
internal static class Example
{
    internal static Treadmill Machine { get; } =
        new()
        {
            Belt = new()
            {
                Width = Length.FromMillimeters(450),
                RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(8),
            },
            DriveRoller = new() { Diameter = Length.FromMillimeters(50), Friction = 0.3 },
            TailRoller = new() { Diameter = Length.FromMillimeters(45) },
            CentreDistance = Length.FromMillimeters(1350),
            TakeUp = new() { Thread = ScrewThread.Parse("M8") },
            Deck = new() { Friction = 0.2 },
            RestTension = Force.FromNewtons(1000),
            BeltDrag = Force.FromNewtons(20),
            DriveBelt = new()
            {
                Tensioning = Tensioning.SlidingMotor,
                MotorPulleyDiameter = Length.FromMillimeters(30),
                RollerPulleyDiameter = Length.FromMillimeters(100),
                CentreDistance = Length.FromMillimeters(200),
                Tension = Force.FromNewtons(250),
                Friction = 0.4,
                MassPerLength = LinearDensity.FromKilogramsPerMeter(0.04),
            },
            Motor = new()
            {
                Constant = MotorConstant.FromVoltSecondsPerRadian(0.35),
                Resistance = ElectricResistance.FromOhms(1),
                FrictionTorque = Torque.FromNewtonMeters(0.1),
                CanBrake = true,
            },
            Supply = new()
            {
                Voltage = ElectricPotential.FromVolts(230),
                ControllerEfficiency = Ratio.FromPercent(90),
                PowerFactor = 0.7,
            },
        };

    internal static Demand Runner { get; } =
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(90) },
            Speed = Speed.FromMetersPerSecond(3),
        };

    internal static Demand Walker { get; } =
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(90) },
            Speed = Speed.FromMetersPerSecond(1.2),
        };

    /// <summary>The same machine with nothing known that may be left unknown.</summary>
    internal static Treadmill Bare { get; } =
        new()
        {
            Belt = new() { Width = Length.FromMillimeters(450) },
            DriveRoller = new() { Diameter = Length.FromMillimeters(50) },
            TailRoller = new() { Diameter = Length.FromMillimeters(45) },
            CentreDistance = Length.FromMillimeters(1350),
            TakeUp = new() { Thread = ScrewThread.Parse("M8") },
            Deck = new(),
            DriveBelt = new()
            {
                Tensioning = Tensioning.SlidingMotor,
                MotorPulleyDiameter = Length.FromMillimeters(30),
                RollerPulleyDiameter = Length.FromMillimeters(100),
                CentreDistance = Length.FromMillimeters(200),
            },
        };
}
