namespace TreadmillMech.Service.Estimation;

/// <summary>Where slip was found.</summary>
public enum SlipPlace
{
    /// <summary>Nowhere: the ratios under load are those of the unloaded machine.</summary>
    Nowhere = 0,

    /// <summary>Between the running belt and its drive roller.</summary>
    RunningBelt,

    /// <summary>At the drive belt, or at a pulley loose on its shaft.</summary>
    DriveBelt,

    /// <summary>At both.</summary>
    Both,

    /// <summary>Somewhere between motor and running belt: the roller's speed was not read.</summary>
    NotLocated,

    /// <summary>Not told: the one contact that was read holds, the other was not read.</summary>
    NotTold,
}
