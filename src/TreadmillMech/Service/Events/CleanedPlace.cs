namespace TreadmillMech.Service.Events;

/// <summary>What was cleaned.</summary>
public enum CleanedPlace
{
    /// <summary>Deck and underside of the running belt.</summary>
    Deck = 0,

    /// <summary>The rollers' faces.</summary>
    Rollers,

    /// <summary>The top of the running belt.</summary>
    BeltTop,
}
