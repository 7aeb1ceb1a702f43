namespace TreadmillMech.Service.Events;

/// <summary>Where a temperature was read.</summary>
public enum WarmPlace
{
    /// <summary>Case of the motor.</summary>
    MotorCase = 0,

    /// <summary>Winding of the motor, from its resistance.</summary>
    MotorWinding,

    /// <summary>Bearing of the drive roller.</summary>
    DriveRollerBearing,

    /// <summary>Bearing of the undriven roller.</summary>
    TailRollerBearing,

    /// <summary>Deck under the foot zone.</summary>
    Deck,

    /// <summary>Plug or cord of the mains.</summary>
    MainsPlug,
}
