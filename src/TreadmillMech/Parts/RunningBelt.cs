using UnitsNet;

namespace TreadmillMech.Parts;

/// <summary>The running belt.</summary>
public sealed partial record RunningBelt
{
    /// <summary>Width, 0.2 m to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside the range.</exception>
    public required Length Width
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.2, 1.2);
    }

    /// <summary>Thickness, 0.5 mm to 6 mm; 2 mm where not given (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside the range.</exception>
    public Length Thickness
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.0005, 0.006);
    } = Si.Length.FromSi(0.002);

    /// <summary>Mass for each area, 0.5 to 8 kg/m2; 2.4 kg/m2 where not given (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The mass is outside the range.</exception>
    public AreaDensity MassPerArea
    {
        get;
        init => field = Guard.Within(value, Si.MassPerArea, 0.5, 8);
    } = Si.MassPerArea.FromSi(2.4);

    /// <summary>
    /// Relaxed force per width at 1 % elongation, as ISO 21181 measures it, 1 to 40 N/mm; null where unknown, as it is on
    /// nearly every machine.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside the range.</exception>
    public ForcePerLength? RelaxedForcePerWidth
    {
        get;
        init => field = Guard.Within(value, Si.ForcePerLength, 1000, 40000);
    }
}
