namespace TreadmillMech.Service.Causes;

/// <summary>Kinds of work that a slip test may follow.</summary>
internal enum TrialWork
{
    /// <summary>Turns of the take-up bolts.</summary>
    Turns,

    /// <summary>The rollers were cleaned.</summary>
    Cleaning,

    /// <summary>The drive belt was tensioned or replaced.</summary>
    DriveBelt,
}
