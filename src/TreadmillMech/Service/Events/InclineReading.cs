using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Grade of the deck from rise and run, against the display.</summary>
public sealed partial record InclineReading : Reading
{
    /// <summary>Grade measured, floor's slope taken off, -20 % to 50 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Ratio Measured
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, -0.2, 0.5);
    }

    /// <summary>Grade on the display, -20 % to 50 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Ratio Display
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, -0.2, 0.5);
    }
}
