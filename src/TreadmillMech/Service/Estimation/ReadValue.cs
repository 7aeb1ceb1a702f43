using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;

namespace TreadmillMech.Service.Estimation;

/// <summary>Uncertainty of a law of independent readings, by its exact derivatives.</summary>
internal static class ReadValue
{
    /// <summary>A reading as plain numbers; value and uncertainty within the range.</summary>
    internal static (double Value, double Uncertainty) Read<TQuantity>(
        Estimate<TQuantity> reading,
        Dimension<TQuantity> dimension,
        double from,
        double to,
        [CallerArgumentExpression(nameof(reading))] string name = ""
    )
        where TQuantity : struct =>
        (
            dimension.ToSi(Guard.Within(reading.Value, dimension, from, to, name)),
            dimension.ToSi(
                Guard.Within(
                    reading.StandardUncertainty,
                    dimension,
                    0,
                    to,
                    $"{name}.{nameof(reading.StandardUncertainty)}"
                )
            )
        );

    /// <summary>Value of a law and its standard uncertainty.</summary>
    internal static (double Value, double Uncertainty) Of(
        Func<Dual<Real>[], Dual<Real>> law,
        params (double Value, double Uncertainty)[] readings
    )
    {
        Dual<Real>[] arguments = [.. readings.Select(reading => (Dual<Real>)reading.Value)];
        double value = law(arguments).Value;
        double uncertainty = 0;
        for (int i = 0; i < readings.Length; i++)
        {
            arguments[i] = Dual<Real>.Variable(readings[i].Value);
            double slope = law(arguments).Slope;
            uncertainty = MeasurementLaws.CombinedUncertainty<Real>(uncertainty, slope, readings[i].Uncertainty);
            arguments[i] = readings[i].Value;
        }

        return (value, uncertainty);
    }

    /// <summary>The same as a quantity.</summary>
    internal static Estimate<TQuantity> Of<TQuantity>(
        Dimension<TQuantity> dimension,
        Func<Dual<Real>[], Dual<Real>> law,
        params (double Value, double Uncertainty)[] readings
    )
        where TQuantity : struct
    {
        (double value, double uncertainty) = Of(law, readings);
        return new(dimension.FromSi(value), dimension.FromSi(uncertainty));
    }
}
