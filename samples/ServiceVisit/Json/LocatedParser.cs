using System.Text;
using System.Text.Json;
using System.Text.Unicode;
using TreadmillMech.Samples.ServiceVisit.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Json;

/// <summary>Turns the bytes of a file into located values, or into a complaint about where the JSON breaks off.</summary>
internal sealed class LocatedParser
{
    private readonly byte[] bytes;
    private readonly Problems problems;
    private int counted;
    private int line = 1;
    private string path = JsonPath.Root;

    private LocatedParser(byte[] bytes, Problems problems)
    {
        this.bytes = bytes;
        this.problems = problems;
    }

    /// <summary>The root of the document; null where the bytes are not JSON.</summary>
    internal static LocatedNode? Parse(byte[] bytes, Problems problems)
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        byte[] content = bytes.AsSpan().StartsWith(mark) ? bytes[mark.Length..] : bytes;
        return new LocatedParser(content, problems).Document();
    }

    private LocatedNode? Document()
    {
        if (!Utf8.IsValid(bytes))
        {
            problems.Add(LineOfInvalidText(), path, "bytes that are not UTF-8 text", "a file saved as UTF-8");
            return null;
        }

        Utf8JsonReader reader = new(bytes);
        if (bytes.All(static b => b is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
        {
            problems.Add(line, path, "an empty file", "one complete JSON document");
            return null;
        }

        try
        {
            reader.Read();
            LocatedNode root = Value(ref reader);

            // Whatever follows the document is refused by the reader itself.
            reader.Read();
            return root;
        }
        catch (JsonException broken)
        {
            int at = (int)(broken.LineNumber ?? 0) + 1;
            problems.Add(at, path, $"text that is not JSON: {Reason(broken)}", "one complete JSON document");
            return null;
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, written as an escape: valid JSON, but not text.
            problems.Add(line, path, "an escape that stands for no character", "text in whole characters");
            return null;
        }
    }

    private LocatedNode Value(ref Utf8JsonReader reader)
    {
        LocatedNode node = new(Kind(reader.TokenType), path, LineOf(ref reader));
        return node.Kind switch
        {
            NodeKind.Object => node with { Members = Members(ref reader) },
            NodeKind.Array => node with { Items = Items(ref reader) },
            NodeKind.Text => node with { Text = reader.GetString() ?? "" },
            _ => node with { Text = Encoding.UTF8.GetString(reader.ValueSpan) },
        };
    }

    private List<LocatedMember> Members(ref Utf8JsonReader reader)
    {
        string outer = path;
        List<LocatedMember> members = [];
        HashSet<string> names = new(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            string name = reader.GetString() ?? "";
            int at = LineOf(ref reader);
            path = JsonPath.Member(outer, name);
            if (!names.Add(name))
            {
                problems.Add(at, path, $"field \"{name}\" a second time", "every field once");
            }

            reader.Read();
            members.Add(new(name, at, Value(ref reader)));
            path = outer;
        }

        return members;
    }

    private List<LocatedNode> Items(ref Utf8JsonReader reader)
    {
        string outer = path;
        List<LocatedNode> items = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            path = JsonPath.Item(outer, items.Count);
            items.Add(Value(ref reader));
            path = outer;
        }

        return items;
    }

    private static NodeKind Kind(JsonTokenType token) =>
        token switch
        {
            JsonTokenType.StartObject => NodeKind.Object,
            JsonTokenType.StartArray => NodeKind.Array,
            JsonTokenType.String => NodeKind.Text,
            JsonTokenType.Number => NodeKind.Number,
            JsonTokenType.True or JsonTokenType.False => NodeKind.Boolean,
            _ => NodeKind.Null,
        };

    /// <summary>The line of the current token; tokens come in order, so each line end is counted once.</summary>
    private int LineOf(ref Utf8JsonReader reader)
    {
        int start = (int)reader.TokenStartIndex;
        line += bytes.AsSpan(counted, start - counted).Count((byte)'\n');
        counted = start;
        return line;
    }

    private int LineOfInvalidText()
    {
        ReadOnlySpan<byte> rest = bytes;
        int at = 1;
        while (Rune.DecodeFromUtf8(rest, out Rune rune, out int length) == System.Buffers.OperationStatus.Done)
        {
            at += rune.Value == '\n' ? 1 : 0;
            rest = rest[length..];
        }

        return at;
    }

    /// <summary>The parser's reason without its own way of counting lines, which starts at 0.</summary>
    private static string Reason(JsonException broken)
    {
        int end = broken.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (end < 0 ? broken.Message : broken.Message[..end]).TrimEnd('.');
    }
}
