using System.Globalization;
using System.Text.Json;
using TreadmillMech.Json.Shapes;

namespace TreadmillMech.Json;

/// <summary>A part or a reading as a visit file writes it, on one line, for whoever prints it.</summary>
/// <remarks>What is not known is not told; names and units are those of the file, so that one finds the field again.</remarks>
internal static class OneLine
{
    private const int MostDigits = 7;

    /// <summary>The type's name and the fields: "Deck: friction 0.2, preWaxed false".</summary>
    internal static string Of<T>(T value)
        where T : notnull => $"{typeof(T).Name}: {Fields(JsonForms.Of<T>()!, value)}";

    /// <summary>The fields alone.</summary>
    internal static string Fields<T>(JsonKind<T> kind, T value)
        where T : notnull
    {
        using JsonDocument document = JsonDocument.Parse(DocumentText.Write(kind, value));
        return Fields(document.RootElement);
    }

    private static string Fields(JsonElement thing) =>
        string.Join(", ", thing.EnumerateObject().Select(static field => $"{field.Name} {Value(field.Value)}"));

    private static string Value(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.Object => $"({Fields(value)})",
            JsonValueKind.Array => $"[{string.Join("; ", value.EnumerateArray().Select(Value))}]",
            JsonValueKind.String => Rounded(value.GetString() ?? ""),
            _ => Rounded(value.GetRawText()),
        };

    // A file keeps every digit, a reader wants a few; whatever else begins a text is left as it is.
    private static string Rounded(string text)
    {
        int end = text.IndexOf(' ', StringComparison.Ordinal);
        string number = end < 0 ? text : text[..end];
        return
            number.Length > MostDigits
            && double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            ? value.ToString("G6", CultureInfo.InvariantCulture) + text[number.Length..]
            : text;
    }
}
