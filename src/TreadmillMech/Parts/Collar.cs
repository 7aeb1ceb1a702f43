using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The face under the head or nut of a bolt, or a washer there, that rubs while the bolt turns.</summary>
public sealed partial record Collar
{
    /// <summary>Mean diameter of the rubbing face, 3 mm to 80 mm: half of hole and outer edge together.</summary>
    /// <exception cref="OutOfRangeException">The diameter is outside the range.</exception>
    public required Length MeanDiameter
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.003, 0.08);
    }

    /// <summary>Friction under it, 0.02 to 0.6.</summary>
    /// <exception cref="OutOfRangeException">The friction is outside the range.</exception>
    public required double Friction
    {
        get;
        init => field = Guard.Within(value, Si.One, 0.02, 0.6);
    }
}
