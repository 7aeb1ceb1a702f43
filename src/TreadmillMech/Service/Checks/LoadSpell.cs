using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>A part of a cycle of loads: from one load to another in a straight line.</summary>
public sealed record LoadSpell
{
    /// <summary>Load at the beginning over the rating, -10 to 10; torque, or current of a direct-current motor.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside the range.</exception>
    public required double From
    {
        get;
        init => field = Guard.Within(value, Si.One, -10, 10);
    }

    /// <summary>Load at the end over the rating, -10 to 10; the same as at the beginning for a steady load.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside the range.</exception>
    public required double To
    {
        get;
        init => field = Guard.Within(value, Si.One, -10, 10);
    }

    /// <summary>How long it lasts, 1 ms to 100 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public required Duration Time
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0.001, 360000);
    }
}
