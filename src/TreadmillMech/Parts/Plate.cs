using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>What the maker's plate or manual says; it comes before any number of this library.</summary>
public sealed partial record Plate
{
    /// <summary>Largest mass of a user, 50 kg to 350 kg; null where the plate is silent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public Mass? LargestUserMass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 50, 350);
    }

    /// <summary>Highest belt speed, 0.5 to 12 m/s; null where the plate is silent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public Speed? HighestSpeed
    {
        get;
        init => field = Guard.Within(value, Si.Speed, 0.5, 12);
    }

    /// <summary>Lubricant for one service, up to 100 mL; null where the plate is silent.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The volume is outside the range.</exception>
    public Volume? LubricantDose
    {
        get;
        init => field = Guard.Within(value, Si.Volume, 0, 1e-4);
    }
}
