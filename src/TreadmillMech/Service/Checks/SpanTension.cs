using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Tension of a free span from its sound or from a push at its middle.</summary>
/// <remarks>A short stiff span sounds and feels tighter than it is: as a string it reads high, never low.</remarks>
public sealed record SpanTension
{
    private const double SmallDeflection = 1.0 / 16;

    /// <summary>Tension if the belt were a flexible string: an upper bound.</summary>
    public required Estimate<Force> AsString { get; init; }

    /// <summary>Tension with the belt's bending taken off; no answer where its bending stiffness is not known.</summary>
    public required Answer<Estimate<Force>> Tension { get; init; }

    /// <summary>How much the string reads high, over the tension; no answer where the bending stiffness is not known.</summary>
    public required Answer<Ratio> ReadsHighBy { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(SpanTension),
            (nameof(AsString), AsString),
            (nameof(Tension), Tension),
            (nameof(ReadsHighBy), ReadsHighBy)
        );

    /// <summary>From the lowest frequency of the span, plucked at rest.</summary>
    /// <param name="massPerLength">Mass for each length, 1 g/m to 2 kg/m.</param>
    /// <param name="span">Free length, 30 mm to 3 m.</param>
    /// <param name="frequency">Lowest frequency, 1 Hz to 1 kHz.</param>
    /// <param name="bendingStiffness">Bending stiffness, up to 10 N m2; null where not known.</param>
    /// <returns>The tension; no answer where the bending alone sounds as high.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value or its uncertainty is outside its range.</exception>
    public static Answer<SpanTension> FromFrequency(
        Estimate<LinearDensity> massPerLength,
        Estimate<Length> span,
        Estimate<Frequency> frequency,
        Estimate<BendingStiffness>? bendingStiffness = null
    ) =>
        Of(
            static x => SpanLaws.TensionFromFrequency(x[0], x[1], x[2]),
            static x => SpanLaws.StiffTensionFromFrequency(x[0], x[1], x[2], x[3]),
            bendingStiffness,
            ReadValue.Read(massPerLength, Si.MassPerLength, 0.001, 2),
            ReadValue.Read(span, Si.Length, 0.03, 3),
            ReadValue.Read(frequency, Si.Frequency, 1, 1000)
        );

    /// <summary>From a force at mid-span and the deflection it makes.</summary>
    /// <param name="force">Force, 0.1 N to 1 kN.</param>
    /// <param name="deflection">Deflection, 0.1 mm to 200 mm, at most a sixteenth of the span; a sixty-fourth is usual.</param>
    /// <param name="span">Free length, 30 mm to 3 m.</param>
    /// <param name="bendingStiffness">Bending stiffness, up to 10 N m2; null where not known.</param>
    /// <returns>
    /// The tension; no answer where the deflection is not small against the span, or the bending alone holds the force.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A value or its uncertainty is outside its range.</exception>
    public static Answer<SpanTension> FromDeflection(
        Estimate<Force> force,
        Estimate<Length> deflection,
        Estimate<Length> span,
        Estimate<BendingStiffness>? bendingStiffness = null
    )
    {
        (double Value, double Uncertainty) pushed = ReadValue.Read(force, Si.Force, 0.1, 1000);
        (double Value, double Uncertainty) down = ReadValue.Read(deflection, Si.Length, 1e-4, 0.2);
        (double Value, double Uncertainty) free = ReadValue.Read(span, Si.Length, 0.03, 3);
        return down.Value > SmallDeflection * free.Value
            ? new Shortfall(Reason.NotInRange, nameof(deflection), SmallDeflection * free.Value, down.Value, "m")
            : Of(
                static x => SpanLaws.TensionFromDeflection(x[0], x[1], x[2]),
                static x => SpanLaws.StiffTensionFromDeflection(x[0], x[1], x[2], x[3]),
                bendingStiffness,
                pushed,
                down,
                free
            );
    }

    private static Answer<SpanTension> Of(
        Func<Dual<Real>[], Dual<Real>> flexible,
        Func<Dual<Real>[], Dual<Real>> stiff,
        Estimate<BendingStiffness>? bendingStiffness,
        params (double Value, double Uncertainty)[] readings
    )
    {
        Estimate<Force> asString = ReadValue.Of(Si.Force, flexible, readings);
        if (bendingStiffness is not { } known)
        {
            Shortfall unknown = new(Reason.InputUnknown, nameof(BendingStiffness));
            return new SpanTension
            {
                AsString = asString,
                Tension = unknown,
                ReadsHighBy = unknown,
            };
        }

        Estimate<Force> tension = ReadValue.Of(
            Si.Force,
            stiff,
            [.. readings, ReadValue.Read(known, Si.BendingStiffness, 0, 10)]
        );
        double value = Si.Force.ToSi(tension.Value);
        double high = Si.Force.ToSi(asString.Value);
        return value > 0
            ? new SpanTension
            {
                AsString = asString,
                Tension = tension,
                ReadsHighBy = Si.Ratio.FromSi(MeasurementLaws.DisplayError<Real>(high, value)),
            }
            : new Shortfall(Reason.ReadingsContradict, nameof(BendingStiffness), high - value, high, "N");
    }
}
