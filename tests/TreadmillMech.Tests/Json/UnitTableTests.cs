using TreadmillMech.Json.Located;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Tests.Json;

/// <summary>Every unit against its definition: SI brochure, and the international yard and pound of 1959.</summary>
public sealed class UnitTableTests
{
    // Kind of value, text, SI value. Written as decimals from the definitions, not as the code forms them.
    public static readonly TheoryData<string, string, double> Definitions = new()
    {
        { "a length", "1 mm", 0.001 },
        { "a length", "1 cm", 0.01 },
        { "a length", "1 m", 1 },
        { "a length", "1 in", 0.0254 },
        { "a length", "20 in", 0.508 },
        { "a length", "1 ft", 0.3048 },
        { "a mass", "1 kg", 1 },
        { "a mass", "1 g", 0.001 },
        { "a mass", "1 lb", 0.45359237 },
        { "a force", "1 N", 1 },
        { "a force", "1 kN", 1000 },
        { "a force", "1 kgf", 9.80665 },
        { "a force", "1 lbf", 4.4482216152605 },
        { "a torque", "1 N m", 1 },
        { "a torque", "1 N·m", 1 },
        { "a torque", "1 N cm", 0.01 },
        { "a torque", "1 lbf ft", 1.3558179483314004 },
        { "a torque", "1 lbf in", 0.1129848290276167 },
        { "a speed", "1 m/s", 1 },
        { "a speed", "3.6 km/h", 1 },
        { "a speed", "1 mph", 0.44704 },
        { "a speed", "1 ft/min", 0.00508 },
        { "a rotational speed", "3600 rpm", 376.99111843077515 },
        { "a rotational speed", "60 1/min", 6.283185307179586 },
        { "a rotational speed", "1 1/s", 6.283185307179586 },
        { "a rotational speed", "1 rad/s", 1 },
        { "a frequency", "1 Hz", 1 },
        { "a frequency", "1 1/s", 1 },
        { "a frequency", "60 1/min", 1 },
        { "a frequency", "180 steps/min", 3 },
        { "a time", "1 s", 1 },
        { "a time", "2 min", 120 },
        { "a time", "1.5 h", 5400 },
        { "an angle", "180 deg", 3.141592653589793 },
        { "an angle", "40 °", 0.6981317007977318 },
        { "an angle", "1 rad", 1 },
        { "turns of a bolt", "0.25 turn", 0.25 },
        { "turns of a bolt", "-2 turns", -2 },
        { "a share", "2 %", 0.02 },
        { "an efficiency or factor", "85 %", 0.85 },
        { "an efficiency or factor", "0.85", 0.85 },
        { "a ratio without unit", "0.3", 0.3 },
        { "a whole count", "60", 60 },
        { "a volume", "15 mL", 15e-6 },
        { "a volume", "15 ml", 15e-6 },
        { "a volume", "15 cm3", 15e-6 },
        { "a volume", "15 cm³", 15e-6 },
        { "a volume", "1 L", 0.001 },
        { "a volume", "1 US fl oz", 29.5735295625e-6 },
        { "a power", "1 W", 1 },
        { "a power", "1.5 kW", 1500 },
        { "a voltage", "120 V", 120 },
        { "a voltage", "1 mV", 0.001 },
        { "a current", "1.3 A", 1.3 },
        { "a current", "1 mA", 0.001 },
        { "a resistance", "1 ohm", 1 },
        { "a resistance", "1 Ω", 1 },
        { "a resistance", "1 mohm", 0.001 },
        { "a resistance", "1 mΩ", 0.001 },
        { "a temperature", "20 °C", 20 },
        { "a temperature", "20 deg C", 20 },
        { "a temperature", "212 °F", 100 },
        { "a temperature", "32 deg F", 0 },
        { "a temperature", "293.15 K", 20 },
        { "a force per length", "8 N/mm", 8000 },
        { "a force per length", "1 N/m", 1 },
        { "a force per length", "1 kN/m", 1000 },
        { "a force per length", "1 lbf/in", 175.12683524647636 },
        { "a mass per area", "2.4 kg/m2", 2.4 },
        { "a mass per area", "2.4 kg/m²", 2.4 },
        { "a mass per area", "1 g/m2", 0.001 },
        { "a mass per area", "1 lb/ft2", 4.882427636383051 },
        { "a mass per length", "1 kg/m", 1 },
        { "a mass per length", "1 g/m", 0.001 },
        { "a mass per length", "1 lb/ft", 1.4881639435695537 },
        { "a moment of inertia", "1 kg m2", 1 },
        { "a moment of inertia", "1 kg·m²", 1 },
        { "a moment of inertia", "1 kg cm2", 0.0001 },
        { "a moment of inertia", "1 g m2", 0.001 },
        { "a moment of inertia", "1 lb in2", 0.00029263965343 },
        { "an inductance", "2 H", 2 },
        { "an inductance", "2 mH", 0.002 },
        { "an inductance", "250 uH", 0.00025 },
        { "a motor constant", "0.35 V s/rad", 0.35 },
        { "a motor constant", "0.35 N m/A", 0.35 },
        { "a motor constant", "36.7 V/krpm", 0.35045918433 },
        { "an acceleration", "1 m/s2", 1 },
        { "an acceleration", "1 ft/s2", 0.3048 },
        { "an energy", "1 J", 1 },
        { "an energy", "1 kJ", 1000 },
        { "an energy", "1 Wh", 3600 },
        { "an energy", "1 kWh", 3600000 },
        { "a pressure or stress", "1 Pa", 1 },
        { "a pressure or stress", "1 kPa", 1000 },
        { "a pressure or stress", "1 MPa", 1000000 },
        { "a pressure or stress", "207 GPa", 207000000000 },
        { "a pressure or stress", "1 N/mm2", 1000000 },
        { "an inductance", "2 µH", 0.000002 },
        { "a heat capacity", "1 J/K", 1 },
        { "a heat capacity", "1 kJ/K", 1000 },
        { "a thermal conductance", "1 W/K", 1 },
        { "an area", "1 m2", 1 },
        { "an area", "1 cm2", 0.0001 },
        { "an area", "1 mm2", 0.000001 },
        { "an area", "1 in2", 0.00064516 },
        { "a temperature difference", "1 K", 1 },
        { "a compliance", "1 m/N", 1 },
        { "a compliance", "1 mm/N", 0.001 },
        { "a bending stiffness", "1 N m2", 1 },
    };

