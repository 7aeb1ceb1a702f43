using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>A temperature after a run of half an hour or more.</summary>
public sealed partial record TemperatureReading : Reading
{
    /// <summary>Where.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required WarmPlace Place
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Temperature, -20 to 250 deg C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Temperature Temperature
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 250);
    }

    /// <summary>Temperature of the air, -20 to 60 deg C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Temperature Air
    {
        get;
        init => field = Guard.Within(value, Si.Celsius, -20, 60);
    }
}
