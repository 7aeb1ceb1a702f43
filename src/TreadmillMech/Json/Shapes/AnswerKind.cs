using System.Text.Json;
using TreadmillMech.Json.Located;

namespace TreadmillMech.Json.Shapes;

/// <summary>A value, or an object that says why there is none.</summary>
internal sealed class AnswerKind<T>(JsonKind<T> inner) : JsonKind<Answer<T>>
    where T : notnull
{
    internal override string Expected => $"{inner.Expected}, or why it is missing";

    internal override bool Read(LocatedNode node, FileProblems problems, out Answer<T> value)
    {
        value = default;
        if (node.Find(MissingKind.Why) is not null)
        {
            bool told = MissingKind.Any.Read(node, problems, out Shortfall missing);
            value = missing;
            return told;
        }

        if (!inner.Read(node, problems, out T? found))
        {
            return false;
        }

        value = found;
        return true;
    }

    internal override void Write(Utf8JsonWriter json, Answer<T> value)
    {
        if (value.Is(out T? found))
        {
            inner.Write(json, found);
        }
        else
        {
            MissingKind.Any.Write(json, value.Missing);
        }
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Json.WriteStartArray("anyOf");
        schema.Json.WriteStartObject();
        inner.Describe(schema);
        schema.Json.WriteEndObject();
        schema.Json.WriteStartObject();
        MissingKind.Any.Describe(schema);
        schema.Json.WriteEndObject();
        schema.Json.WriteEndArray();
    }
}
