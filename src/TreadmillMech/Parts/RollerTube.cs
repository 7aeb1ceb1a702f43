using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The tube of a roller as a beam between its bearings.</summary>
public sealed partial record RollerTube
{
    /// <summary>Outside diameter of the tube that carries, 15 mm to 200 mm; a sleeve of rubber does not count.</summary>
    /// <exception cref="OutOfRangeException">The diameter is outside the range.</exception>
    public required Length OuterDiameter
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.015, 0.2);
    }

    /// <summary>Inside diameter, 0 to 198 mm; 0 for a solid roller.</summary>
    /// <exception cref="OutOfRangeException">The diameter is outside the range.</exception>
    public required Length InnerDiameter
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0, 0.198);
    }

    /// <summary>Distance between the bearings, 0.2 m to 1.5 m.</summary>
    /// <exception cref="OutOfRangeException">The distance is outside the range.</exception>
    public required Length BearingSpan
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.2, 1.5);
    }

    /// <summary>What it is made of; it tells the modulus where that is not given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public TubeMaterial Material
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Elastic modulus, 1 to 250 GPa; null for that of the material, which may be unknown.</summary>
    /// <exception cref="OutOfRangeException">The modulus is outside the range.</exception>
    public Pressure? ElasticModulus
    {
        get;
        init => field = Guard.Within(value, Si.Pressure, 1e9, 2.5e11);
    }

    /// <summary>The modulus given, otherwise that of the material; null where neither is known.</summary>
    public Pressure? ModulusUsed =>
        ElasticModulus
        ?? Material switch
        {
            TubeMaterial.Steel => Si.Pressure.FromSi(207e9),
            TubeMaterial.Aluminium => Si.Pressure.FromSi(71.7e9),
            _ => null,
        };
}
