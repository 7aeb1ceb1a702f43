namespace TreadmillMech.Service.Events;

/// <summary>Work on the drive belt, machine unplugged.</summary>
public sealed partial record DriveBeltAction : VisitEvent
{
    /// <summary>Whether the belt was replaced; otherwise it was tensioned.</summary>
    public required bool Replaced { get; init; }
}
