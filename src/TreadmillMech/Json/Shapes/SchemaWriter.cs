using System.Text.Json;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Json.Shapes;

/// <summary>Writes a JSON schema (draft 2020-12) out of the tables that the reader goes by.</summary>
/// <remarks>
/// The schema knows names, words, units and what must be there. Ranges in units, the order of days and what lies between
/// fields are left to the reader.
/// </remarks>
internal sealed class SchemaWriter(Utf8JsonWriter json)
{
    private readonly Queue<INamedShape> open = new();
    private readonly HashSet<string> named = new(StringComparer.Ordinal);

    internal Utf8JsonWriter Json => json;

    internal void Type(string type) => json.WriteString("type", type);

    /// <summary>One of a few words.</summary>
    internal void Words(IEnumerable<string> words)
    {
        json.WriteStartArray("enum");
        foreach (string word in words)
        {
            json.WriteStringValue(word);
        }

        json.WriteEndArray();
    }

    /// <summary>A number with a unit.</summary>
    internal void Quantity(UnitTable table)
    {
        if (table.AllowsPlainNumber)
        {
            json.WriteStartArray("type");
            json.WriteStringValue("number");
            json.WriteStringValue("string");
            json.WriteEndArray();
        }
        else
        {
            Type("string");
        }

        json.WriteString("pattern", QuantityText.Pattern(table));
    }

    /// <summary>An entry among the properties.</summary>
    internal void Property<T>(string name, string note, JsonKind<T> kind)
    {
        json.WriteStartObject(name);
        kind.Describe(this);
        string expected = kind is INamedShape ? "" : kind.Expected;
        string description = note.Length == 0 ? expected : $"{note}{(expected.Length == 0 ? "" : ": ")}{expected}";
        if (description.Length > 0)
        {
            json.WriteString("description", description);
        }

        json.WriteEndObject();
    }

    /// <summary>An object with these properties and no others.</summary>
    internal void Object(Action<SchemaWriter> describe, IEnumerable<string> required)
    {
        Type("object");
        json.WriteStartObject("properties");
        describe(this);
        json.WriteEndObject();
        string[] names = [.. required];
        if (names.Length > 0)
        {
            json.WriteStartArray("required");
            foreach (string name in names)
            {
                json.WriteStringValue(name);
            }

            json.WriteEndArray();
        }

        json.WriteBoolean("additionalProperties", false);
    }

    /// <summary>Points to an object that is described once.</summary>
    internal void Reference(INamedShape shape)
    {
        json.WriteString("$ref", $"#/$defs/{shape.Name}");
        if (named.Add(shape.Name))
        {
            open.Enqueue(shape);
        }
    }

    /// <summary>Describes all objects that were pointed to, and those that they point to.</summary>
    internal void Definitions()
    {
        json.WriteStartObject("$defs");
        while (open.TryDequeue(out INamedShape? shape))
        {
            json.WriteStartObject(shape.Name);
            shape.DescribeObject(this);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }
}
