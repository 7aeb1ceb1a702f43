namespace TreadmillMech.Service.Events;

/// <summary>How the drive belt looks, machine unplugged and hood open.</summary>
public sealed partial record DriveBeltReading : Reading
{
    /// <summary>Its look.</summary>
    public required DriveBeltLook Look { get; init; }
}
