using System.Globalization;
using UnitsNet;

namespace TreadmillMech;

/// <summary>
/// Motor constant of a permanent-magnet motor: volt seconds per radian, and just as well newton metres per ampere.
/// </summary>
/// <remarks>The units library has no such quantity. The default is zero, which no motor has.</remarks>
public readonly record struct MotorConstant
{
    private const double RadiansPerSecondInThousandRpm = 1000 * 2 * Math.PI / 60;

    private MotorConstant(double voltSecondsPerRadian) => VoltSecondsPerRadian = voltSecondsPerRadian;

    /// <summary>The constant in volt seconds per radian.</summary>
    public double VoltSecondsPerRadian { get; }

    /// <summary>The constant in newton metres per ampere: the same number.</summary>
    public double NewtonMetersPerAmpere => VoltSecondsPerRadian;

    /// <summary>Voltage that the turning motor makes at a thousand revolutions a minute.</summary>
    public ElectricPotential VoltageAtThousandRpm =>
        Si.Voltage.FromSi(VoltSecondsPerRadian * RadiansPerSecondInThousandRpm);

    /// <summary>From volt seconds per radian.</summary>
    /// <param name="value">The constant [V s/rad].</param>
    public static MotorConstant FromVoltSecondsPerRadian(double value) => new(value);

    /// <summary>From newton metres per ampere.</summary>
    /// <param name="value">The constant [N m/A].</param>
    public static MotorConstant FromNewtonMetersPerAmpere(double value) => new(value);

    /// <summary>From the voltage at a thousand revolutions a minute, as plates give it.</summary>
    /// <param name="value">The voltage.</param>
    public static MotorConstant FromVoltageAtThousandRpm(ElectricPotential value) =>
        new(Si.Voltage.ToSi(value) / RadiansPerSecondInThousandRpm);

    /// <summary>The constant with its unit, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{VoltSecondsPerRadian:0.####} V s/rad");
}
