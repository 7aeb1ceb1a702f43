using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The deck under the running belt.</summary>
public sealed partial record Deck
{
    internal const double LeastFriction = 0.02;
    internal const double MostFriction = 1;

    /// <summary>Kinetic friction between belt and deck, 0.02 to 1; null where unknown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The friction is outside the range.</exception>
    public double? Friction
    {
        get;
        init => field = Guard.Within(value, Si.One, LeastFriction, MostFriction);
    }

    /// <summary>Length of the zone under the feet, 0.3 m to 2.5 m; null where not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside the range.</exception>
    public Length? FootZoneLength
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.3, 2.5);
    }

    /// <summary>Width of the zone under the feet, 0.15 m to 1 m; null where not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside the range.</exception>
    public Length? FootZoneWidth
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.15, 1);
    }

    /// <summary>Whether the deck comes waxed from the maker; such a deck takes no lubricant.</summary>
    public bool PreWaxed { get; init; }
}
