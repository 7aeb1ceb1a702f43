using System.Globalization;

namespace TreadmillMech;

/// <summary>Work done on a surface for each area of it.</summary>
/// <remarks>The units library has no such quantity. The default is zero.</remarks>
public readonly record struct WorkPerArea
{
    private WorkPerArea(double joulesPerSquareMeter) => JoulesPerSquareMeter = joulesPerSquareMeter;

    /// <summary>The work in joules for each square metre.</summary>
    public double JoulesPerSquareMeter { get; }

    /// <summary>From joules for each square metre.</summary>
    /// <param name="value">The work [J/m2].</param>
    public static WorkPerArea FromJoulesPerSquareMeter(double value) => new(value);

    /// <summary>The work with its unit, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{JoulesPerSquareMeter:0.####} J/m2");
}
