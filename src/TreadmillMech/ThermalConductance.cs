using System.Globalization;

namespace TreadmillMech;

/// <summary>Heat given off for each kelvin above the surroundings.</summary>
/// <remarks>The units library has no such quantity. The default is zero: no heat leaves.</remarks>
public readonly record struct ThermalConductance
{
    private ThermalConductance(double wattsPerKelvin) => WattsPerKelvin = wattsPerKelvin;

    /// <summary>The conductance in watts for each kelvin.</summary>
    public double WattsPerKelvin { get; }

    /// <summary>From watts for each kelvin.</summary>
    /// <param name="value">The conductance [W/K].</param>
    public static ThermalConductance FromWattsPerKelvin(double value) => new(value);

    /// <summary>The conductance with its unit, invariant.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{WattsPerKelvin:0.####} W/K");
}
