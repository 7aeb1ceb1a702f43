using TreadmillMech.Json;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>What the command line asks for.</summary>
/// <param name="Files">The visits: none, one, or the two to compare.</param>
/// <param name="Compare">Whether two visits are compared.</param>
/// <param name="Json">Whether the answer is for machines.</param>
/// <param name="Html">The file to write the page to; null where none is asked for.</param>
/// <param name="Help">Whether the help is asked for.</param>
/// <param name="List">Whether the bundled visits are to be listed.</param>
internal sealed record Request(IReadOnlyList<string> Files, bool Compare, bool Json, string? Html, bool Help, bool List)
{
    internal const string Expected =
        "Expected: [VISIT] [--json] [--html FILE], compare VISIT VISIT [--json] [--html FILE], --list, or --help.";

    private const string CompareWord = "compare";

    /// <summary>The request; null where the command line makes none, and then what is wrong with it.</summary>
    internal static Request? Parse(string[] args, out string mistake)
    {
        List<string> files = [];
        Request asked = new(files, false, false, null, false, false);
        for (int i = 0; i < args.Length; i++)
        {
            switch (args[i])
            {
                case "--json":
                    asked = asked with { Json = true };
                    break;
                case "--help" or "-h":
                    asked = asked with { Help = true };
                    break;
                case "--list":
                    asked = asked with { List = true };
                    break;
                case "--html" when asked.Html is null && i + 1 < args.Length && !IsOption(args[i + 1]):
                    asked = asked with { Html = args[++i] };
                    break;
                case "--html":
                    mistake = "Found --html without the name of one file to write.";
                    return null;
                case CompareWord when i == 0:
                    asked = asked with { Compare = true };
                    break;
                case var option when IsOption(option):
                    mistake = $"Found the option {FileProblem.Printable(option)}, which is not known.";
                    return null;
                default:
                    files.Add(args[i]);
                    break;
            }
        }

        mistake = Mistake(asked);
        return mistake.Length == 0 ? asked : null;
    }

    private static string Mistake(Request asked) =>
        asked.Help || asked.List ? ""
        : asked.Compare && asked.Files.Count != 2 ? "Found compare without two visits."
        : !asked.Compare && asked.Files.Count > 1
            ? "Found more than one visit; one is reviewed at a time, and compare takes two."
        : "";

    private static bool IsOption(string word) => word.StartsWith('-');
}
