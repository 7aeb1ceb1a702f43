using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech;

/// <summary>One step in the course of a run that differs from the gait.</summary>
public sealed record UnusualStep
{
    /// <summary>The first foot that lands at this time or after it, 0 to 1 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside the range.</exception>
    public required Duration At
    {
        get;
        init => field = Guard.Within(value, Si.Duration, 0, 3600);
    }

    /// <summary>Peak of its braking push in body weights, 0 to 2; null for the gait's.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The peak is outside the range.</exception>
    public double? BrakingPeak
    {
        get;
        init => field = Guard.Within(value, Si.One, 0, 2);
    }

    /// <summary>Its normal force over the gait's, 0.1 to 3; 1 where not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside the range.</exception>
    public double NormalForce
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.1, 3);
    } = 1;

    /// <summary>Whether it brakes from strike to toe-off, without a push-off: the foot of somebody who stumbles.</summary>
    public bool BrakesAllAlong { get; init; }
}
