using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Current in the motor's lead. It goes with torque.</summary>
/// <remarks>
/// Two unloaded readings with voltage and motor speed give the motor constant. Only a meter that reads direct current, and
/// was zeroed, tells anything here: an alternating-current clamp sees the ripple alone.
/// </remarks>
public sealed partial record MotorCurrentReading : Reading
{
    /// <summary>Whether somebody was on the belt.</summary>
    public required LoadState State { get; init; }

    /// <summary>The current, 0 to 100 A.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the range.</exception>
    public required ElectricCurrent Current
    {
        get;
        init => field = Guard.Within(value, Si.Current, 0, 100);
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

    /// <summary>Whether the meter was zeroed before.</summary>
    public required bool Zeroed { get; init; }

    /// <summary>Voltage at the motor's terminals, 1 to 500 V; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is outside the range.</exception>
    public ElectricPotential? Voltage
    {
        get;
        init => field = Guard.Within(value, Si.Voltage, 1, 500);
    }

    /// <summary>Speed of the motor, 1 to 1500 rad/s; null where not read.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public RotationalSpeed? MotorSpeed
    {
        get;
        init => field = Guard.Within(value, Si.RotationalSpeed, 1, 1500);
    }

    /// <summary>Mass of the user, 10 kg to 350 kg; null for the person of the test demand.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public Mass? UserMass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 10, 350);
    }
}
