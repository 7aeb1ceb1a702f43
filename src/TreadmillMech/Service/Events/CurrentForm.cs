namespace TreadmillMech.Service.Events;

/// <summary>What a meter was set to read.</summary>
public enum CurrentForm
{
    /// <summary>Direct current.</summary>
    Direct = 0,

    /// <summary>Alternating current.</summary>
    Alternating,
}
