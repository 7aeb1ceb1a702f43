namespace TreadmillMech.Service.Events;

/// <summary>What a dry white cloth showed.</summary>
public sealed partial record WipeReading : Reading
{
    /// <summary>Where it was wiped.</summary>
    public required WipedPlace Place { get; init; }

    /// <summary>What was on the cloth.</summary>
    public required WipedTrace Trace { get; init; }
}
