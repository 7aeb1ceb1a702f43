using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace TreadmillMech.Json.Located;

/// <summary>Turns the bytes of a file into located values, or into a complaint about where the JSON breaks off.</summary>
internal sealed class LocatedParser
{
    // Null where the text is not at hand; then no place is known.
    private readonly byte[]? bytes;
    private readonly FileProblems problems;
    private int counted;
    private int lineStart;
    private int line;
    private string path = JsonPath.Root;

    private LocatedParser(byte[]? bytes, FileProblems problems)
    {
        this.bytes = bytes;
        this.problems = problems;
        line = bytes is null ? 0 : 1;
    }

    /// <summary>The root of the document; null where the bytes are not JSON.</summary>
    internal static LocatedNode? Parse(byte[] bytes, FileProblems problems)
    {
        ReadOnlySpan<byte> mark = [0xEF, 0xBB, 0xBF];
        byte[] content = bytes.AsSpan().StartsWith(mark) ? bytes[mark.Length..] : bytes;
        return new LocatedParser(content, problems).Document(content);
    }

    /// <summary>The value that a reader stands on, read to its end; its place is not known.</summary>
    /// <exception cref="JsonException">The text is not JSON.</exception>
    internal static LocatedNode? Parse(ref Utf8JsonReader reader, FileProblems problems)
    {
        LocatedParser parser = new(null, problems);
        try
        {
            return parser.Value(ref reader);
        }
        catch (InvalidOperationException)
        {
            parser.AddNoCharacter();
            return null;
        }
    }

    private LocatedNode? Document(byte[] content)
    {
        if (!Utf8.IsValid(content))
        {
            (int at, int column) = PlaceOfInvalidText(content);
            problems.Add(at, column, path, new("bytes that are not UTF-8 text", "a file saved as UTF-8"));
            return null;
        }

        Utf8JsonReader reader = new(content);
        if (content.All(static b => b is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
        {
            problems.Add(line, 1, path, new("an empty file", "one complete JSON document"));
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
            int column = (int)(broken.BytePositionInLine ?? 0) + 1;
            problems.Add(
                at,
                column,
                path,
                new($"text that is not JSON: {Reason(broken)}", "one complete JSON document")
            );
            return null;
        }
        catch (InvalidOperationException)
        {
            AddNoCharacter();
            return null;
        }
    }

    /// <summary>Half of a surrogate pair, written as an escape: valid JSON, but not text.</summary>
    private void AddNoCharacter() =>
        problems.Add(line, 1, path, new("an escape that stands for no character", "text in whole characters"));

    private LocatedNode Value(ref Utf8JsonReader reader)
    {
        (int at, int column) = PlaceOf(ref reader);
        LocatedNode node = new(Kind(reader.TokenType), path, at, column);
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
            (int at, int column) = PlaceOf(ref reader);
            path = JsonPath.Member(outer, name);
            if (!names.Add(name))
            {
                problems.Add(at, column, path, new($"field \"{name}\" a second time", "every field once"));
            }

            reader.Read();
            members.Add(new(name, at, column, Value(ref reader)));
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

    /// <summary>Line and column of the current token; tokens come in order, so each line end is counted once.</summary>
    private (int Line, int Column) PlaceOf(ref Utf8JsonReader reader)
    {
        if (bytes is null)
        {
            return (0, 0);
        }

        int start = (int)reader.TokenStartIndex;
        ReadOnlySpan<byte> between = bytes.AsSpan(counted, start - counted);
        int ends = between.Count((byte)'\n');
        if (ends > 0)
        {
            line += ends;
            lineStart = counted + between.LastIndexOf((byte)'\n') + 1;
        }

        counted = start;
        return (line, Encoding.UTF8.GetCharCount(bytes.AsSpan(lineStart, start - lineStart)) + 1);
    }

    private static (int Line, int Column) PlaceOfInvalidText(byte[] content)
    {
        ReadOnlySpan<byte> rest = content;
        (int at, int column) = (1, 1);
        while (Rune.DecodeFromUtf8(rest, out Rune rune, out int length) == System.Buffers.OperationStatus.Done)
        {
            (at, column) = rune.Value == '\n' ? (at + 1, 1) : (at, column + 1);
            rest = rest[length..];
        }

        return (at, column);
    }

    /// <summary>The parser's reason without its own way of counting lines, which starts at 0.</summary>
    private static string Reason(JsonException broken)
    {
        int end = broken.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (end < 0 ? broken.Message : broken.Message[..end]).TrimEnd('.');
    }
}
