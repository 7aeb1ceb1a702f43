using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>Something that holds the belt by friction where the foot lands: an object drawn in, a body on the deck.</summary>
public sealed record Jam
{
    /// <summary>When it begins, 0 to 1 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public required Duration From
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0, 3600);
    }

    /// <summary>When it ends, 0 to 1 h; null where it lasts to the end of the run.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public Duration? Until
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0, 3600);
    }

    /// <summary>Friction on the belt, 1 N to 20 kN.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside the range.</exception>
    public required Force Friction
    {
        get;
        init => field = Guard.Within(value, Si.Force, 1, 20000);
    }
}
