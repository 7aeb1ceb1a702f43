using TreadmillMech.Parts;

namespace TreadmillMech.Service.Events;

/// <summary>How the take-up bolts turn, belt standing still.</summary>
public sealed partial record BoltReading : Reading
{
    /// <summary>How they turn.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required BoltFeel Feel
    {
        get;
        init => field = Guard.Defined(value);
    }
}
