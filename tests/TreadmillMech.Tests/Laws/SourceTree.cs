using System.Text.RegularExpressions;

namespace TreadmillMech.Tests.Laws;

/// <summary>The library's own source text, for rules that no compiler checks.</summary>
internal static partial class SourceTree
{
    /// <summary>Files of a folder below the library, by name.</summary>
    internal static IReadOnlyDictionary<string, string> Files(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(Root(), "src", "TreadmillMech", folder), "*.cs", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetFileName(file), File.ReadAllText, StringComparer.Ordinal);

    /// <summary>The text without comments, and with strings emptied.</summary>
    internal static string Code(string text) =>
        NotCode().Replace(text, match => match.Value.StartsWith('/') ? " " : "\"\"");

    /// <summary>The folder of the repository.</summary>
    internal static string Root()
    {
        DirectoryInfo? place = new(AppContext.BaseDirectory);
        while (place is not null && !File.Exists(Path.Combine(place.FullName, "TreadmillMech.sln")))
        {
            place = place.Parent;
        }

        return place?.FullName ?? throw new InvalidOperationException("The tests run outside of the repository.");
    }

    // Strings come first where they start first, so that "//" inside one is no comment, and a quote in a comment no string.
    [GeneratedRegex("""@?"(?:[^"\\\n]|\\.)*"|//[^\n]*|/\*.*?\*/""", RegexOptions.Singleline)]
    private static partial Regex NotCode();
}
