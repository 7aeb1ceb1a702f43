namespace TreadmillMech.Service;

/// <summary>What a line of the table of readings is about.</summary>
public enum ReadingKind
{
    /// <summary>Strand tension of the running belt at rest.</summary>
    RestTension = 0,

    /// <summary>Relaxed force per width of the running belt.</summary>
    BeltStiffness,

    /// <summary>Deck friction.</summary>
    DeckFriction,

    /// <summary>Pull at which something slid, the motor held.</summary>
    LockedPull,

    /// <summary>Friction of running belt on drive roller.</summary>
    RollerFriction,

    /// <summary>Slip of the running belt.</summary>
    BeltSlip,

    /// <summary>Slip between motor and drive roller.</summary>
    DriveSlip,

    /// <summary>Slip of both together.</summary>
    WholeSlip,

    /// <summary>Margin of the running belt under the test demand.</summary>
    BeltMargin,

    /// <summary>Margin of the drive belt under the test demand.</summary>
    DriveBeltMargin,

    /// <summary>Strand tension of the drive belt.</summary>
    DriveBeltTension,

    /// <summary>Error of the displayed speed.</summary>
    DisplayError,

    /// <summary>Drift of the running belt to the right.</summary>
    Drift,

    /// <summary>Pull of the empty belt, the motor's own loss counted in.</summary>
    NoLoadPull,

    /// <summary>Slowing of the empty belt in a coast-down.</summary>
    Slowing,

    /// <summary>Motor constant.</summary>
    MotorConstant,

    /// <summary>Motor current under load.</summary>
    MotorCurrent,

    /// <summary>Mains power under load.</summary>
    MainsPower,

    /// <summary>Mains current under load.</summary>
    MainsCurrent,
}
