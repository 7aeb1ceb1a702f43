using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>Yes or no.</summary>
internal sealed class BooleanKind : ScalarKind<bool>
{
    internal override string Expected => "true or false";

    internal override void Write(Utf8JsonWriter json, bool value) => json.WriteBooleanValue(value);

    internal override void Describe(SchemaWriter schema) => schema.Type("boolean");

    protected override Refusal? Take(LocatedNode node, out bool value)
    {
        value = node.Kind == NodeKind.Boolean && node.Text == "true";
        return node.Kind == NodeKind.Boolean ? null : new(node.Shown, Expected);
    }
}
