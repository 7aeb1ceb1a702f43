using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Depth of the groove in the deck's foot zone under a straightedge.</summary>
public sealed partial record GrooveReading : Reading
{
    /// <summary>Greatest gap under the straightedge, 0 to 20 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Length Depth
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0, 0.02);
    }
}
