using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Distance of two marks along the running belt, against the same when it was fitted.</summary>
public sealed partial record MarksReading : Reading
{
    /// <summary>Distance now, 0.1 m to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Length Distance
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.1, 10);
    }

    /// <summary>Distance as fitted, 0.1 m to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Length AsFitted
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.1, 10);
    }
}
