using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Time in which the empty belt comes to rest after the safety key is pulled.</summary>
public sealed partial record CoastDownReading : Reading
{
    /// <summary>Speed at which the key was pulled, 0.2 to 8 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Speed From
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.2, 8);
    }

    /// <summary>Time to rest, 0.1 s to 120 s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Duration Time
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0.1, 120);
    }
}
