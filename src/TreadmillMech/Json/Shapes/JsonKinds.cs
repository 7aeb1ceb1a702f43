using TreadmillMech.Json.Units;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>The kinds of value that fields hold.</summary>
internal static class JsonKinds
{
    internal static readonly QuantityKind<Length> Length = new(UnitTables.Length, Si.Length);
    internal static readonly QuantityKind<Mass> Mass = new(UnitTables.Mass, Si.Mass);
    internal static readonly QuantityKind<Force> Force = new(UnitTables.Force, Si.Force);
    internal static readonly QuantityKind<Torque> Torque = new(UnitTables.Torque, Si.Torque);
    internal static readonly QuantityKind<Speed> Speed = new(UnitTables.Speed, Si.Speed);
    internal static readonly QuantityKind<RotationalSpeed> RotationalSpeed = new(
        UnitTables.RotationalSpeed,
        Si.RotationalSpeed
    );
    internal static readonly QuantityKind<Frequency> Frequency = new(UnitTables.Frequency, Si.Frequency);
    internal static readonly QuantityKind<Angle> Angle = new(UnitTables.Angle, Si.Angle);
    internal static readonly QuantityKind<Ratio> Share = new(UnitTables.Share, Si.Ratio);
    internal static readonly QuantityKind<Ratio> Efficiency = new(UnitTables.Efficiency, Si.Ratio);
    internal static readonly QuantityKind<Volume> Volume = new(UnitTables.Volume, Si.Volume);
    internal static readonly QuantityKind<Power> Power = new(UnitTables.Power, Si.Power);
    internal static readonly QuantityKind<ElectricPotential> Voltage = new(UnitTables.Voltage, Si.Voltage);
    internal static readonly QuantityKind<ElectricCurrent> Current = new(UnitTables.Current, Si.Current);
    internal static readonly QuantityKind<ElectricResistance> Resistance = new(UnitTables.Resistance, Si.Resistance);
    internal static readonly QuantityKind<Temperature> Celsius = new(UnitTables.Celsius, Si.Celsius);
    internal static readonly QuantityKind<ForcePerLength> ForcePerLength = new(
        UnitTables.ForcePerLength,
        Si.ForcePerLength
    );
    internal static readonly QuantityKind<AreaDensity> MassPerArea = new(UnitTables.MassPerArea, Si.MassPerArea);
    internal static readonly QuantityKind<LinearDensity> MassPerLength = new(
        UnitTables.MassPerLength,
        Si.MassPerLength
    );
    internal static readonly QuantityKind<MassMomentOfInertia> Inertia = new(UnitTables.Inertia, Si.Inertia);
    internal static readonly QuantityKind<MotorConstant> MotorConstant = new(
        UnitTables.MotorConstant,
        Si.MotorConstant
    );
    internal static readonly QuantityKind<Duration> Duration = new(UnitTables.Duration, Si.Duration);
    internal static readonly QuantityKind<Acceleration> Acceleration = new(UnitTables.Acceleration, Si.Acceleration);
    internal static readonly QuantityKind<Energy> Energy = new(UnitTables.Energy, Si.Energy);
    internal static readonly QuantityKind<Pressure> Pressure = new(UnitTables.Pressure, Si.Pressure);
    internal static readonly QuantityKind<ElectricInductance> Inductance = new(UnitTables.Inductance, Si.Inductance);
    internal static readonly QuantityKind<HeatCapacity> HeatCapacity = new(UnitTables.HeatCapacity, Si.HeatCapacity);
    internal static readonly QuantityKind<ThermalConductance> ThermalConductance = new(
        UnitTables.ThermalConductance,
        Si.ThermalConductance
    );
    internal static readonly QuantityKind<Area> Area = new(UnitTables.Area, Si.Area);
    internal static readonly QuantityKind<TemperatureDelta> TemperatureRise = new(
        UnitTables.TemperatureRise,
        Si.TemperatureRise
    );
    internal static readonly QuantityKind<Compliance> Compliance = new(UnitTables.Compliance, Si.Compliance);
    internal static readonly QuantityKind<BendingStiffness> BendingStiffness = new(
        UnitTables.BendingStiffness,
        Si.BendingStiffness
    );
    internal static readonly QuantityKind<double> Turns = new(UnitTables.Turns, Si.One);
    internal static readonly QuantityKind<double> PlainNumber = new(UnitTables.PlainNumber, Si.One);
    internal static readonly QuantityKind<double> Factor = new(UnitTables.Efficiency, Si.One);
    internal static readonly CountKind Count = new();
    internal static readonly BooleanKind Boolean = new();
    internal static readonly NameKind Name = new();
    internal static readonly DayKind Day = new();
    internal static readonly ThreadKind Thread = new(", or \"lead\"");
}
