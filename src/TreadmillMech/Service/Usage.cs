using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service;

/// <summary>How a machine is used, on the mean.</summary>
public sealed partial record Usage
{
    /// <summary>Running time in a day, averaged over all days, 1 minute to 24 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Duration EachDay
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 60, 86400);
    }

    /// <summary>Mean mass of its users, 10 kg to 350 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Mass MeanMass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 10, 350);
    }

    /// <summary>Mean belt speed, 0.1 to 8 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Speed MeanSpeed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.1, 8);
    }
}
