using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>A rolling bearing of a roller.</summary>
public sealed partial record Bearing
{
    /// <summary>Whether it runs on balls; otherwise on rollers.</summary>
    public bool Balls { get; init; } = true;

    /// <summary>Basic dynamic load rating, 0.5 kN to 200 kN; null where unknown, and then only ratios of lives are told.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The rating is outside the range.</exception>
    public Force? DynamicRating
    {
        get;
        init => field = Guard.Within(value, Si.Force, 500, 200000);
    }
}
