using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>How one face wears on its mate. From a test of just this pair: coefficients of others are off by tens.</summary>
public sealed partial record WearPair
{
    /// <summary>Wear coefficient, 0 to 0.01.</summary>
    /// <exception cref="OutOfRangeException">The coefficient is outside the range.</exception>
    public required double Coefficient
    {
        get;
        init => field = Guard.Within(value, Si.One, 0, 0.01);
    }

    /// <summary>Hardness of the face that wears, 1 MPa to 20 GPa.</summary>
    /// <exception cref="OutOfRangeException">The hardness is outside the range.</exception>
    public required Pressure Hardness
    {
        get;
        init => field = Guard.Within(value, Si.Pressure, 1e6, 2e10);
    }
}
