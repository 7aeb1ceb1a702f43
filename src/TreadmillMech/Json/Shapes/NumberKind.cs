using System.Globalization;
using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>A plain number of a result. JSON has no word for one that is not finite: it is written as text.</summary>
internal sealed class NumberKind : ScalarKind<double>
{
    private static readonly WordTable<double> Endless = new(
        ("Infinity", double.PositiveInfinity),
        ("-Infinity", double.NegativeInfinity),
        ("NaN", double.NaN)
    );

    internal override string Expected => "a number";

    internal override void Write(Utf8JsonWriter json, double value)
    {
        if (double.IsFinite(value))
        {
            json.WriteNumberValue(value);
        }
        else
        {
            Endless.Write(json, value);
        }
    }

    internal override void Describe(SchemaWriter schema) => schema.Type("number");

    protected override Refusal? Take(LocatedNode node, out double value)
    {
        if (node.Kind == NodeKind.Text)
        {
            return Endless.Read(node, new(), out value) ? null : new(node.Shown, Expected);
        }

        value = double.NaN;
        return
            node.Kind == NodeKind.Number
            && double.TryParse(node.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out value)
            ? null
            : new(node.Shown, Expected);
    }
}
