using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Voltage at the socket.</summary>
public sealed partial record MainsVoltageReading : Reading
{
    /// <summary>Whether somebody was on the belt.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required LoadState State
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Root mean square voltage, 50 V to 500 V.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required ElectricPotential Voltage
    {
        get;
        init => field = Guard.Within(value, Si.Voltage, 50, 500);
    }
}
