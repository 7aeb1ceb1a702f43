namespace TreadmillMech.Service;

/// <summary>One line of the table of readings: as found, as left, and what it is held against.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Name">What was read, in words.</param>
/// <param name="Unit">Unit; empty for a plain number.</param>
/// <param name="AsFound">First value of the visit; null where there is none.</param>
/// <param name="AsLeft">Value after the last action that changes it; null where it was not read again.</param>
/// <param name="Reference">What it is held against; null where there is nothing.</param>
public sealed partial record ReadingRow(
    ReadingKind Kind,
    string Name,
    string Unit,
    Figure? AsFound,
    Figure? AsLeft,
    Threshold? Reference
)
{
    /// <summary>The reading as found and as left, invariant.</summary>
    public override string ToString() => $"{Name}: as found {Told(AsFound)}, as left {Told(AsLeft)}";

    private static string Told(Figure? figure) => figure is null ? "not read" : figure.ToString();
}
