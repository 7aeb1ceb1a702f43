namespace TreadmillMech.Figures.Drawing;

/// <summary>How the lines of a figure differ: by dashes and by darkness, so that they do in greyscale as well.</summary>
/// <param name="Colour">Colour, as the file says it.</param>
/// <param name="Dashes">Lengths of dashes and gaps, as the file says them; null for a full line.</param>
internal sealed record Stroke(string Colour, string? Dashes)
{
    internal static IReadOnlyList<Stroke> All { get; } =
    [new("#111111", null), new("#0060A8", "11 5"), new("#C04A00", "2.5 3.5"), new("#4F8A10", "14 4 3 4")];

    internal static Stroke Of(int line) => All[line % All.Count];
}
