using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>
/// The speed controller of a drive: a PI controller that asks for a current, and a loop that brings the current there.
/// </summary>
/// <remarks>Gains are rarely on a plate. They are found by matching a recorded speed, or asked from the maker.</remarks>
public sealed partial record SpeedController
{
    /// <summary>Where the speed is measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required SpeedSensor Sensor
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Current asked for at an error of one metre per second of belt speed, 0.1 to 1000 A.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside the range.</exception>
    public required ElectricCurrent Gain
    {
        get;
        init => field = Guard.Within(value, Si.Current, 0.1, 1000);
    }

    /// <summary>Integral time: a lasting error has doubled the current after it, 10 ms to 100 s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public required Duration IntegralTime
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0.01, 100);
    }

    /// <summary>
    /// Time constant of the current, 0.5 ms to 100 ms; 5 ms where not given (common practice, no source). It is much faster
    /// than the speed and matters little.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public Duration CurrentTime
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0.0005, 0.1);
    } = Si.Duration.FromSi(0.005);
}
