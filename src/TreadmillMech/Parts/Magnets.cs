using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>What warm magnets do to the motor constant.</summary>
public sealed partial record Magnets
{
    /// <summary>Flux lost for each kelvin, 0 to 1 %; about 0.2 % for ferrite, from memory.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The loss is outside the range.</exception>
    public required Ratio LossPerKelvin
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, 0, 0.01);
    }

    /// <summary>Temperature of the magnets at which the motor constant holds, -20 to 200 deg C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public required Temperature ConstantTemperature
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 200);
    }

    /// <summary>Temperature of the magnets now, -20 to 200 deg C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the range.</exception>
    public required Temperature Temperature
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 200);
    }
}
