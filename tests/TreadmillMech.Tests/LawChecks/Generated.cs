using System.Globalization;

namespace TreadmillMech.Tests.LawChecks;

/// <summary>
/// Values computed by numpy and scipy: Generators/law_values.tsv, written by the script beside it. A value is checked to
/// half a unit of its last digit.
/// </summary>
internal static class Generated
{
    /// <summary>Value as printed and the call behind it, by name.</summary>
    internal static readonly IReadOnlyDictionary<string, (string Value, string Call)> Rows = Read();

    internal static LawCheck Check(string law, string name, string unit, Func<double> compute)
    {
        (string value, string call) = Rows[name];
        int dot = value.IndexOf('.', StringComparison.Ordinal);
        int exponent = value.IndexOf('e', StringComparison.Ordinal);
        double digit = Math.Pow(
            10,
            int.Parse(value[(exponent + 1)..], CultureInfo.InvariantCulture) - exponent + dot + 1
        );
        double expected = double.Parse(value, CultureInfo.InvariantCulture);
        return new(law, $"{call} ({name})", Mark.Library, expected, 0.5 * digit, unit, compute);
    }

    private static Dictionary<string, (string Value, string Call)> Read()
    {
        using Stream stream = typeof(Generated).Assembly.GetManifestResourceStream("law_values.tsv")!;
        using StreamReader reader = new(stream);
        return reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Skip(1)
            .Select(line => line.TrimEnd('\r').Split('\t'))
            .ToDictionary(cells => cells[0], cells => (cells[1], cells[2]), StringComparer.Ordinal);
    }
}
