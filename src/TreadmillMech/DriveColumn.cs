namespace TreadmillMech;

/// <summary>One column of the series of a run.</summary>
/// <param name="Name">Its name, as in the heading of the export.</param>
/// <param name="Unit">Its SI unit; "1" for a plain number.</param>
/// <param name="Description">What it is.</param>
public sealed record DriveColumn(string Name, string Unit, string Description)
{
    /// <summary>Place in the record of a run; below 0 the time.</summary>
    internal int Index { get; init; }

    /// <summary>Whether it is told only where temperatures of the motor are known.</summary>
    internal bool OfMotorHeat { get; init; }

    /// <summary>Whether it is told only where temperatures of the deck are known.</summary>
    internal bool OfDeckHeat { get; init; }
}