    [Theory]
    [MemberData(nameof(Definitions))]
    public void AUnitHasItsDefinedSize(string kind, string text, double si)
    {
        UnitTable table = UnitTables.All.Single(table => table.Kind == kind);
        LocatedNode node = new(NodeKind.Text, "$", 1, 1) { Text = text };
        Assert.Null(QuantityText.Read(node, table, out double value));

        // Outside values are written to the digits that their sources give.
        double tolerance = kind is "a motor constant" or "a moment of inertia" ? 1e-10 : 1e-15;
        Assert.True(Math.Abs(value - si) <= 4 * tolerance * Math.Max(1, Math.Abs(si)), $"{text} read as {value:R}");
    }

    [Fact]
    public void EveryUnitIsChecked()
    {
        HashSet<(string, string)> seen = [];
        foreach (ITheoryDataRow row in Definitions)
        {
            object?[] data = row.GetData();
            string text = (string)data[1]!;
            int space = text.IndexOf(' ', StringComparison.Ordinal);
            string symbol = space < 0 ? "" : text[(space + 1)..];
            UnitTable table = UnitTables.All.Single(table => table.Kind == (string)data[0]!);
            seen.Add((table.Kind, table.Find(symbol)!.Symbol));
        }

        foreach (UnitTable table in UnitTables.All)
        {
            foreach (WrittenUnit unit in table.Units)
            {
                Assert.Contains((table.Kind, unit.Symbol), seen);
            }
        }
    }

    [Fact]
    public void SymbolsAreToldApartInEveryTable()
    {
        foreach (UnitTable table in UnitTables.All)
        {
            foreach (WrittenUnit unit in table.Units)
            {
                Assert.Same(unit, table.Find(unit.Symbol));
            }
        }
    }
}
