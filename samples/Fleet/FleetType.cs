using TreadmillMech.Model;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Samples.Fleet;

/// <summary>The invented type of machine that the whole fleet is of: what its drawing and its plate say.</summary>
internal static class FleetType
{
    /// <summary>What is measured on each machine, or of its user: a file without one of these columns is refused.</summary>
    internal static IReadOnlyList<Input> Measured { get; } =
    [
        Inputs.RestTension,
        Inputs.DriveRollerFriction,
        Inputs.DeckFriction,
        Inputs.BeltDrag,
        Inputs.DriveBeltTension,
        Inputs.DriveBeltFriction,
        Inputs.PersonMass,
        Inputs.BeltSpeed,
    ];

    /// <summary>Inputs that change what kind of machine or demand it is: uniform in a batch.</summary>
    internal static IReadOnlyList<Input> OnlyTogether { get; } = [Inputs.StepFrequency, Inputs.BrakingPeak];

    /// <summary>The machine; measured inputs are left open.</summary>
    internal static Treadmill Machine { get; } =
        new()
        {
            Belt = new()
            {
                Width = Length.FromMillimeters(500),
                RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(9),
            },
            DriveRoller = new() { Diameter = Length.FromMillimeters(60) },
            TailRoller = new() { Diameter = Length.FromMillimeters(50) },
            CentreDistance = Length.FromMillimeters(1400),
            TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25") },
            Deck = new(),
            DriveBelt = new()
            {
                Tensioning = Tensioning.FixedCentres,
                MotorPulleyDiameter = Length.FromMillimeters(30),
                RollerPulleyDiameter = Length.FromMillimeters(90),
                CentreDistance = Length.FromMillimeters(200),
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

    /// <summary>The demand that the columns are set on: level deck, gait by the speed, free hands.</summary>
    internal static Demand Demand { get; } =
        new()
        {
            Person = new() { Mass = Mass.FromKilograms(80) },
            Speed = Speed.FromKilometersPerHour(10),
        };
}
