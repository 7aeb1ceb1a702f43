namespace TreadmillMech.Service.Events;

/// <summary>Something seen, heard, felt or smelt.</summary>
public enum Symptom
{
    /// <summary>A high squeal as the user lands or the belt starts.</summary>
    HighSqueal = 0,

    /// <summary>A rumble or grinding from a roller, empty as well.</summary>
    Rumble,

    /// <summary>A knock once in each turn of a pulley or roller.</summary>
    KnockEachTurn,

    /// <summary>Smell of burnt rubber.</summary>
    BurntRubber,

    /// <summary>Smell of a hot winding, or a case too hot to touch.</summary>
    HotMotor,

    /// <summary>Underside of the running belt glazed or worn smooth.</summary>
    GlazedUnderside,

    /// <summary>Deck worn through its coat in the foot zone.</summary>
    WornDeck,

    /// <summary>A pulley that turns or shifts on its shaft.</summary>
    PulleyMoves,

    /// <summary>Speed that surges and falls with nobody on the belt.</summary>
    Hunting,

    /// <summary>The controller shuts off under load.</summary>
    ShutsOff,

    /// <summary>Lights on the same circuit dim as the user lands.</summary>
    LightsDim,

    /// <summary>Uphill the belt runs faster than set.</summary>
    BeltRunsAway,

    /// <summary>An edge of the running belt curled or frayed.</summary>
    CurledEdge,
}
