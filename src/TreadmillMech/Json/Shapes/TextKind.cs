using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>Any text.</summary>
internal sealed class TextKind : ScalarKind<string>
{
    internal override string Expected => "text";

    internal override void Write(Utf8JsonWriter json, string value) => json.WriteStringValue(value);

    internal override void Describe(SchemaWriter schema) => schema.Type("string");

    protected override Refusal? Take(LocatedNode node, out string value)
    {
        value = node.Text;
        return node.Kind == NodeKind.Text ? null : new(node.Shown, Expected);
    }
}
