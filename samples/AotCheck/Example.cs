using TreadmillMech;
using TreadmillMech.Parts;
using UnitsNet;

namespace AotCheck;

/// <summary>An invented machine and the demands on it; parts are given in whatever unit is at hand.</summary>
internal static class Example
{
    internal static Treadmill Machine { get; } =
        new()
        {
            Belt = new()
            {
                Width = Length.FromInches(20),
                Thickness = Length.FromMillimeters(1.8),
                MassPerArea = AreaDensity.FromGramsPerSquareMeter(2600),
                RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(9.5),
            },
            DriveRoller = new()
            {
                Diameter = Length.FromMillimeters(60),
                Friction = 0.31,
                HubStiffness = ForcePerLength.FromKilonewtonsPerMillimeter(4),
            },
            TailRoller = new()
            {
                Diameter = Length.FromInches(2),
                Inertia = MassMomentOfInertia.FromKilogramSquareCentimeters(9),
                HubStiffness = ForcePerLength.FromKilonewtonsPerMillimeter(2.5),
            },
            CentreDistance = Length.FromFeet(4.6),
            TakeUp = new()
            {
                Thread = ScrewThread.Parse("M8x1.25"),
                BoltSpacing = Length.FromCentimeters(56),
                BoltAngle = Angle.FromDegrees(5),
                LeftTurns = 0.5,
                RightTurns = 0.25,
            },
            Deck = new()
            {
                Friction = 0.21,
                FootZoneLength = Length.FromInches(45),
                FootZoneWidth = Length.FromInches(16),
            },
            RestTension = Force.FromKilonewtons(0.82),
            BeltDrag = Force.FromPoundsForce(6),
            DriveBelt = OfKind(Tensioning.FixedCentres),
            Motor = new()
            {
                Constant = MotorConstant.FromVoltageAtThousandRpm(ElectricPotential.FromVolts(31)),
                Resistance = ElectricResistance.FromMilliohms(640),
                WindingTemperature = Temperature.FromDegreesFahrenheit(167),
                FrictionTorque = Torque.FromNewtonCentimeters(12),
                VoltageLimit = ElectricPotential.FromVolts(180),
                CurrentLimit = ElectricCurrent.FromAmperes(22),
                CanBrake = true,
            },
            Supply = new()
            {
                Voltage = ElectricPotential.FromKilovolts(0.23),
                ControllerEfficiency = Ratio.FromPercent(90),
                PowerFactor = 0.65,
                StandbyPower = Power.FromMilliwatts(8500),
                CircuitRating = ElectricCurrent.FromAmperes(16),
            },
            Plate = new()
            {
                LargestUserMass = Mass.FromStone(24),
                HighestSpeed = Speed.FromKilometersPerHour(20),
                LubricantDose = Volume.FromMilliliters(15),
            },
        };

    internal static (string Name, Demand Demand)[] Demands { get; } =
    [
        (
            "walk",
            new()
            {
                Person = new() { Mass = Mass.FromPounds(198) },
                Speed = Speed.FromKilometersPerHour(5),
            }
        ),
        (
            "run",
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(82) },
                Speed = Speed.FromMilesPerHour(7.5),
            }
        ),
        (
            "uphill",
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(70) },
                Speed = Speed.FromMetersPerSecond(0.6),
                Grade = Ratio.FromPercent(15),
                Rails = new() { WeightShare = Ratio.FromPercent(20), ForwardForce = Force.FromNewtons(25) },
            }
        ),
        (
            "braking step",
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(90), Cadence = Frequency.FromCyclesPerMinute(190) },
                Speed = Speed.FromFeetPerSecond(6),
                StrikePosition = Length.FromFeet(1.1),
                Gait = Gait.Running,
                BrakingStep = 0.4,
            }
        ),
        (
            "heavy",
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(150) },
                Speed = Speed.FromMetersPerSecond(3.5),
                Grade = Ratio.FromDecimalFractions(-0.02),
            }
        ),
    ];

    internal static DriveBelt OfKind(Tensioning tensioning) =>
        new()
        {
            Tensioning = tensioning,
            MotorPulleyDiameter = Length.FromMillimeters(28),
            RollerPulleyDiameter = Length.FromInches(3.5),
            CentreDistance = Length.FromCentimeters(19),
            Tension = Force.FromKilogramsForce(tensioning == Tensioning.TightSideIdler ? 45 : 18),
            Friction = 0.35,
            MassPerLength = LinearDensity.FromGramsPerMeter(60),
        };
}
