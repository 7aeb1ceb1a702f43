using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Speed ratio of a drive belt from measured pulleys, with its error.</summary>
/// <remarks>
/// The belt's cord runs outside of the effective diameter. The small pulley gains more by that than the large one, so
/// effective diameters tell too large a ratio.
/// </remarks>
public sealed record SpeedRatioCheck
{
    /// <summary>Motor speed over roller speed by the diameters as given.</summary>
    public required Estimate<double> Ratio { get; init; }

    /// <summary>The same by pitch diameters; no answer where the section is not known.</summary>
    public required Answer<Estimate<double>> PitchRatio { get; init; }

    /// <summary>Error of the first against the second; no answer where the section is not known.</summary>
    public required Answer<Ratio> ErrorOfEffective { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(SpeedRatioCheck),
            (nameof(Ratio), Ratio),
            (nameof(PitchRatio), PitchRatio),
            (nameof(ErrorOfEffective), ErrorOfEffective)
        );

    /// <summary>The ratio of two pulleys.</summary>
    /// <param name="motorPulley">Effective diameter of the motor's pulley, 10 mm to 150 mm.</param>
    /// <param name="rollerPulley">Effective diameter of the roller's pulley, 20 mm to 300 mm.</param>
    /// <param name="section">Section of the ribs; null where not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static SpeedRatioCheck Of(
        Estimate<Length> motorPulley,
        Estimate<Length> rollerPulley,
        RibSection? section = null
    )
    {
        (double Value, double Uncertainty) motor = ReadValue.Read(motorPulley, Si.Length, 0.01, 0.15);
        (double Value, double Uncertainty) roller = ReadValue.Read(rollerPulley, Si.Length, 0.02, 0.3);
        Answer<double> differential = section is { } known
            ? Si.Length.ToSi(RibSections.LineDifferential(known))
            : new Shortfall(Reason.InputUnknown, nameof(DriveBelt.Section));
        return new()
        {
            Ratio = ReadValue.Of(Si.One, static x => DriveBeltLaws.SpeedRatio(x[0], x[1]), motor, roller),
            PitchRatio = differential.Then(b => ReadValue.Of(Si.One, x => AtPitch(x[0], x[1], b), motor, roller)),
            ErrorOfEffective = differential.Then(b =>
                Si.Ratio.FromSi(
                    MeasurementLaws.DisplayError<Real>(
                        DriveBeltLaws.SpeedRatio<Real>(motor.Value, roller.Value),
                        AtPitch(motor.Value, roller.Value, b).Value
                    )
                )
            ),
        };
    }

    /// <summary>Error of the ratio where both diameters are taken too large by one length, such as a caliper over the ribs.</summary>
    /// <param name="motorPulley">True diameter of the motor's pulley, 10 mm to 150 mm.</param>
    /// <param name="rollerPulley">True diameter of the roller's pulley, 20 mm to 300 mm.</param>
    /// <param name="tooLarge">Length by which both are taken too large, -10 mm to 10 mm.</param>
    /// <returns>Relative error, to first order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Ratio ErrorOf(Length motorPulley, Length rollerPulley, Length tooLarge) =>
        Si.Ratio.FromSi(
            DriveBeltLaws.SpeedRatioError<Real>(
                Si.Length.ToSi(Guard.Within(motorPulley, Si.Length, 0.01, 0.15, nameof(motorPulley))),
                Si.Length.ToSi(Guard.Within(rollerPulley, Si.Length, 0.02, 0.3, nameof(rollerPulley))),
                Si.Length.ToSi(Guard.Within(tooLarge, Si.Length, -0.01, 0.01, nameof(tooLarge)))
            )
        );

    private static Dual<Real> AtPitch(Dual<Real> motor, Dual<Real> roller, double differential) =>
        DriveBeltLaws.SpeedRatio(
            DriveBeltLaws.PitchDiameter<Dual<Real>>(motor, differential),
            DriveBeltLaws.PitchDiameter<Dual<Real>>(roller, differential)
        );
}
