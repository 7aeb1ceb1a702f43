using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The loaded part of a take-up bolt as a spring.</summary>
public sealed partial record BoltRod
{
    /// <summary>Length of bolt under load, from head or nut to the nut of the axle, 5 mm to 0.5 m.</summary>
    /// <exception cref="OutOfRangeException">The length is outside the range.</exception>
    public required Length FreeLength
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.005, 0.5);
    }

    /// <summary>Elastic modulus, 50 to 250 GPa.</summary>
    /// <exception cref="OutOfRangeException">The modulus is outside the range.</exception>
    public required Pressure ElasticModulus
    {
        get;
        init => field = Guard.Within(value, Si.Pressure, 5e10, 2.5e11);
    }
}
