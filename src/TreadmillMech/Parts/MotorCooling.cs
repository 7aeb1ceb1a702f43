using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>How a motor gives off its heat. Rarely on a plate: found from a run until the temperature stands.</summary>
public sealed partial record MotorCooling
{
    /// <summary>Heat given off at standstill for each kelvin, 0.05 to 50 W/K.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required ThermalConductance Still
    {
        get;
        init => field = Guard.Within(value, Si.ThermalConductance, 0.05, 50);
    }

    /// <summary>Heat that the shaft's fan adds at rated speed for each kelvin, 0 to 100 W/K; 0 without a fan.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public ThermalConductance Fan
    {
        get;
        init => field = Guard.Within(value, Si.ThermalConductance, 0, 100);
    }

    /// <summary>Rated speed of the motor, 50 to 1500 rad/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public required RotationalSpeed RatedSpeed
    {
        get;
        init => field = Guard.Within(value, Si.RotationalSpeed, 50, 1500);
    }

    /// <summary>Temperature of the air, -20 to 60 deg C; 20 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public Temperature Ambient
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 60);
    } = Si.Celsius.FromSi(20);

    /// <summary>Time constant of heating, 1 min to 10 h; null where not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public Duration? TimeConstant
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 60, 36000);
    }
}
