using System.Reflection;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Parts;

/// <summary>One validated property: the ends of its range as its documentation states them.</summary>
/// <param name="Part">Type of the part.</param>
/// <param name="Property">Name of the property.</param>
/// <param name="Make">A number in the documentation's unit as the property's type.</param>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end.</param>
/// <param name="Range">The range as the refusal states it, in SI.</param>
public sealed record PartRange(
    Type Part,
    string Property,
    Func<double, object> Make,
    double From,
    double To,
    string Range
)
{
    public PropertyInfo Member => Part.GetProperty(Property)!;

    public override string ToString() => $"{Part.Name}.{Property}";
}

/// <summary>Every validated property of every part, with its range, written down from the documentation.</summary>
public static class PartRanges
{
    public static readonly IReadOnlyList<PartRange> All =
    [
        Of<RunningBelt>("Width", Millimetres, 200, 1200, "0.2 m to 1.2 m"),
        Of<RunningBelt>("Thickness", Millimetres, 0.5, 6, "0.0005 m to 0.006 m"),
        Of<RunningBelt>("MassPerArea", v => AreaDensity.FromKilogramsPerSquareMeter(v), 0.5, 8, "0.5 kg/m2 to 8 kg/m2"),
        Of<RunningBelt>("RelaxedForcePerWidth", NewtonsPerMillimetre, 1, 40, "1000 N/m to 40000 N/m"),
        Of<Roller>("Diameter", Millimetres, 20, 200, "0.02 m to 0.2 m"),
        Of<Roller>("Friction", Plain, 0.02, 1.5, "0.02 to 1.5"),
        Of<Roller>(
            "Inertia",
            v => MassMomentOfInertia.FromKilogramSquareMeters(v),
            1e-6,
            1,
            "0.000001 kg m2 to 1 kg m2"
        ),
        Of<Roller>("HubStiffness", NewtonsPerMillimetre, 50, 1e6, "50000 N/m to 1000000000 N/m"),
        Of<TakeUp>("Bolts", v => (int)v, 1, 2, "1 to 2"),
        Of<TakeUp>("BoltSpacing", Millimetres, 200, 1500, "0.2 m to 1.5 m"),
        Of<TakeUp>("BoltAngle", Degrees, 0, 60, "0 rad to 1.047198 rad"),
        Of<TakeUp>("ThreadLeft", Millimetres, 0, 200, "0 m to 0.2 m"),
        Of<TakeUp>("LeftTurns", Plain, -20, 20, "-20 to 20"),
        Of<TakeUp>("RightTurns", Plain, -20, 20, "-20 to 20"),
        Of<Deck>("Friction", Plain, 0.02, 1, "0.02 to 1"),
        Of<Deck>("FootZoneLength", Millimetres, 300, 2500, "0.3 m to 2.5 m"),
        Of<Deck>("FootZoneWidth", Millimetres, 150, 1000, "0.15 m to 1 m"),
        Of<DriveBelt>("MotorPulleyDiameter", Millimetres, 10, 150, "0.01 m to 0.15 m"),
        Of<DriveBelt>("RollerPulleyDiameter", Millimetres, 20, 300, "0.02 m to 0.3 m"),
        Of<DriveBelt>("CentreDistance", Millimetres, 50, 600, "0.05 m to 0.6 m"),
        Of<DriveBelt>("Tension", v => Force.FromNewtons(v), 5, 3000, "5 N to 3000 N"),
        Of<DriveBelt>("Friction", Plain, 0.05, 1.5, "0.05 to 1.5"),
        Of<DriveBelt>("GrooveAngle", Degrees, 20, 180, "0.349066 rad to 3.141593 rad"),
        Of<DriveBelt>("MassPerLength", v => LinearDensity.FromKilogramsPerMeter(v), 0.001, 1, "0.001 kg/m to 1 kg/m"),
        Of<DriveBelt>("Ribs", v => (int)v, 1, 40, "1 to 40"),
        Of<Magnets>("LossPerKelvin", v => Ratio.FromPercent(v), 0, 1, "0 to 0.01"),
        Of<Magnets>("ConstantTemperature", Celsius, -20, 200, "-20 deg C to 200 deg C"),
        Of<Magnets>("Temperature", Celsius, -20, 200, "-20 deg C to 200 deg C"),
        Of<Bearing>("DynamicRating", v => Force.FromKilonewtons(v), 0.5, 200, "500 N to 200000 N"),
        Of<Collar>("MeanDiameter", Millimetres, 3, 80, "0.003 m to 0.08 m"),
        Of<Collar>("Friction", Plain, 0.02, 0.6, "0.02 to 0.6"),
        Of<BoltRod>("FreeLength", Millimetres, 5, 500, "0.005 m to 0.5 m"),
        Of<BoltRod>("ElasticModulus", Gigapascals, 50, 250, "50000000000 Pa to 250000000000 Pa"),
        Of<RollerTube>("OuterDiameter", Millimetres, 15, 200, "0.015 m to 0.2 m"),
        Of<RollerTube>("InnerDiameter", Millimetres, 0, 198, "0 m to 0.198 m"),
        Of<RollerTube>("BearingSpan", Millimetres, 200, 1500, "0.2 m to 1.5 m"),
        Of<RollerTube>("ElasticModulus", Gigapascals, 1, 250, "1000000000 Pa to 250000000000 Pa"),
        Of<DeckBoard>("Thickness", Millimetres, 5, 60, "0.005 m to 0.06 m"),
        Of<DeckBoard>("Width", Millimetres, 100, 1200, "0.1 m to 1.2 m"),
        Of<DeckBoard>("SupportSpan", Millimetres, 100, 2000, "0.1 m to 2 m"),
        Of<DeckBoard>("ElasticModulus", Gigapascals, 0.5, 250, "500000000 Pa to 250000000000 Pa"),
        Of<DeckBoard>("CushionStiffness", NewtonsPerMillimetre, 5, 1e6, "5000 N/m to 1000000000 N/m"),
        Of<StaticFriction>("AtRest", Plain, 0.02, 1, "0.02 to 1"),
        Of<StaticFriction>("StribeckSpeed", v => Speed.FromMetersPerSecond(v), 0.001, 2, "0.001 m/s to 2 m/s"),
        Of<WearPair>("Coefficient", Plain, 0, 0.01, "0 to 0.01"),
        Of<WearPair>("Hardness", v => Pressure.FromMegapascals(v), 1, 20000, "1000000 Pa to 20000000000 Pa"),
        Of<MotorCooling>("Still", WattsPerKelvin, 0.05, 50, "0.05 W/K to 50 W/K"),
        Of<MotorCooling>("Fan", WattsPerKelvin, 0, 100, "0 W/K to 100 W/K"),
        Of<MotorCooling>(
            "RatedSpeed",
            v => RotationalSpeed.FromRadiansPerSecond(v),
            50,
            1500,
            "50 rad/s to 1500 rad/s"
        ),
        Of<MotorCooling>("Ambient", Celsius, -20, 60, "-20 deg C to 60 deg C"),
        Of<MotorCooling>("TimeConstant", v => Duration.FromSeconds(v), 60, 36000, "60 s to 36000 s"),
        Of<InductionMotor>("RatedFrequency", v => Frequency.FromHertz(v), 10, 400, "10 Hz to 400 Hz"),
        Of<InductionMotor>("PolePairs", v => (int)v, 1, 12, "1 to 12"),
        Of<InductionMotor>("StatorResistance", Ohms, 0.001, 200, "0.001 ohm to 200 ohm"),
        Of<InductionMotor>("StatorReactance", Ohms, 0.001, 200, "0.001 ohm to 200 ohm"),
        Of<InductionMotor>("RotorResistance", Ohms, 0.001, 200, "0.001 ohm to 200 ohm"),
        Of<InductionMotor>("RotorReactance", Ohms, 0.001, 200, "0.001 ohm to 200 ohm"),
        Of<InductionMotor>("MagnetisingReactance", Ohms, 0.1, 5000, "0.1 ohm to 5000 ohm"),
        Of<InductionMotor>("RotationalLoss", v => Power.FromWatts(v), 0, 5000, "0 W to 5000 W"),
        Of<DcMotor>("Constant", v => MotorConstant.FromVoltSecondsPerRadian(v), 0.02, 5, "0.02 V s/rad to 5 V s/rad"),
        Of<DcMotor>("Resistance", v => ElectricResistance.FromOhms(v), 0.01, 50, "0.01 ohm to 50 ohm"),
        Of<DcMotor>("ResistanceTemperature", Celsius, -20, 200, "-20 deg C to 200 deg C"),
        Of<DcMotor>("WindingTemperature", Celsius, -20, 200, "-20 deg C to 200 deg C"),
        Of<DcMotor>("BrushDrop", Volts, 0, 5, "0 V to 5 V"),
        Of<DcMotor>("FrictionTorque", v => Torque.FromNewtonMeters(v), 0, 5, "0 N m to 5 N m"),
        Of<DcMotor>("VoltageLimit", Volts, 10, 500, "10 V to 500 V"),
        Of<DcMotor>("CurrentLimit", Amperes, 0.5, 100, "0.5 A to 100 A"),
        Of<Supply>("Voltage", Volts, 80, 300, "80 V to 300 V"),
        Of<Supply>("ControllerEfficiency", v => Ratio.FromPercent(v), 30, 100, "0.3 to 1"),
        Of<Supply>("PowerFactor", Plain, 0.3, 1, "0.3 to 1"),
        Of<Supply>("StandbyPower", v => Power.FromWatts(v), 0, 200, "0 W to 200 W"),
        Of<Supply>("CircuitRating", Amperes, 5, 63, "5 A to 63 A"),
        Of<Person>("Mass", v => Mass.FromKilograms(v), 10, 350, "10 kg to 350 kg"),
        Of<Person>("Cadence", v => Frequency.FromHertz(v), 0.5, 5, "0.5 Hz to 5 Hz"),
        Of<Person>("LegLength", Millimetres, 400, 1300, "0.4 m to 1.3 m"),
        Of<Rails>("WeightShare", v => Ratio.FromPercent(v), 0, 90, "0 to 0.9"),
        Of<Rails>("ForwardForce", v => Force.FromNewtons(v), -500, 500, "-500 N to 500 N"),
        Of<Plate>("LargestUserMass", v => Mass.FromKilograms(v), 50, 350, "50 kg to 350 kg"),
        Of<Plate>("HighestSpeed", v => Speed.FromMetersPerSecond(v), 0.5, 12, "0.5 m/s to 12 m/s"),
        Of<Plate>("LubricantDose", v => Volume.FromMilliliters(v), 0, 100, "0 m3 to 0.0001 m3"),
        Of<Treadmill>("CentreDistance", Millimetres, 600, 4000, "0.6 m to 4 m"),
        Of<Treadmill>("RestTension", v => Force.FromNewtons(v), 0, 20000, "0 N to 20000 N"),
        Of<Treadmill>("BeltDrag", v => Force.FromNewtons(v), 0, 500, "0 N to 500 N"),
        Of<Demand>("Speed", v => Speed.FromMetersPerSecond(v), 0.1, 8, "0.1 m/s to 8 m/s"),
        Of<Demand>("Grade", v => Ratio.FromPercent(v), -10, 40, "-0.1 to 0.4"),
        Of<Demand>("StrikePosition", Millimetres, 50, 1500, "0.05 m to 1.5 m"),
        Of<Demand>("BrakingStep", Plain, 0.01, 1.5, "0.01 to 1.5"),
        Of<SpeedController>("Gain", v => ElectricCurrent.FromAmperes(v), 0.1, 1000, "0.1 A to 1000 A"),
        Of<SpeedController>("IntegralTime", Seconds, 0.01, 100, "0.01 s to 100 s"),
        Of<SpeedController>("CurrentTime", Seconds, 0.0005, 0.1, "0.0005 s to 0.1 s"),
        Of<MotorThermal>("Winding", JoulesPerKelvin, 5, 5000, "5 J/K to 5000 J/K"),
        Of<MotorThermal>("Housing", JoulesPerKelvin, 20, 50000, "20 J/K to 50000 J/K"),
        Of<MotorThermal>("WindingToHousing", WattsPerKelvin, 0.1, 100, "0.1 W/K to 100 W/K"),
        Of<MotorThermal>("FluxLossPerKelvin", v => Ratio.FromPercent(v), 0, 1, "0 to 0.01"),
        Of<MotorThermal>("MagnetTemperature", Celsius, -20, 150, "-20 deg C to 150 deg C"),
        Of<DeckThermal>("Belt", JoulesPerKelvin, 100, 50000, "100 J/K to 50000 J/K"),
        Of<DeckThermal>("BeltToAir", WattsPerKelvin, 0.1, 200, "0.1 W/K to 200 W/K"),
        Of<DeckThermal>("Deck", JoulesPerKelvin, 100, 100000, "100 J/K to 100000 J/K"),
        Of<DeckThermal>("DeckToAir", WattsPerKelvin, 0.1, 200, "0.1 W/K to 200 W/K"),
        Of<DeckThermal>("BeltShare", v => Ratio.FromPercent(v), 0, 100, "0 to 1"),
        Of<DeckThermal>("Ambient", Celsius, -20, 60, "-20 deg C to 60 deg C"),
        Of<DriveDynamics>(
            "MotorInertia",
            v => MassMomentOfInertia.FromKilogramSquareMeters(v),
            1e-6,
            1,
            "0.000001 kg m2 to 1 kg m2"
        ),
        Of<DriveDynamics>("ArmatureInductance", v => ElectricInductance.FromHenries(v), 1e-5, 1, "0.00001 H to 1 H"),
        Of<DriveDynamics>("DeckStaticFriction", Plain, 0.02, 1.5, "0.02 to 1.5"),
        Of<DriveDynamics>("RollerStaticRatio", Plain, 1, 3, "1 to 3"),
        Of<DriveDynamics>("PulleyStaticRatio", Plain, 1, 3, "1 to 3"),
        Of<DriveDynamics>("StribeckSpeed", v => Speed.FromMetersPerSecond(v), 0.005, 2, "0.005 m/s to 2 m/s"),
        Of<DriveDynamics>("BeltLossFactor", Plain, 0.005, 1, "0.005 to 1"),
        Of<SpeedChange>("At", Seconds, 0, 3600, "0 s to 3600 s"),
        Of<SpeedChange>("To", v => Speed.FromMetersPerSecond(v), 0, 8, "0 m/s to 8 m/s"),
        Of<SpeedChange>("Rate", v => Acceleration.FromMetersPerSecondSquared(v), 0.01, 20, "0.01 m/s2 to 20 m/s2"),
        Of<UnusualStep>("At", Seconds, 0, 3600, "0 s to 3600 s"),
        Of<UnusualStep>("BrakingPeak", Plain, 0, 2, "0 to 2"),
        Of<UnusualStep>("NormalForce", Plain, 0.1, 3, "0.1 to 3"),
        Of<Jam>("From", Seconds, 0, 3600, "0 s to 3600 s"),
        Of<Jam>("Until", Seconds, 0, 3600, "0 s to 3600 s"),
        Of<Jam>("Friction", v => Force.FromNewtons(v), 1, 20000, "1 N to 20000 N"),
        Of<DrivePlan>("Duration", Seconds, 0.01, 3600, "0.01 s to 3600 s"),
        Of<DrivePlan>("KeyPulledAt", Seconds, 0, 3600, "0 s to 3600 s"),
        Of<DrivePlan>("Interval", Seconds, 0.0001, 10, "0.0001 s to 10 s"),
        Of<DrivePlan>("Tolerance", Plain, 1e-10, 1e-2, "0 to 0.01"),
    ];

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, All.Count)];

    /// <summary>The rows whose type holds numbers that are not finite.</summary>
    public static TheoryData<int> PlainRows =>
        [.. Enumerable.Range(0, All.Count).Where(row => All[row].Make(0) is double or MotorConstant)];

    private static PartRange Of<TPart>(string name, Func<double, object> make, double from, double to, string range) =>
        new(typeof(TPart), name, make, from, to, range);

    private static object Plain(double value) => value;

    private static object Seconds(double value) => Duration.FromSeconds(value);

    private static object JoulesPerKelvin(double value) => HeatCapacity.FromJoulesPerKelvin(value);

    private static object Millimetres(double value) => Length.FromMillimeters(value);

    private static object Degrees(double value) => Angle.FromDegrees(value);

    private static object Volts(double value) => ElectricPotential.FromVolts(value);

    private static object Amperes(double value) => ElectricCurrent.FromAmperes(value);

    private static object Celsius(double value) => Temperature.FromDegreesCelsius(value);

    private static object Ohms(double value) => ElectricResistance.FromOhms(value);

    private static object WattsPerKelvin(double value) => ThermalConductance.FromWattsPerKelvin(value);

    private static object NewtonsPerMillimetre(double value) => ForcePerLength.FromNewtonsPerMillimeter(value);

    private static object Gigapascals(double value) => Pressure.FromGigapascals(value);
}
