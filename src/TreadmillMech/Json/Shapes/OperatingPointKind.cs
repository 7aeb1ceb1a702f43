using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Model;

namespace TreadmillMech.Json.Shapes;

/// <summary>An operating point by the table of outputs: written only, for machine and demand give it again.</summary>
internal sealed class OperatingPointKind : JsonKind<OperatingPoint>
{
    internal override string Expected => "an operating point, which is written only";

    internal override bool Read(LocatedNode node, FileProblems problems, out OperatingPoint value) =>
        throw new NotSupportedException(
            "An operating point is written only: store machine and demand, which give it again bit for bit."
        );

    internal override void Write(Utf8JsonWriter json, OperatingPoint value)
    {
        json.WriteStartObject();
        foreach (Output output in Outputs.All)
        {
            json.WritePropertyName(output.Name);
            TableValues.Write(json, value.Number(output), output.Unit);
        }

        json.WriteStartArray("Notices");
        foreach (Notice notice in value.NoticeTexts)
        {
            json.WriteStringValue(notice.ToString());
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    internal override void Describe(SchemaWriter schema) => schema.Type("object");
}
