using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>A roller of the running belt.</summary>
public sealed partial record Roller
{
    internal const double LeastFriction = 0.02;
    internal const double MostFriction = 1.5;

    /// <summary>Outside diameter, 20 mm to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside the range.</exception>
    public required Length Diameter
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.02, 0.2);
    }

    /// <summary>Friction between belt and roller, 0.02 to 1.5; null where unknown. Matters on the drive roller.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The friction is outside the range.</exception>
    public double? Friction
    {
        get;
        init => field = Guard.Within(value, Si.One, LeastFriction, MostFriction);
    }

    /// <summary>
    /// Moment of inertia with all that turns with it, 1e-6 to 1 kg m2; null for that of a steel tube of 3 mm wall as long
    /// as the belt is wide (common practice, no source). Only the slide of a slipping belt depends on it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The moment is outside the range.</exception>
    public MassMomentOfInertia? Inertia
    {
        get;
        init => field = Guard.Within(value, Si.Inertia, 1e-6, 1);
    }

    /// <summary>Force on the hubs for each travel of the mounting, 50 N/mm to 1 MN/mm; null for a rigid frame.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The stiffness is outside the range.</exception>
    public ForcePerLength? HubStiffness
    {
        get;
        init => field = Guard.Within(value, Si.ForcePerLength, 5e4, 1e9);
    }
}
