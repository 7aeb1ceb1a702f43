using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>
/// Locked pull: the machine unplugged, its motor held, the belt pulled towards the console by a scale at the middle of the
/// deck until something slides.
/// </summary>
public sealed partial record LockedPullReading : Reading
{
    /// <summary>Pull at which it slid, or the largest one tried where nothing did, 1 to 5000 N.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside the range.</exception>
    public required Force Pull
    {
        get;
        init => field = Guard.Within(value, Si.Force, 1, 5000);
    }

    /// <summary>What slid.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required SlidContact Slid
    {
        get;
        init => field = Guard.Defined(value);
    }
}
