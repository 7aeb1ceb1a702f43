using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Json.Shapes;

/// <summary>A number with a unit out of a table; a plain number where the table allows one.</summary>
internal sealed class QuantityKind<T>(UnitTable table, Dimension<T> dimension) : ScalarKind<T>
    where T : struct
{
    internal override string Expected => table.Expected;

    internal override void Write(Utf8JsonWriter json, T value)
    {
        double si = dimension.ToSi(value);
        if (table.AllowsPlainNumber)
        {
            json.WriteNumberValue(si);
        }
        else
        {
            json.WriteStringValue(QuantityText.Write(table, si));
        }
    }

    internal override void Describe(SchemaWriter schema) => schema.Quantity(table);

    protected override Refusal? Take(LocatedNode node, out T value)
    {
        value = default;
        if (QuantityText.Read(node, table, out double si) is { } refused)
        {
            return refused;
        }

        try
        {
            value = dimension.FromSi(si);
            return null;
        }
        catch (OverflowException)
        {
            // The units library holds power as a decimal, which ends at 7.9e28.
            return new($"{node.Shown}, which is too large", table.Expected);
        }
    }
}
