using System.Globalization;

namespace TreadmillMech;

/// <summary>Bending stiffness of a belt, in newton square metres. The units library has no such quantity.</summary>
public readonly record struct BendingStiffness
{
    private BendingStiffness(double newtonSquareMeters) => NewtonSquareMeters = newtonSquareMeters;

    /// <summary>The stiffness in newton square metres.</summary>
    public double NewtonSquareMeters { get; }

    /// <summary>From newton square metres.</summary>
    /// <param name="value">The stiffness [N m2].</param>
    public static BendingStiffness FromNewtonSquareMeters(double value) => new(value);

    /// <summary>The stiffness with its unit, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{NewtonSquareMeters:0.######} N m2");
}
