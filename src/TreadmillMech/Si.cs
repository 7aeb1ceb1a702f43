using UnitsNet;

namespace TreadmillMech;

/// <summary>
/// Every conversion between quantities and plain SI numbers: the one file that touches the numeric side of UnitsNet.
/// </summary>
internal static class Si
{
    internal static readonly Dimension<double> One = new("", static q => q, static v => v);
    internal static readonly Dimension<Length> Length = new(
        "m",
        static q => q.Meters,
        static v => UnitsNet.Length.FromMeters(v)
    );
    internal static readonly Dimension<Force> Force = new(
        "N",
        static q => q.Newtons,
        static v => UnitsNet.Force.FromNewtons(v)
    );
    internal static readonly Dimension<Mass> Mass = new(
        "kg",
        static q => q.Kilograms,
        static v => UnitsNet.Mass.FromKilograms(v)
    );
    internal static readonly Dimension<Angle> Angle = new(
        "rad",
        static q => q.Radians,
        static v => UnitsNet.Angle.FromRadians(v)
    );
    internal static readonly Dimension<Volume> Volume = new(
        "m3",
        static q => q.CubicMeters,
        static v => UnitsNet.Volume.FromCubicMeters(v)
    );
    internal static readonly Dimension<Area> Area = new(
        "m2",
        static q => q.SquareMeters,
        static v => UnitsNet.Area.FromSquareMeters(v)
    );
    internal static readonly Dimension<Ratio> Ratio = new(
        "",
        static q => q.DecimalFractions,
        static v => UnitsNet.Ratio.FromDecimalFractions(v)
    );
    internal static readonly Dimension<Speed> Speed = new(
        "m/s",
        static q => q.MetersPerSecond,
        static v => UnitsNet.Speed.FromMetersPerSecond(v)
    );
    internal static readonly Dimension<Acceleration> Acceleration = new(
        "m/s2",
        static q => q.MetersPerSecondSquared,
        static v => UnitsNet.Acceleration.FromMetersPerSecondSquared(v)
    );
    internal static readonly Dimension<Energy> Energy = new(
        "J",
        static q => q.Joules,
        static v => UnitsNet.Energy.FromJoules(v)
    );
    internal static readonly Dimension<Frequency> Frequency = new(
        "Hz",
        static q => q.Hertz,
        static v => UnitsNet.Frequency.FromHertz(v)
    );
    internal static readonly Dimension<Duration> Duration = new(
        "s",
        static q => q.Seconds,
        static v => UnitsNet.Duration.FromSeconds(v)
    );
    internal static readonly Dimension<Torque> Torque = new(
        "N m",
        static q => q.NewtonMeters,
        static v => UnitsNet.Torque.FromNewtonMeters(v)
    );
    internal static readonly Dimension<RotationalSpeed> RotationalSpeed = new(
        "rad/s",
        static q => q.RadiansPerSecond,
        static v => UnitsNet.RotationalSpeed.FromRadiansPerSecond(v)
    );
    internal static readonly Dimension<Power> Power = new(
        "W",
        static q => (double)q.Watts,
        static v => UnitsNet.Power.FromWatts(v)
    );
    internal static readonly Dimension<ElectricPotential> Voltage = new(
        "V",
        static q => q.Volts,
        static v => ElectricPotential.FromVolts(v)
    );
    internal static readonly Dimension<ElectricCurrent> Current = new(
        "A",
        static q => q.Amperes,
        static v => ElectricCurrent.FromAmperes(v)
    );
    internal static readonly Dimension<ElectricResistance> Resistance = new(
        "ohm",
        static q => q.Ohms,
        static v => ElectricResistance.FromOhms(v)
    );
    internal static readonly Dimension<Temperature> Celsius = new(
        "deg C",
        static q => q.DegreesCelsius,
        static v => Temperature.FromDegreesCelsius(v)
    );
    internal static readonly Dimension<ForcePerLength> ForcePerLength = new(
        "N/m",
        static q => q.NewtonsPerMeter,
        static v => UnitsNet.ForcePerLength.FromNewtonsPerMeter(v)
    );
    internal static readonly Dimension<LinearDensity> MassPerLength = new(
        "kg/m",
        static q => q.KilogramsPerMeter,
        static v => LinearDensity.FromKilogramsPerMeter(v)
    );
    internal static readonly Dimension<AreaDensity> MassPerArea = new(
        "kg/m2",
        static q => q.KilogramsPerSquareMeter,
        static v => AreaDensity.FromKilogramsPerSquareMeter(v)
    );
    internal static readonly Dimension<MassMomentOfInertia> Inertia = new(
        "kg m2",
        static q => q.KilogramSquareMeters,
        static v => MassMomentOfInertia.FromKilogramSquareMeters(v)
    );
    internal static readonly Dimension<ThermalConductance> ThermalConductance = new(
        "W/K",
        static q => q.WattsPerKelvin,
        TreadmillMech.ThermalConductance.FromWattsPerKelvin
    );
    internal static readonly Dimension<MotorConstant> MotorConstant = new(
        "V s/rad",
        static q => q.VoltSecondsPerRadian,
        static v => TreadmillMech.MotorConstant.FromVoltSecondsPerRadian(v)
    );
    internal static readonly Dimension<BendingStiffness> BendingStiffness = new(
        "N m2",
        static q => q.NewtonSquareMeters,
        TreadmillMech.BendingStiffness.FromNewtonSquareMeters
    );
    internal static readonly Dimension<TemperatureDelta> TemperatureRise = new(
        "K",
        static q => q.Kelvins,
        static v => TemperatureDelta.FromKelvins(v)
    );
    internal static readonly Dimension<Compliance> Compliance = new(
        "m/N",
        static q => q.MetersPerNewton,
        TreadmillMech.Compliance.FromMetersPerNewton
    );
    internal static readonly Dimension<Pressure> Pressure = new(
        "Pa",
        static q => q.Pascals,
        static v => UnitsNet.Pressure.FromPascals(v)
    );
    internal static readonly Dimension<CoefficientOfThermalExpansion> Expansion = new(
        "1/K",
        static q => q.PerKelvin,
        static v => CoefficientOfThermalExpansion.FromPerKelvin(v)
    );
    internal static readonly Dimension<ElectricInductance> Inductance = new(
        "H",
        static q => q.Henries,
        static v => ElectricInductance.FromHenries(v)
    );
    internal static readonly Dimension<WorkPerArea> WorkPerArea = new(
        "J/m2",
        static q => q.JoulesPerSquareMeter,
        TreadmillMech.WorkPerArea.FromJoulesPerSquareMeter
    );
    internal static readonly Dimension<HeatCapacity> HeatCapacity = new(
        "J/K",
        static q => q.JoulesPerKelvin,
        TreadmillMech.HeatCapacity.FromJoulesPerKelvin
    );

    private static readonly Dictionary<Type, object> ByType = new object[]
    {
        One,
        Length,
        Force,
        Mass,
        Angle,
        Volume,
        Area,
        Ratio,
        Speed,
        Frequency,
        Duration,
        Torque,
        RotationalSpeed,
        Power,
        Voltage,
        Current,
        Resistance,
        Celsius,
        ForcePerLength,
        MassPerLength,
        MassPerArea,
        Inertia,
        ThermalConductance,
        MotorConstant,
        Compliance,
        BendingStiffness,
        TemperatureRise,
        Acceleration,
        Energy,
        Pressure,
        Expansion,
        Inductance,
        HeatCapacity,
        WorkPerArea,
    }.ToDictionary(static dimension => dimension.GetType().GenericTypeArguments[0]);

    /// <summary>The dimension of a quantity, or null where the library has none for it.</summary>
    internal static Dimension<TQuantity>? Of<TQuantity>()
        where TQuantity : struct => ByType.GetValueOrDefault(typeof(TQuantity)) as Dimension<TQuantity>;
}
