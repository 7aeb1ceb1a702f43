namespace TreadmillMech;

/// <summary>What can happen in a run.</summary>
public enum DriveEventKind
{
    /// <summary>The running belt begins to slide on its drive roller.</summary>
    BeltSlipStarts = 0,

    /// <summary>The running belt grips again.</summary>
    BeltSlipEnds,

    /// <summary>The drive belt begins to slide on the motor's pulley.</summary>
    DriveBeltSlipStarts,

    /// <summary>The drive belt grips again.</summary>
    DriveBeltSlipEnds,

    /// <summary>The motor's current reaches the controller's limit.</summary>
    CurrentLimitReached,

    /// <summary>The motor's current leaves the controller's limit.</summary>
    CurrentLimitLeft,

    /// <summary>The belt has come to rest: it runs at less than 1 cm/s.</summary>
    BeltStops,

    /// <summary>The belt moves under a person who stood on it, who begins to walk: it runs at 0.1 m/s.</summary>
    StepsBegin,

    /// <summary>The belt is too slow to walk on: the person stands.</summary>
    StepsEnd,

    /// <summary>The safety key is pulled.</summary>
    KeyPulled,
}
