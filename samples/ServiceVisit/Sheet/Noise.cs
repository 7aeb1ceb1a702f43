using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>Whether two values of one reading differ by more than the noise of their readings.</summary>
internal static class Noise
{
    /// <summary>A larger multiple of its standard uncertainty comes of noise alone in about one case of twenty.</summary>
    internal const double Coverage = 2;

    /// <summary>Standard uncertainty of the difference of two values; null where that of one is not known.</summary>
    internal static double? OfDifference(ReadingRow row, Figure one, Figure other) =>
        Of(row, one) is { } a && Of(row, other) is { } b ? Math.Sqrt((a * a) + (b * b)) : null;

    /// <summary>The value's own uncertainty, otherwise that of its meter in the library's options.</summary>
    private static double? Of(ReadingRow row, Figure figure) =>
        figure.StandardUncertainty
        ?? (
            row.Kind is ReadingKind.MotorCurrent or ReadingKind.MainsCurrent
                ? Math.Abs(figure.Value) * VisitOptions.Default.MeterCurrent.Value
            : row.Kind == ReadingKind.MainsPower ? Math.Abs(figure.Value) * VisitOptions.Default.MeterPower.Value
            : null
        );
}
