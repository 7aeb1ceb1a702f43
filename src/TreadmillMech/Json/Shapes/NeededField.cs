using System.Collections.Immutable;
using System.Text.Json;

namespace TreadmillMech.Json.Shapes;

/// <summary>A field that must be there.</summary>
internal sealed class NeededField<T, TValue>(
    string name,
    string note,
    JsonKind<TValue> kind,
    ShapeSlot<TValue> slot,
    Func<T, TValue> get,
    string? property
) : ShapeField<T>(name, note)
    where T : class
    where TValue : notnull
{
    internal override bool Required => true;

    internal override string Expected => kind.Expected;

    internal override ImmutableArray<string> Choices => kind.Choices;

    internal override void Need(ObjectReader fields, ShapeValues values)
    {
        if (fields.Need(Name, kind, out TValue? value, property))
        {
            values.Set(slot, value);
        }
    }

    internal override void Write(Utf8JsonWriter json, T part)
    {
        json.WritePropertyName(Name);
        kind.Write(json, get(part));
    }

    internal override void Describe(SchemaWriter schema) => schema.Property(Name, Note, kind);
}
