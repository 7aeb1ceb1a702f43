using System.Globalization;

namespace TreadmillMech;

/// <summary>Heat that warms a body by one kelvin.</summary>
/// <remarks>The units library has no such quantity. The default is zero.</remarks>
public readonly record struct HeatCapacity
{
    private HeatCapacity(double joulesPerKelvin) => JoulesPerKelvin = joulesPerKelvin;

    /// <summary>The capacity in joules for each kelvin.</summary>
    public double JoulesPerKelvin { get; }

    /// <summary>From joules for each kelvin.</summary>
    /// <param name="value">The capacity [J/K].</param>
    public static HeatCapacity FromJoulesPerKelvin(double value) => new(value);

    /// <summary>The capacity with its unit, invariant.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{JoulesPerKelvin:0.####} J/K");
}
