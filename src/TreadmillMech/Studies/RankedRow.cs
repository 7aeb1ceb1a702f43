using System.Globalization;

namespace TreadmillMech.Studies;

/// <summary>A row of a batch that stands near one end of an output.</summary>
/// <param name="Row">Its number, from 0; in a stream counted over all chunks.</param>
/// <param name="Si">The output, SI.</param>
public readonly record struct RankedRow(long Row, double Si)
{
    /// <summary>The row and its number, invariant.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"row {Row}: {Si:G6}");
}
