using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The deck as a board between two supports.</summary>
public sealed partial record DeckBoard
{
    /// <summary>Thickness, 5 mm to 60 mm.</summary>
    /// <exception cref="OutOfRangeException">The thickness is outside the range.</exception>
    public required Length Thickness
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.005, 0.06);
    }

    /// <summary>Width that carries, 0.1 m to 1.2 m.</summary>
    /// <exception cref="OutOfRangeException">The width is outside the range.</exception>
    public required Length Width
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.1, 1.2);
    }

    /// <summary>Distance between the supports, 0.1 m to 2 m.</summary>
    /// <exception cref="OutOfRangeException">The distance is outside the range.</exception>
    public required Length SupportSpan
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.1, 2);
    }

    /// <summary>Elastic modulus in bending, 0.5 to 250 GPa; null where unknown.</summary>
    /// <exception cref="OutOfRangeException">The modulus is outside the range.</exception>
    public Pressure? ElasticModulus
    {
        get;
        init => field = Guard.Within(value, Si.Pressure, 5e8, 2.5e11);
    }

    /// <summary>
    /// Stiffness of what stands under each support line, 5 N/mm to 1 MN/mm; null where unknown. Cushions side by side add up.
    /// </summary>
    /// <exception cref="OutOfRangeException">The stiffness is outside the range.</exception>
    public ForcePerLength? CushionStiffness
    {
        get;
        init => field = Guard.Within(value, Si.ForcePerLength, 5e3, 1e9);
    }
}
