namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>A reading that may be taken next.</summary>
public enum NextReading
{
    /// <summary>Lift test at 30 mm.</summary>
    LowLift = 0,

    /// <summary>Lift test at 50 mm.</summary>
    HighLift,

    /// <summary>Dead-weight pull, empty and with the test person's mass.</summary>
    DeadWeightPull,

    /// <summary>Locked pull until something slides.</summary>
    LockedPull,

    /// <summary>Motor current unloaded and under the test person, at the test speed.</summary>
    MotorCurrent,

    /// <summary>Voltage, current and speed of the motor, unloaded, at half and full test speed.</summary>
    UnloadedPoints,

    /// <summary>Mains power unloaded and under the test person, at the test speed.</summary>
    MainsPower,

    /// <summary>Slip test under the test demand.</summary>
    SlipTest,

    /// <summary>Pitch of the drive belt's span.</summary>
    SpanPitch,
}
