using System.Globalization;

namespace TreadmillMech.Tests.LawChecks;

/// <summary>A row of Generators/gait_fit.tsv: people measured, and what the relations make of them, by the script beside it.</summary>
/// <param name="Gait">Run or walk.</param>
/// <param name="Speed">Speed [m/s].</param>
/// <param name="People">How many; 0 for a regression or a textbook value.</param>
/// <param name="Quantity">What was measured.</param>
/// <param name="Measured">Its value.</param>
/// <param name="Mark">Read or memory.</param>
/// <param name="Used">Whether the fit used it.</param>
/// <param name="Before">Value of the relations before the fit.</param>
/// <param name="Now">Value of the relations now.</param>
/// <param name="Source">Where the measured value comes from.</param>
internal sealed record GaitFit(
    string Gait,
    double Speed,
    int People,
    string Quantity,
    double Measured,
    string Mark,
    bool Used,
    double Before,
    double Now,
    string Source
)
{
    internal static readonly IReadOnlyList<GaitFit> Rows = Read();

    /// <summary>Share by which the relations may miss the row: many people, or fewer than nine.</summary>
    internal double Band => People is 0 or >= 9 ? 0.10 : 0.18;

    private static GaitFit[] Read()
    {
        using Stream stream = typeof(GaitFit).Assembly.GetManifestResourceStream("gait_fit.tsv")!;
        using StreamReader reader = new(stream);
        return
        [
            .. reader
                .ReadToEnd()
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Skip(1)
                .Select(line => line.TrimEnd('\r').Split('\t'))
                .Select(cells => new GaitFit(
                    cells[0],
                    Number(cells[1]),
                    (int)Number(cells[2]),
                    cells[3],
                    Number(cells[4]),
                    cells[5],
                    cells[6] == "yes",
                    Number(cells[7]),
                    Number(cells[8]),
                    cells[9]
                )),
        ];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
