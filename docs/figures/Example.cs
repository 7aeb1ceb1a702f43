using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Figures;

/// <summary>The machine and the runner of the start page, which all figures share, and its parts as plain SI numbers.</summary>
internal static class Example
{
    internal const double BeltWidth = 0.508;
    internal const double CentreDistance = 1.35;
    internal const double DriveRadius = 0.026;
    internal const double TailRadius = 0.0235;
    internal const double Lead = 0.00125;
    internal const double Tension = 1000;
    internal const double BeltDrag = 20;
    internal const double DeckFriction = 0.20;
    internal const double RollerFriction = 0.30;
    internal const double RunnerMass = 118;
    internal const double FreeFall = 9.80665;
    internal const double StrikePosition = 0.35;

    internal static double RunnerSpeed => Speed.FromMilesPerHour(8).MetersPerSecond;

    internal static double Stiffness => BeltLaws.Stiffness<Real>(8000, BeltWidth);

    internal static double StrandAngle => LoopLaws.StrandAngle<Real>(DriveRadius, TailRadius, CentreDistance);

    internal static double LoopLength => LoopLaws.Length<Real>(DriveRadius, TailRadius, CentreDistance);

    internal static double DriveWrap => LoopLaws.Wrap<Real>(StrandAngle);

    internal static double TensionRatio => TractionLaws.TensionRatio<Real>(RollerFriction, DriveWrap);

    internal static double CentrifugalTension => BeltLaws.CentrifugalTension<Real>(2.4 * BeltWidth, RunnerSpeed);

    internal static Treadmill Machine { get; } =
        new()
        {
            Belt = new()
            {
                Width = Length.FromMeters(BeltWidth),
                RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(8),
            },
            DriveRoller = new() { Diameter = Length.FromMillimeters(50), Friction = RollerFriction },
            TailRoller = new() { Diameter = Length.FromMillimeters(45) },
            CentreDistance = Length.FromMeters(CentreDistance),
            TakeUp = new() { Thread = ScrewThread.Parse("M8x1.25"), BoltSpacing = Length.FromMeters(0.56) },
            Deck = new() { Friction = DeckFriction },
            RestTension = Force.FromNewtons(Tension),
            BeltDrag = Force.FromNewtons(BeltDrag),
            DriveBelt = new()
            {
                Tensioning = Tensioning.FixedCentres,
                MotorPulleyDiameter = Length.FromMillimeters(25),
                RollerPulleyDiameter = Length.FromMillimeters(75),
                CentreDistance = Length.FromMillimeters(180),
                Tension = Force.FromNewtons(300),
                Friction = 0.35,
            },
            Motor = new()
            {
                Constant = MotorConstant.FromVoltSecondsPerRadian(0.33),
                Resistance = ElectricResistance.FromOhms(1.0),
                FrictionTorque = Torque.FromNewtonMeters(0.25),
            },
            Supply = new()
            {
                Voltage = ElectricPotential.FromVolts(120),
                ControllerEfficiency = Ratio.FromPercent(88),
                PowerFactor = 0.65,
            },
        };

    internal static OperatingPoint At(double mass, double speed) =>
        Machine.At(
            new()
            {
                Person = new() { Mass = Mass.FromKilograms(mass) },
                Speed = Speed.FromMetersPerSecond(speed),
            }
        );
}
