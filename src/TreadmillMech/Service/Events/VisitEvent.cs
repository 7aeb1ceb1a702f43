namespace TreadmillMech.Service.Events;

/// <summary>Something that happened in a visit: a reading or an action. Closed: the kinds are those of this library.</summary>
public abstract partial record VisitEvent
{
    private protected VisitEvent() { }
}
