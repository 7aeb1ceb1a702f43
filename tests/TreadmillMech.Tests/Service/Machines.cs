using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Invented machines for the tests of the service part.</summary>
internal static class Machines
{
    internal const double Lead = 0.00125;
    internal const double Width = 0.45;
    internal const double Centres = 1.35;

    /// <summary>What plate and ruler tell; stiffness, tension and frictions unknown.</summary>
    internal static Treadmill Plain { get; } =
        new()
        {
            Belt = new() { Width = Length.FromMeters(Width), Thickness = Length.FromMillimeters(2) },
            DriveRoller = new() { Diameter = Length.FromMillimeters(50) },
            TailRoller = new() { Diameter = Length.FromMillimeters(45) },
            CentreDistance = Length.FromMeters(Centres),
            TakeUp = new()
            {
                Thread = ScrewThread.Parse("M8x1.25"),
                BoltSpacing = Length.FromMillimeters(500),
                ThreadLeft = Length.FromMillimeters(30),
            },
            Deck = new() { FootZoneLength = Length.FromMeters(1), FootZoneWidth = Length.FromMeters(0.4) },
            DriveBelt = new()
            {
                Tensioning = Tensioning.SlidingMotor,
                MotorPulleyDiameter = Length.FromMillimeters(28),
                RollerPulleyDiameter = Length.FromMillimeters(84),
                CentreDistance = Length.FromMillimeters(190),
            },
            Plate = new()
            {
                LargestUserMass = Mass.FromKilograms(130),
                HighestSpeed = Speed.FromMetersPerSecond(5),
                LubricantDose = Volume.FromMilliliters(15),
            },
            Supply = new()
            {
                Voltage = ElectricPotential.FromVolts(120),
                CircuitRating = ElectricCurrent.FromAmperes(15),
            },
        };

    /// <summary>The same with everything known that a margin needs.</summary>
    internal static Treadmill Known { get; } =
        Plain with
        {
            Belt = Plain.Belt with { RelaxedForcePerWidth = PerWidth(8) },
            DriveRoller = Plain.DriveRoller with { Friction = 0.3 },
            Deck = Plain.Deck with { Friction = 0.2 },
            RestTension = Force.FromNewtons(1080),
            BeltDrag = Force.FromNewtons(20),
        };

    internal static ForcePerLength PerWidth(double newtonsPerMillimeter) =>
        ForcePerLength.FromNewtonsPerMillimeter(newtonsPerMillimeter);

    internal static Treadmill WithTakeUp(this Treadmill machine, Func<TakeUp, TakeUp> change) =>
        machine with
        {
            TakeUp = change(machine.TakeUp),
        };
}
