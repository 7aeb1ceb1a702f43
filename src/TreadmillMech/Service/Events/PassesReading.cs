using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Belt speed from counted passes of a mark, by a watch or a film.</summary>
public sealed partial record PassesReading : Reading
{
    /// <summary>Whether somebody was on the belt.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required LoadState State
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Passes counted, 1 to 10000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required int Passes
    {
        get;
        init => field = (int)Guard.Within(value, Si.One, 1, 10000);
    }

    /// <summary>Time they took, 1 s to 1 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Duration Time
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 1, 3600);
    }

    /// <summary>Speed on the display, 0.05 to 8 m/s; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public Speed? Display
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.05, 8);
    }
}
