using System.Globalization;

namespace TreadmillMech.Tests.Transient;

/// <summary>Runs of the invented machine by scipy's Radau: Generators/transient_values.tsv, written by the script beside it.</summary>
internal static class Reference
{
    /// <summary>Time and the 17 states, by case.</summary>
    internal static readonly ILookup<string, (double Time, double[] State)> Rows = Read();

    private static ILookup<string, (double Time, double[] State)> Read()
    {
        using Stream stream = typeof(Reference).Assembly.GetManifestResourceStream("transient_values.tsv")!;
        using StreamReader reader = new(stream);
        return reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Skip(1)
            .Select(line => line.TrimEnd('\r').Split('\t'))
            .ToLookup(
                cells => cells[0],
                cells =>
                    (
                        double.Parse(cells[1], CultureInfo.InvariantCulture),
                        cells[2..].Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)).ToArray()
                    ),
                StringComparer.Ordinal
            );
    }
}
