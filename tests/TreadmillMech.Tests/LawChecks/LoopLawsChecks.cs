using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class LoopLawsChecks
{
    private const string Shigley = "Shigley's Mechanical Engineering Design, solutions to ch. 17: 18 in, 6 in, 96 in";
    private const string Rollers = "Python, open-belt formula: 50 and 45 mm diameters at 1350 mm";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.StrandAngle)}",
            "By hand: a difference of radii of half the centre distance tilts the strand by 30 deg",
            Mark.Derived,
            30,
            1e-12,
            "deg",
            () => LoopLaws.StrandAngle<Real>(0.75, 0.25, 1) / Degrees(1)
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.Wrap)}",
            $"{Shigley}: large pulley",
            Mark.Transcribed,
            3.266674,
            5e-7,
            "rad",
            () => LoopLaws.Wrap(LoopLaws.StrandAngle<Real>(9 * Inch, 3 * Inch, 96 * Inch))
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.Wrap)}",
            $"{Shigley}: small pulley",
            Mark.Transcribed,
            3.016511,
            5e-7,
            "rad",
            () => LoopLaws.Wrap(LoopLaws.StrandAngle<Real>(3 * Inch, 9 * Inch, 96 * Inch))
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.Wrap)}",
            "Khurmi and Gupta, Theory of Machines, Ex 11.6: crossed belt, 450 and 200 mm, 1.95 m: strands and both wraps together",
            Mark.Transcribed,
            4.975,
            5e-4,
            "m",
            () =>
            {
                // A crossed strand tilts by the sum of the radii, and both wraps are the larger ones.
                Real angle = LoopLaws.StrandAngle<Real>(0.225, -0.1, 1.95);
                return (2 * LoopLaws.StrandLength<Real>(1.95, angle)) + (0.325 * LoopLaws.Wrap(angle));
            }
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.StrandLength)}",
            "Pythagoras: sine 3/5 on 5 m leaves 4 m",
            Mark.Derived,
            4,
            1e-12,
            "m",
            () => LoopLaws.StrandLength<Real>(5, Math.Asin(0.6))
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.Length)}",
            Shigley,
            Mark.Transcribed,
            230.074,
            5e-4,
            "in",
            () => LoopLaws.Length<Real>(9 * Inch, 3 * Inch, 96 * Inch) / Inch
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.Length)}",
            Rollers,
            Mark.Library,
            2849.230,
            5e-4,
            "mm",
            () => LoopLaws.Length<Real>(25 * Millimetre, 22.5 * Millimetre, 1.35) / Millimetre
        ),
        new(
            $"{nameof(LoopLaws)}.{nameof(LoopLaws.LengthSlope)}",
            Rollers,
            Mark.Library,
            1.999997,
            5e-7,
            "1",
            () => LoopLaws.LengthSlope(LoopLaws.StrandAngle<Real>(25 * Millimetre, 22.5 * Millimetre, 1.35))
        ),
    ];
}
