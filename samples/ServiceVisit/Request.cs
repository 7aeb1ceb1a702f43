using TreadmillMech.Samples.ServiceVisit.Reading;

namespace TreadmillMech.Samples.ServiceVisit;

/// <summary>What the command line asks for.</summary>
internal sealed record Request(string? File, bool Json, bool Help)
{
    /// <summary>The request; null where the command line makes none.</summary>
    internal static Request? Parse(string[] args) =>
        Mistake(args).Length > 0
            ? null
            : new(
                args.FirstOrDefault(static word => !IsOption(word)),
                args.Contains("--json"),
                args.Contains("--help") || args.Contains("-h")
            );

    /// <summary>What is wrong with a command line; empty where nothing is.</summary>
    internal static string Mistake(string[] args)
    {
        string? option = args.FirstOrDefault(static word =>
            IsOption(word) && word is not ("--json" or "--help" or "-h")
        );
        return option is not null ? $"Found the option {Problem.Printable(option)}, which is not known."
            : args.Count(static word => !IsOption(word)) > 1
                ? "Found more than one file; one visit is reviewed at a time."
            : "";
    }

    private static bool IsOption(string word) => word.StartsWith('-');
}
