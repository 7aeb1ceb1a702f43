using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Power from the mains, read on a plug-in meter. It goes with torque times speed.</summary>
public sealed partial record MainsPowerReading : Reading
{
    /// <summary>Whether somebody was on the belt.</summary>
    public required LoadState State { get; init; }

    /// <summary>The power, 0 to 5000 W.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside the range.</exception>
    public required Power Power
    {
        get;
        init => field = Guard.Within(value, Si.Power, 0, 5000);
    }

    /// <summary>Belt speed, 0.1 to 8 m/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public required Speed BeltSpeed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.1, 8);
    }

    /// <summary>Mass of the user, 10 kg to 350 kg; null for the person of the test demand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public Mass? UserMass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 10, 350);
    }
}
