using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>A JSON document with one object, as text.</summary>
internal static class JsonText
{
    // Readable text: the document is not put into a web page, so plus-minus and degree signs need no escape.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    internal static string Of(Action<Utf8JsonWriter> writeFields)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Options))
        {
            json.WriteStartObject();
            writeFields(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
