namespace TreadmillMech.Service.Events;

/// <summary>Cleaning, machine unplugged.</summary>
public sealed partial record CleanAction : VisitEvent
{
    /// <summary>What was cleaned.</summary>
    public required CleanedPlace Place { get; init; }
}
