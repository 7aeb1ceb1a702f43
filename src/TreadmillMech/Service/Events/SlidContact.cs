namespace TreadmillMech.Service.Events;

/// <summary>What slid in a locked pull.</summary>
public enum SlidContact
{
    /// <summary>Nothing: both held the largest pull tried.</summary>
    Nothing = 0,

    /// <summary>The running belt on its drive roller, the roller standing.</summary>
    RunningBelt,

    /// <summary>The drive belt on its pulley, the roller turning and the motor standing.</summary>
    DriveBelt,
}
