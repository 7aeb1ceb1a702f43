namespace TreadmillMech.Service;

/// <summary>What may be behind the readings of a visit.</summary>
public enum Cause
{
    /// <summary>Nothing wrong.</summary>
    NothingWrong = 0,

    /// <summary>The running belt is slack.</summary>
    RunningBeltSlack,

    /// <summary>Oil on the drive roller takes its grip.</summary>
    OilOnDriveRoller,

    /// <summary>The running belt is tighter than it need be.</summary>
    OverTightened,

    /// <summary>The take-up bolts are at the end of their thread, or seize.</summary>
    BoltsAtTheirEnd,

    /// <summary>The drive belt is slack.</summary>
    DriveBeltSlack,

    /// <summary>The drive belt is glazed, or its ribs are worn.</summary>
    DriveBeltGlazed,

    /// <summary>The drive belt is cracked.</summary>
    DriveBeltCracked,

    /// <summary>A pulley is loose on its shaft.</summary>
    PulleyLoose,

    /// <summary>The deck is dry or dirty.</summary>
    DeckDry,

    /// <summary>Belt and deck are worn.</summary>
    BeltAndDeckWorn,

    /// <summary>So much lubricant that the top of the belt turns slippery.</summary>
    OverLubricated,

    /// <summary>A roller bearing is failing.</summary>
    RollerBearing,

    /// <summary>The motor is weak or hot, or its brushes are worn.</summary>
    MotorWeak,

    /// <summary>The controller reaches its limit.</summary>
    ControllerLimit,

    /// <summary>The mains supply is weak.</summary>
    SupplyWeak,

    /// <summary>Uphill a drive that cannot brake is overrun by the user.</summary>
    DriveOverrun,

    /// <summary>The belt is off centre, or the frame is not level.</summary>
    BeltOffCentre,

    /// <summary>Speed or incline of the display are out of calibration.</summary>
    OutOfCalibration,

    /// <summary>The user is beyond the maker's plate.</summary>
    UserBeyondPlate,

    /// <summary>A reading is wrong.</summary>
    WrongReading,
}
