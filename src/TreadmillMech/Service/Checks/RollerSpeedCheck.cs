using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Belt speed from the speed of a roller, and what the display makes of it.</summary>
/// <remarks>
/// Take the undriven roller: it does not slip. The driven one tells the belt's speed only where the belt does not slip on it.
/// </remarks>
public sealed record RollerSpeedCheck
{
    /// <summary>Belt speed with its uncertainty.</summary>
    public required Estimate<Speed> Speed { get; init; }

    /// <summary>Error of the display with its uncertainty; positive where it reads high. No answer where it was not read.</summary>
    public required Answer<Estimate<Ratio>> DisplayError { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(RollerSpeedCheck), (nameof(Speed), Speed), (nameof(DisplayError), DisplayError));

    /// <summary>Checks the speed.</summary>
    /// <param name="roller">Speed of the roller, 0.1 to 1000 rad/s.</param>
    /// <param name="diameter">Outside diameter of the roller, 20 mm to 200 mm.</param>
    /// <param name="beltThickness">Thickness of the belt, 0.5 mm to 6 mm.</param>
    /// <param name="display">Speed on the display, 0.05 to 12 m/s; null where not read.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value or its uncertainty is outside its range.</exception>
    public static RollerSpeedCheck Of(
        Estimate<RotationalSpeed> roller,
        Estimate<Length> diameter,
        Estimate<Length> beltThickness,
        Speed? display = null
    )
    {
        (double Value, double Uncertainty)[] readings =
        [
            ReadValue.Read(roller, Si.RotationalSpeed, 0.1, 1000),
            ReadValue.Read(diameter, Si.Length, 0.02, 0.2),
            ReadValue.Read(beltThickness, Si.Length, 0.0005, 0.006),
        ];
        return new()
        {
            Speed = ReadValue.Of(Si.Speed, static x => Belt(x), readings),
            DisplayError = display is { } shown
                ? Error(Si.Speed.ToSi(Guard.Within(shown, Si.Speed, 0.05, 12, nameof(display))), readings)
                : new Shortfall(Reason.InputUnknown, "Display"),
        };
    }

    private static Estimate<Ratio> Error(double shown, (double Value, double Uncertainty)[] readings) =>
        ReadValue.Of(Si.Ratio, x => MeasurementLaws.DisplayError(shown, Belt(x)), readings);

    private static Dual<Real> Belt(Dual<Real>[] x) => MeasurementLaws.SpeedFromRoller(x[0], x[1], x[2]);
}
