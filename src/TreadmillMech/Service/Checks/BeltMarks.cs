using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Elongation of a belt from the distance of two marks on it, and the tension that goes with it.</summary>
public sealed record BeltMarks
{
    /// <summary>Elongation with its uncertainty.</summary>
    public required Estimate<Ratio> Elongation { get; init; }

    /// <summary>
    /// Strand tension with the uncertainty of the marks alone; no answer without the belt's stiffness, or where the marks came
    /// nearer to each other.
    /// </summary>
    public required Answer<Estimate<Force>> Tension { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(BeltMarks), (nameof(Elongation), Elongation), (nameof(Tension), Tension));

    /// <summary>Reads two marks on a machine's belt.</summary>
    /// <param name="machine">The machine; of it the belt.</param>
    /// <param name="reference">Distance of the marks on the relaxed belt, 0.1 m to 5 m.</param>
    /// <param name="distance">Distance of the marks on the tensioned belt, 0.1 m to 5 m.</param>
    /// <param name="readingUncertainty">Standard uncertainty of each distance, 0 to 10 mm.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static BeltMarks Of(Treadmill machine, Length reference, Length distance, Length readingUncertainty)
    {
        ArgumentNullException.ThrowIfNull(machine);
        double before = Si.Length.ToSi(Guard.Within(reference, Si.Length, 0.1, 5, nameof(reference)));
        double now = Si.Length.ToSi(Guard.Within(distance, Si.Length, 0.1, 5, nameof(distance)));
        double spread = Si.Length.ToSi(
            Guard.Within(readingUncertainty, Si.Length, 0, 0.01, nameof(readingUncertainty))
        );
        double strain = BeltLifeLaws.MarkElongation<Real>(now, before);

        // The elongation is a quotient of the two distances, less one.
        double uncertainty =
            (1 + strain) * MeasurementLaws.RelativeUncertaintyOfTwo<Real>(spread / now, spread / before);
        return new()
        {
            Elongation = new(Si.Ratio.FromSi(strain), Si.Ratio.FromSi(uncertainty)),
            Tension =
                strain < 0
                    ? new Shortfall(Reason.ReadingsContradict, "distance of the marks", before, now, "m")
                    : Inquiry
                        .Stiffness(new(machine))
                        .Then(stiffness => new Estimate<Force>(
                            Si.Force.FromSi(BeltLaws.StrandTension<Real>(stiffness, strain)),
                            Si.Force.FromSi(BeltLaws.StrandTension<Real>(stiffness, uncertainty))
                        )),
        };
    }
}
