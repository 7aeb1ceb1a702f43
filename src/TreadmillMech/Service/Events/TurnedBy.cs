namespace TreadmillMech.Service.Events;

/// <summary>Whose hand turned the bolts.</summary>
public enum TurnedBy
{
    /// <summary>The technician of this visit.</summary>
    Technician = 0,

    /// <summary>Somebody before the visit who told of it: owner, staff.</summary>
    SomebodyBefore,
}
