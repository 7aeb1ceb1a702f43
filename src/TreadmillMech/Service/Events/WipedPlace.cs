namespace TreadmillMech.Service.Events;

/// <summary>Where a cloth was drawn over the machine.</summary>
public enum WipedPlace
{
    /// <summary>The face of the drive roller.</summary>
    DriveRoller = 0,

    /// <summary>The underside of the running belt, in the foot zone.</summary>
    BeltUnderside,

    /// <summary>The top of the running belt, where people step.</summary>
    BeltTop,
}
