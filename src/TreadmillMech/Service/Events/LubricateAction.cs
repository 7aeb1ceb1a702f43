using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Lubricant put between belt and deck.</summary>
public sealed partial record LubricateAction : VisitEvent
{
    /// <summary>Volume, above 0 to 200 mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The volume is outside the range.</exception>
    public required Volume Volume
    {
        get;
        init => field = Guard.Within(value, Si.Volume, 1e-8, 2e-4);
    }
}
