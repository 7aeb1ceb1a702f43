using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Json;

/// <summary>Whole documents: bytes in, bytes out.</summary>
internal static class DocumentText
{
    private const string FormatField = "format";

    // Readable text: a document is not put into a web page, so degree signs and dots need no escape.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    internal static Parsed<T> Read<T>(ObjectShape<T> shape, WordTable<string> format, byte[] utf8)
        where T : class
    {
        FileProblems problems = new();
        T? value = null;
        if (LocatedParser.Parse(utf8, problems) is { } root && IsOfFormat(root, format, problems))
        {
            shape.Read(root, problems, out value);
        }

        return new(value, problems.InOrder());
    }

    internal static byte[] Write<T>(JsonKind<T> kind, T value) => Bytes(json => kind.Write(json, value));

    /// <summary>The schema of a document.</summary>
    internal static string Schema<T>(ObjectShape<T> shape, string title, string description)
        where T : class =>
        Encoding.UTF8.GetString(
            Bytes(json =>
            {
                SchemaWriter schema = new(json);
                json.WriteStartObject();
                json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
                json.WriteString("title", title);
                json.WriteString("description", description);
                shape.DescribeObject(schema);
                schema.Definitions();
                json.WriteEndObject();
            })
        );

    internal static byte[] Utf8(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Encoding.UTF8.GetBytes(json);
    }

    /// <summary>Another format means other fields: complaints about them would mislead.</summary>
    private static bool IsOfFormat(LocatedNode root, WordTable<string> format, FileProblems problems) =>
        root.Find(FormatField)?.Value is not { } named || format.Read(named, problems, out _);

    internal static byte[] Bytes(Action<Utf8JsonWriter> write)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Options))
        {
            write(json);
        }

        stream.WriteByte((byte)'\n');
        return stream.ToArray();
    }
}
