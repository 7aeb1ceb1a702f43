namespace TreadmillMech;

/// <summary>Which contact gives way first when the demand grows.</summary>
public enum WeakContact
{
    /// <summary>The running belt on its drive roller.</summary>
    RunningBelt = 0,

    /// <summary>The drive belt on its pulley.</summary>
    DriveBelt,
}
