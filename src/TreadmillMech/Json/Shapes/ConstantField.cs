using System.Text.Json;

namespace TreadmillMech.Json.Shapes;

/// <summary>A field that must hold one word, by which the object is told from others.</summary>
internal sealed class ConstantField<T, TValue>(string name, WordTable<TValue> words, TValue value)
    : ShapeField<T>(name, "")
    where T : class
    where TValue : notnull
{
    internal override bool Required => true;

    internal override string Expected => $"\"{words.Word(value)}\"";

    internal override void Need(ObjectReader fields, ShapeValues values) => fields.Need(Name, words, out _);

    internal override void Write(Utf8JsonWriter json, T part) => json.WriteString(Name, words.Word(value));

    internal override void Describe(SchemaWriter schema)
    {
        schema.Json.WriteStartObject(Name);
        schema.Json.WriteString("const", words.Word(value));
        schema.Json.WriteEndObject();
    }
}
