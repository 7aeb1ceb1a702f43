using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Current in one mains lead. It tells how far the branch circuit is loaded, not the torque of the motor.</summary>
public sealed partial record MainsCurrentReading : Reading
{
    /// <summary>Whether somebody was on the belt.</summary>
    public required LoadState State { get; init; }

    /// <summary>The current, 0 to 63 A.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the range.</exception>
    public required ElectricCurrent Current
    {
        get;
        init => field = Guard.Within(value, Si.Current, 0, 63);
    }

    /// <summary>Belt speed, 0.1 to 8 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public required Speed BeltSpeed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.1, 8);
    }

    /// <summary>What the meter was set to read.</summary>
    public required CurrentForm Form { get; init; }

    /// <summary>How the meter forms its value.</summary>
    public required MeterResponse Response { get; init; }
}
