using System.Diagnostics;
using System.Text.RegularExpressions;

namespace TreadmillMech.Tests.Conventions;

/// <summary>Calls that the compiler left in the machine code of the model, read from its own listing.</summary>
internal static partial class StageListing
{
    private static readonly Lazy<IReadOnlyList<(string Method, string Callee)>> All = new(Read);

    /// <summary>
    /// Methods of the model compiled for a number type, each with its left-over calls of operators and functions of
    /// number types, and of laws.
    /// </summary>
    internal static IReadOnlyDictionary<string, int> Leftovers(string numberType) =>
        All
            .Value.Where(row => IsFor(row.Method, numberType))
            .GroupBy(row => row.Method)
            .ToDictionary(group => group.Key, group => group.Count(row => IsArithmetic(row.Callee)));

    /// <summary>Which calls they are, for a message.</summary>
    internal static string Detail(string numberType) =>
        string.Join(
            '\n',
            All.Value.Where(row => IsFor(row.Method, numberType) && IsArithmetic(row.Callee))
                .GroupBy(row => row)
                .OrderByDescending(group => group.Count())
                .Select(group => $"{group.Count()} x {group.Key.Callee} in {group.Key.Method}")
        );

    // The number type is the last type argument, and not one that stands inside of another.
    private static bool IsFor(string method, string numberType) =>
        TypeArgument().Match(method).Groups[1].Value == numberType;

    // A whole function, such as a sine, does enough work to be a call of its own.
    private static bool IsArithmetic(string callee) =>
        (
            callee.StartsWith("TreadmillMech.Numbers.", StringComparison.Ordinal)
            || callee.StartsWith("TreadmillMech.Laws.", StringComparison.Ordinal)
        ) && !WholeFunction().IsMatch(callee);

    private static List<(string Method, string Callee)> Read()
    {
        string listing = Path.Combine(Path.GetTempPath(), $"listing-{Environment.ProcessId}-{Guid.NewGuid():N}.txt");
        try
        {
            string library = typeof(StageListing).Assembly.Location;
            ProcessStartInfo start = new("dotnet")
            {
                ArgumentList = { "exec", library, "-class", typeof(StageWorkload).FullName! },
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            };
            start.Environment["DOTNET_TieredCompilation"] = "0";
            start.Environment["DOTNET_ReadyToRun"] = "1";
            start.Environment["DOTNET_JitStdOutFile"] = listing;
            start.Environment["DOTNET_JitDisasm"] = "TreadmillMech.Model.*:*";
            using Process child = Process.Start(start)!;
            Task<string> output = child.StandardOutput.ReadToEndAsync();
            Task<string> errors = child.StandardError.ReadToEndAsync();
            child.WaitForExit();
            Assert.True(child.ExitCode == 0, output.Result + errors.Result);
            return Parse(File.ReadLines(listing));
        }
        finally
        {
            File.Delete(listing);
        }
    }

    private static List<(string Method, string Callee)> Parse(IEnumerable<string> lines)
    {
        List<(string Method, string Callee)> rows = [];
        string method = "";
        foreach (string line in lines)
        {
            if (Header().Match(line) is { Success: true } header)
            {
                // A method without calls is a row as well: it was compiled.
                method = header.Groups[1].Value;
                rows.Add((method, ""));
            }
            else if (Call().Match(line) is { Success: true } call)
            {
                rows.Add((method, call.Groups[1].Value));
            }
        }

        return rows;
    }

    [GeneratedRegex(@"^; Assembly listing for method (TreadmillMech\.Model\.\S+)")]
    private static partial Regex Header();

    [GeneratedRegex(@"\b(?:call|jmp|bl|b)\s+(?:\[)?((?:TreadmillMech|System)[^(]*)")]
    private static partial Regex Call();

    [GeneratedRegex(@":(SinCos|Exp|Log|Pow|Asin|Atan2|Tanh|OnPlain)\b|\.(HalfTurns|Angles|Arcsine):")]
    private static partial Regex WholeFunction();

    [GeneratedRegex(@":\w+\[TreadmillMech\.Numbers\.([^(]+)\]\(")]
    private static partial Regex TypeArgument();
}
