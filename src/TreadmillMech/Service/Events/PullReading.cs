using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>
/// Dead-weight pull: the machine unplugged, the belt drawn slowly by a scale, empty and with a known mass on it.
/// </summary>
public sealed partial record PullReading : Reading
{
    /// <summary>Mass standing still on the belt, 5 kg to 350 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public required Mass Mass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 5, 350);
    }

    /// <summary>Pull with the mass on the belt, 0 to 3000 N.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside the range.</exception>
    public required Force LoadedPull
    {
        get;
        init => field = Guard.Within(value, Si.Force, 0, 3000);
    }

    /// <summary>Pull of the empty belt, 0 to 1000 N.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside the range.</exception>
    public required Force EmptyPull
    {
        get;
        init => field = Guard.Within(value, Si.Force, 0, 1000);
    }

    /// <summary>
    /// Whether the motor was uncoupled, its drive belt off. Only then is the empty pull the drag of the belt alone;
    /// otherwise it turns the motor along and is more.
    /// </summary>
    public bool MotorUncoupled { get; init; }
}
