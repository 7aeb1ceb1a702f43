using System.Globalization;

namespace TreadmillMech.Json.Located;

/// <summary>Paths into a JSON document.</summary>
internal static class JsonPath
{
    internal const string Root = "$";

    internal static string Member(string parent, string name) =>
        name.Length > 0 && name.All(static c => char.IsAsciiLetterOrDigit(c) || c == '_')
            ? $"{parent}.{name}"
            : $"{parent}['{name}']";

    internal static string Item(string parent, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"{parent}[{index}]");
}
