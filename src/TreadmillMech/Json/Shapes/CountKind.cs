using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Json.Shapes;

/// <summary>A whole number.</summary>
internal sealed class CountKind : ScalarKind<int>
{
    internal override string Expected => UnitTables.Count.Expected;

    internal override void Write(Utf8JsonWriter json, int value) => json.WriteNumberValue(value);

    internal override void Describe(SchemaWriter schema) => schema.Quantity(UnitTables.Count);

    protected override Refusal? Take(LocatedNode node, out int value)
    {
        value = 0;
        if (QuantityText.Read(node, UnitTables.Count, out double number) is { } refused)
        {
            return refused;
        }

        if (!double.IsInteger(number) || Math.Abs(number) > int.MaxValue)
        {
            return new(node.Shown, Expected);
        }

        value = (int)number;
        return null;
    }
}
