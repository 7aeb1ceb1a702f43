using System.Text.RegularExpressions;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Docs;

/// <summary>The pages that a reader sees, and what is printed on them.</summary>
internal static partial class Pages
{
    private const string Fence = "```";

    /// <summary>The pages, from the repository's folder.</summary>
    internal static IReadOnlyList<string> All { get; } =
    ["README.md", "docs/index.md", .. In("docs/articles"), .. In("docs/how-to")];

    private static IEnumerable<string> In(string folder) =>
        Directory
            .EnumerateFiles(Path.Combine(SourceTree.Root(), folder), "*.md")
            .Select(file => folder + "/" + Path.GetFileName(file))
            .Order(StringComparer.Ordinal);

    /// <summary>Every program in C# on every page.</summary>
    internal static IEnumerable<CodeBlock> Programs() => All.SelectMany(page => Programs(page, Lines(page)));

    /// <summary>The programs in the lines of a page.</summary>
    internal static IEnumerable<CodeBlock> Programs(string page, string[] lines)
    {
        int line = 0;
        while (line < lines.Length)
        {
            string language = lines[line].StartsWith(Fence, StringComparison.Ordinal) ? lines[line][3..].Trim() : "";
            if (lines[line].StartsWith(Fence, StringComparison.Ordinal))
            {
                int end = End(lines, line);
                if (language == "csharp")
                {
                    int next = end + 1;
                    while (next < lines.Length && lines[next].Length == 0)
                    {
                        next++;
                    }

                    bool printed = next < lines.Length && lines[next] == Fence + "text";
                    yield return new(
                        page,
                        line + 1,
                        Text(lines, line, end),
                        printed ? Text(lines, next, End(lines, next)) : null,
                        next + 1
                    );
                }

                line = end;
            }

            line++;
        }
    }

    /// <summary>The pictures a page refers to, as it names them, with the words that stand for them.</summary>
    internal static IEnumerable<(string Place, string Words)> Pictures(string page) =>
        Picture()
            .Matches(string.Join('\n', Lines(page)))
            .Select(match => (match.Groups["place"].Value, match.Groups["words"].Value));

    internal static string[] Lines(string page) =>
        File.ReadAllText(Path.Combine(SourceTree.Root(), page)).ReplaceLineEndings("\n").Split('\n');

    private static int End(string[] lines, int begin)
    {
        int end = Array.FindIndex(lines, begin + 1, static line => line.StartsWith(Fence, StringComparison.Ordinal));
        return end < 0 ? throw new InvalidOperationException($"The block of line {begin + 1} has no end.") : end;
    }

    private static string Text(string[] lines, int begin, int end) =>
        string.Concat(lines[(begin + 1)..end].Select(static line => line + "\n"));

    [GeneratedRegex("""!\[(?<words>[^\]]*)\]\((?<place>[^)\s]+)\)""")]
    private static partial Regex Picture();
}
