using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>A short name that can be printed.</summary>
internal sealed class NameKind : ScalarKind<string>
{
    internal const int Longest = 80;

    internal override string Expected => "a name in at most 80 printable characters";

    internal override void Write(Utf8JsonWriter json, string value) => json.WriteStringValue(value);

    internal override void Describe(SchemaWriter schema)
    {
        schema.Type("string");
        schema.Json.WriteNumber("minLength", 1);
        schema.Json.WriteString("pattern", @"\S");
    }

    /// <summary>The name as it is read: without blanks around it; null where it is none.</summary>
    internal static string? Accepted(string text)
    {
        string name = text.Trim();
        return name.Length is > 0 and <= Longest && name.EnumerateRunes().All(FileProblem.Harmless) ? name : null;
    }

    protected override Refusal? Take(LocatedNode node, out string value)
    {
        string? name = node.Kind == NodeKind.Text ? Accepted(node.Text) : null;
        value = name ?? "";
        return name is null ? new(node.Shown, Expected) : null;
    }
}
