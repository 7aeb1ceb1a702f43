namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>What a joint estimate tells of.</summary>
/// <remarks>As found is before the work of the visit, now is after it; without such work both are the same.</remarks>
public enum VisitQuantity
{
    /// <summary>Strand tension of the running belt at rest, before the first turn of the visit [N].</summary>
    RestTensionAsFound = 0,

    /// <summary>The same with the turns of the visit [N].</summary>
    RestTensionNow,

    /// <summary>Relaxed force per width of the running belt at 1 % elongation [N/m].</summary>
    RelaxedForcePerWidth,

    /// <summary>Deck friction before the first work on the deck [1].</summary>
    DeckFrictionAsFound,

    /// <summary>Deck friction after the last work on it [1].</summary>
    DeckFrictionNow,

    /// <summary>Friction between running belt and drive roller before the rollers were cleaned [1].</summary>
    DriveRollerFrictionAsFound,

    /// <summary>The same after it [1].</summary>
    DriveRollerFrictionNow,

    /// <summary>Strand tension of the drive belt before work on it [N].</summary>
    DriveBeltTensionAsFound,

    /// <summary>The same after it [N].</summary>
    DriveBeltTensionNow,

    /// <summary>Pull of the empty belt before the first work on the deck, the motor's friction not counted [N].</summary>
    BeltDragAsFound,

    /// <summary>The same after the last work on it [N].</summary>
    BeltDragNow,

    /// <summary>Torque lost inside the motor [N m].</summary>
    MotorFrictionTorque,

    /// <summary>No-load loss now: the empty belt's pull and the motor's friction, both as pull at the belt [N].</summary>
    NoLoadPull,

    /// <summary>Motor constant [V s/rad].</summary>
    MotorConstant,

    /// <summary>Resistance of the armature [ohm].</summary>
    ArmatureResistance,

    /// <summary>Margin of the running belt now, under the test demand [1].</summary>
    BeltMargin,

    /// <summary>Margin of the drive belt now, under the test demand [1].</summary>
    DriveBeltMargin,
}
