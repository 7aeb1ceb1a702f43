using System.Collections.Immutable;
using System.Text.Json;

namespace TreadmillMech.Json.Shapes;

/// <summary>A field that may be left out.</summary>
internal sealed class OptionalField<T, TValue>(
    string name,
    string note,
    JsonKind<TValue> kind,
    TryGet<T, TValue> get,
    Func<T, TValue, T> with,
    string? property
) : ShapeField<T>(name, note)
    where T : class
    where TValue : notnull
{
    internal override bool Required => false;

    internal override string Expected => kind.Expected;

    internal override ImmutableArray<string> Choices => kind.Choices;

    internal override T? Add(ObjectReader fields, T? part) => fields.Set(part, Name, kind, with, property);

    internal override void Write(Utf8JsonWriter json, T part)
    {
        if (get(part, out TValue? value))
        {
            json.WritePropertyName(Name);
            kind.Write(json, value);
        }
    }

    internal override void Describe(SchemaWriter schema) => schema.Property(Name, Note, kind);
}
