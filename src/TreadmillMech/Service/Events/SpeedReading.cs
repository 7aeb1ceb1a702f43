using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>
/// Speeds read at one time. Slip shows in the ratio of two of them, loaded against the same machine unloaded; no diameter
/// needs to be known.
/// </summary>
public sealed partial record SpeedReading : Reading
{
    /// <summary>Whether somebody was on the belt.</summary>
    public required LoadState State { get; init; }

    /// <summary>Speed of the motor, 1 to 1500 rad/s; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public RotationalSpeed? Motor
    {
        get;
        init => field = Guard.Within(value, Si.RotationalSpeed, 1, 1500);
    }

    /// <summary>Speed of the drive roller, 1 to 500 rad/s; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public RotationalSpeed? DriveRoller
    {
        get;
        init => field = Guard.Within(value, Si.RotationalSpeed, 1, 500);
    }

    /// <summary>Speed of the running belt, from marks or counted passes, 0.05 to 8 m/s; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public Speed? Belt
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.05, 8);
    }

    /// <summary>Speed on the display, 0.05 to 8 m/s; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public Speed? Display
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.05, 8);
    }
}
