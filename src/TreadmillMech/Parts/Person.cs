using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The person on the belt.</summary>
public sealed record Person
{
    /// <summary>Mass, 10 kg to 350 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public required Mass Mass
    {
        get;
        init => field = Guard.Within(value, Si.Mass, 10, 350);
    }

    /// <summary>Cadence: steps of both feet, 0.5 Hz to 5 Hz; null to take the usual one at the speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The cadence is outside the range.</exception>
    public Frequency? Cadence
    {
        get;
        init => field = Guard.Within(value, Si.Frequency, 0.5, 5);
    }
}
