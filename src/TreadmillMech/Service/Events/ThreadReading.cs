using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Thread left on the take-up bolts for tightening, measured at this visit.</summary>
public sealed partial record ThreadReading : Reading
{
    /// <summary>Length left on the shorter side, 0 to 0.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Length Left
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0, 0.2);
    }
}
