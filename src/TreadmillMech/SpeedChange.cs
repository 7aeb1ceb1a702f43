using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>A change of the set speed in the course of a run.</summary>
public sealed record SpeedChange
{
    /// <summary>When it begins, 0 to 1 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public required Duration At
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0, 3600);
    }

    /// <summary>Set speed it leads to, 0 to 8 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public required Speed To
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0, 8);
    }

    /// <summary>How fast the set speed changes, up or down, 0.01 to 20 m/s2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rate is outside the range.</exception>
    public required Acceleration Rate
    {
        get;
        init => field = Guard.Within(value, Si.Acceleration, 0.01, 20);
    }
}
