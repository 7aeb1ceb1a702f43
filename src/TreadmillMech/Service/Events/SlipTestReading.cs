namespace TreadmillMech.Service.Events;

/// <summary>Slip test under the visit's test demand: whether the belt under the feet gave way.</summary>
public sealed partial record SlipTestReading : Reading
{
    /// <summary>Whether it gave way.</summary>
    public required bool Slipped { get; init; }
}
