using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Benchmarks;

/// <summary>An invented machine of which everything is known, and a person walking and running on it.</summary>
internal static class Cases
{
    internal static Treadmill Machine { get; } =
        new()
        {
            Belt = new()
            {
                Width = Length.FromMillimeters(500),
                RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(9),
            },
            DriveRoller = new() { Diameter = Length.FromMillimeters(60), Friction = 0.32 },
            TailRoller = new() { Diameter = Length.FromMillimeters(50) },
            CentreDistance = Length.FromMillimeters(1400),
            TakeUp = new()
            {
                Thread = ScrewThread.Parse("M8x1.25"),
                LeftTurns = 0.25,
                RightTurns = 0.25,
            },
            Deck = new() { Friction = 0.18 },
            RestTension = Force.FromNewtons(1100),
            BeltDrag = Force.FromNewtons(25),
            DriveBelt = new()
            {
                Tensioning = Tensioning.FixedCentres,
                MotorPulleyDiameter = Length.FromMillimeters(30),
                RollerPulleyDiameter = Length.FromMillimeters(90),
                CentreDistance = Length.FromMillimeters(200),
                Tension = Force.FromNewtons(220),
                Friction = 0.35,
                MassPerLength = LinearDensity.FromKilogramsPerMeter(0.06),
            },
            Motor = new()
            {
                Constant = MotorConstant.FromVoltSecondsPerRadian(0.3),
                Resistance = ElectricResistance.FromOhms(0.8),
                FrictionTorque = Torque.FromNewtonMeters(0.1),
                CanBrake = true,
            },
            Supply = new()
            {
                Voltage = ElectricPotential.FromVolts(230),
                ControllerEfficiency = Ratio.FromPercent(90),
                PowerFactor = 0.65,
            },
        };

    internal static Demand Demand(Gait gait) =>
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(80) },
            Speed = Speed.FromMetersPerSecond(gait == Gait.Walking ? 1.4 : 3.2),
        };
}
