using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Length of the shortest brush of the motor, machine unplugged.</summary>
public sealed partial record BrushReading : Reading
{
    /// <summary>Length left, 0 to 60 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Length Left
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0, 0.06);
    }

    /// <summary>Least length by the maker, 1 mm to 60 mm; null where not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public Length? Least
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.001, 0.06);
    }
}
