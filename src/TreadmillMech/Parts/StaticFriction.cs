using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>Friction of belt on deck at rest, and how fast it falls to the kinetic one.</summary>
public sealed partial record StaticFriction
{
    /// <summary>Friction at rest, 0.02 to 1.</summary>
    /// <exception cref="OutOfRangeException">The friction is outside the range.</exception>
    public required double AtRest
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.02, 1);
    }

    /// <summary>Sliding speed at which its excess over the kinetic friction has fallen to 1/e, 1 mm/s to 2 m/s; null where unknown.</summary>
    /// <exception cref="OutOfRangeException">The speed is outside the range.</exception>
    public Speed? StribeckSpeed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.001, 2);
    }
}
