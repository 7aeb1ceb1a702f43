namespace TreadmillMech.Service;

/// <summary>What ends the turns of the take-up bolts.</summary>
public enum TurnLimit
{
    /// <summary>The most turns of one visit.</summary>
    TurnsOfAVisit = 0,

    /// <summary>The thread left on the bolts.</summary>
    Thread,

    /// <summary>The upper edge of the running belt's elongation.</summary>
    Elongation,

    /// <summary>The tension that an earlier visit left, and some more.</summary>
    EarlierTension,

    /// <summary>A bolt that turns hard.</summary>
    HardBolt,
}
