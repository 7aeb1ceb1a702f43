namespace TreadmillMech.Service;

/// <summary>Whether a meter reads a quantity.</summary>
public enum MeterFitness
{
    /// <summary>It reads it.</summary>
    Reads = 0,

    /// <summary>It shows less than there is.</summary>
    ReadsLow,

    /// <summary>It shows more than there is.</summary>
    ReadsHigh,

    /// <summary>What it shows is something else.</summary>
    Cannot,
}
