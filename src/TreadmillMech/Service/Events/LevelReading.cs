using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Slope of the frame across the belt.</summary>
public sealed partial record LevelReading : Reading
{
    /// <summary>Slope across, -10 % to 10 %; positive where the right side is high.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Ratio Across
    {
        get;
        init => field = Guard.Within(value, Si.Ratio, -0.1, 0.1);
    }
}
