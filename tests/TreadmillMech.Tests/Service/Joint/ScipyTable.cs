using System.Globalization;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>The table of Service/Generators/joint_visit.py.</summary>
internal static class ScipyTable
{
    internal static Dictionary<string, double> Rows { get; } = Read();

    private static Dictionary<string, double> Read()
    {
        using Stream stream = typeof(ScipyTable).Assembly.GetManifestResourceStream("joint_visit.tsv")!;
        using StreamReader reader = new(stream);
        return reader
            .ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split('\t'))
            .ToDictionary(
                cells => cells[0],
                cells => double.Parse(cells[1], CultureInfo.InvariantCulture),
                StringComparer.Ordinal
            );
    }
}
