using System.Globalization;
using UnitsNet;

namespace TreadmillMech;

/// <summary>How far a mounting gives way for each newton on it: the reciprocal of its stiffness.</summary>
/// <remarks>The units library has no such quantity. The default is zero: rigid.</remarks>
public readonly record struct Compliance
{
    private Compliance(double metersPerNewton) => MetersPerNewton = metersPerNewton;

    /// <summary>Travel in metres for each newton.</summary>
    public double MetersPerNewton { get; }

    /// <summary>From metres for each newton.</summary>
    /// <param name="value">The compliance [m/N].</param>
    public static Compliance FromMetersPerNewton(double value) => new(value);

    /// <summary>From the stiffness.</summary>
    /// <param name="value">The stiffness, not zero.</param>
    public static Compliance FromStiffness(ForcePerLength value) => new(1 / Si.ForcePerLength.ToSi(value));

    /// <summary>The compliance with its unit, invariant.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{MetersPerNewton:G4} m/N");
}
