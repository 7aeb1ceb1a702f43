using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Tension of a drive belt from what its tensioning tells, kind by kind. Machine unplugged, hood open.</summary>
/// <remarks>On fixed centres only a reading of the span tells it, see <see cref="SpanTension"/>.</remarks>
public static class DriveBeltTension
{
    private const double LeastStiffness = 1e3;
    private const double MostStiffness = 1e6;

    /// <summary>Strand tension of a stretch-fit belt.</summary>
    /// <param name="belt">The belt; its pulleys and centre distance.</param>
    /// <param name="stiffness">Force at a strain of one, EA, 1 kN to 1 MN: the belt maker's.</param>
    /// <param name="freeLength">Effective length unstretched, 0.1 m to 3 m.</param>
    /// <returns>The tension; no answer where the belt is not stretched, or the pulleys would overlap.</returns>
    /// <exception cref="ArgumentNullException">The belt is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<Force> OfStretchFit(DriveBelt belt, Force stiffness, Length freeLength)
    {
        double stretching = Stiffness(stiffness);
        double free = Si.Length.ToSi(Guard.Within(freeLength, Si.Length, 0.1, 3, nameof(freeLength)));
        if (!DriveBeltGeometry.Of(belt).Is(out DriveBeltGeometry? geometry))
        {
            return DriveBeltGeometry.Of(belt).Missing;
        }

        double fitted = Si.Length.ToSi(geometry.LoopLength);
        return fitted > free
            ? Si.Force.FromSi(DriveBeltLaws.StretchFitTension<Real>(stretching, fitted, free))
            : new Shortfall(Reason.SlackBelt, nameof(freeLength), fitted, free, "m");
    }

    /// <summary>Strand tension that a spring, or the motor's own weight, keeps through the motor.</summary>
    /// <param name="belt">The belt; its pulleys and centre distance.</param>
    /// <param name="hubForce">Force along the line of both strands' resultant at rest, 1 N to 6 kN.</param>
    /// <returns>Mean tension of both strands; no answer where the pulleys would overlap.</returns>
    /// <exception cref="ArgumentNullException">The belt is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside the range.</exception>
    public static Answer<Force> OfMotorForce(DriveBelt belt, Force hubForce)
    {
        double force = Si.Force.ToSi(Guard.Within(hubForce, Si.Force, 1, 6000, nameof(hubForce)));
        return DriveBeltGeometry
            .Of(belt)
            .Then(geometry =>
                Si.Force.FromSi(DriveBeltLaws.TensionOfHubForce<Real>(force, Si.Angle.ToSi(geometry.MotorPulleyWrap)))
            );
    }

    /// <summary>Tension of the strand on which a sprung idler sits.</summary>
    /// <param name="idlerForce">Force of the idler along the line that halves its wrap, 1 N to 6 kN.</param>
    /// <param name="idlerWrap">Wrap on the idler: by how much it turns the strand, 1 to 180 degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Force OfIdler(Force idlerForce, Angle idlerWrap) =>
        Si.Force.FromSi(
            DriveBeltLaws.TensionOfHubForce<Real>(
                Si.Force.ToSi(Guard.Within(idlerForce, Si.Force, 1, 6000, nameof(idlerForce))),
                Si.Angle.ToSi(Guard.Within(idlerWrap, Si.Angle, Math.PI / 180, Math.PI, nameof(idlerWrap)))
            )
        );

    /// <summary>Tension gained by sliding the motor away before its bolts are locked.</summary>
    /// <param name="belt">The belt; its pulleys and centre distance.</param>
    /// <param name="stiffness">Force at a strain of one, EA, 1 kN to 1 MN: the belt maker's.</param>
    /// <param name="slide">Travel of the motor along the line of centres, -20 mm to 20 mm; positive tightens.</param>
    /// <returns>Gain of strand tension, mountings taken as rigid; no answer where the pulleys would overlap.</returns>
    /// <exception cref="ArgumentNullException">The belt is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<Force> GainOfSlide(DriveBelt belt, Force stiffness, Length slide)
    {
        double stretching = Stiffness(stiffness);
        double travel = Si.Length.ToSi(Guard.Within(slide, Si.Length, -0.02, 0.02, nameof(slide)));
        return DriveBeltGeometry
            .Of(belt)
            .Then(geometry =>
            {
                double angle = LoopLaws.StrandAngle<Real>(
                    0.5 * Si.Length.ToSi(belt.MotorPulleyDiameter),
                    0.5 * Si.Length.ToSi(belt.RollerPulleyDiameter),
                    Si.Length.ToSi(belt.CentreDistance)
                );
                return Si.Force.FromSi(
                    BeltLaws.TensionGain<Real>(
                        stretching,
                        LoopLaws.LengthSlope<Real>(angle) * travel,
                        Si.Length.ToSi(geometry.LoopLength),
                        0
                    )
                );
            });
    }

    private static double Stiffness(Force stiffness) =>
        Si.Force.ToSi(Guard.Within(stiffness, Si.Force, LeastStiffness, MostStiffness, nameof(stiffness)));
}
