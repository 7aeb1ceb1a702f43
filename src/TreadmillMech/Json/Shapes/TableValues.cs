using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Json.Shapes;

/// <summary>Values of the tables of inputs and outputs: the table tells their unit, not their type.</summary>
internal static class TableValues
{
    private static readonly Dictionary<string, UnitTable> ByUnit = new(StringComparer.Ordinal)
    {
        ["1"] = UnitTables.PlainNumber,
        ["m"] = UnitTables.Length,
        ["m2"] = UnitTables.Area,
        ["kg"] = UnitTables.Mass,
        ["kg/m"] = UnitTables.MassPerLength,
        ["kg/m2"] = UnitTables.MassPerArea,
        ["kg m2"] = UnitTables.Inertia,
        ["s"] = UnitTables.Duration,
        ["Hz"] = UnitTables.Frequency,
        ["m/s"] = UnitTables.Speed,
        ["m/s2"] = UnitTables.Acceleration,
        ["rad"] = UnitTables.Angle,
        ["rad/s"] = UnitTables.RotationalSpeed,
        ["N"] = UnitTables.Force,
        ["N/m"] = UnitTables.ForcePerLength,
        ["m/N"] = UnitTables.Compliance,
        ["N m"] = UnitTables.Torque,
        ["N m2"] = UnitTables.BendingStiffness,
        ["Pa"] = UnitTables.Pressure,
        ["J"] = UnitTables.Energy,
        ["J/K"] = UnitTables.HeatCapacity,
        ["W"] = UnitTables.Power,
        ["W/K"] = UnitTables.ThermalConductance,
        ["V"] = UnitTables.Voltage,
        ["A"] = UnitTables.Current,
        ["ohm"] = UnitTables.Resistance,
        ["H"] = UnitTables.Inductance,
        ["V s/rad"] = UnitTables.MotorConstant,
        ["deg C"] = UnitTables.Celsius,
        ["K"] = UnitTables.TemperatureRise,
    };

    /// <summary>The units that a value with this SI unit may be written in.</summary>
    internal static UnitTable Units(string si) => ByUnit[si];

    /// <summary>Writes a value, or why there is none.</summary>
    internal static void Write(Utf8JsonWriter json, Answer<double> answer, string unit)
    {
        if (!answer.Is(out double si))
        {
            MissingKind.Any.Write(json, answer.Missing);
            return;
        }

        UnitTable table = Units(unit);
        if (table.AllowsPlainNumber || !double.IsFinite(si))
        {
            ResultKinds.Number.Write(json, si);
        }
        else
        {
            json.WriteStringValue(QuantityText.Write(table, si));
        }
    }

    /// <summary>Reads a value; false where it was refused, and then the problems say why.</summary>
    internal static bool Read(LocatedNode node, string unit, Bounds range, FileProblems problems, out double si)
    {
        UnitTable table = Units(unit);
        if (QuantityText.Read(node, table, out si) is { } refusal)
        {
            problems.Add(node, refusal);
            return false;
        }

        if (si >= range.From && si <= range.To)
        {
            return true;
        }

        problems.Add(node, new(node.Shown, ObjectReader.Range(si, range, unit == "1" ? "" : unit)));
        return false;
    }
}
