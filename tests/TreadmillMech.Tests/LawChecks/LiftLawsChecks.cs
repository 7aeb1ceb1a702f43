using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class LiftLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(LiftLaws)}.{nameof(LiftLaws.SpanLengthening)}",
            "Pythagoras: half spans of 4 raised by 3 become 5",
            Mark.Derived,
            2,
            1e-12,
            "m",
            () => LiftLaws.SpanLengthening<Real>(3, 8)
        ),
        new(
            $"{nameof(LiftLaws)}.{nameof(LiftLaws.SpanLengthening)}",
            "Python, 40 decimal digits: sqrt(1.35^2 + 4 x 0.03^2) - 1.35",
            Mark.Library,
            1.3326755466249733,
            1e-14,
            "mm",
            () => LiftLaws.SpanLengthening<Real>(0.03, 1.35) / Millimetre
        ),
        new(
            $"{nameof(LiftLaws)}.{nameof(LiftLaws.LiftForce)}",
            "By hand on a 3-4-5 triangle: 1000 N + 5000 N x 0.2/2 = 1500 N at slope 3/5 on both sides, and half of "
                + "10 N/m x 0.8 m",
            Mark.Derived,
            1804,
            1e-9,
            "N",
            () => LiftLaws.LiftForce<Real>(1000, 5000, 0.3, 0.8, 2, 10)
        ),
        new(
            $"{nameof(LiftLaws)}.{nameof(LiftLaws.LiftForce)}",
            "Python: derivative of the loop's elastic energy by the lift, by central difference, and half of the "
                + "span's weight; 1 kN, 360 kN, 30 mm, 1.35 m, loop 2.85 m, 8 N/m",
            Mark.Library,
            109.14985,
            5e-6,
            "N",
            () => LiftLaws.LiftForce<Real>(1000, 360_000, 0.03, 1.35, 2.85, 8)
        ),
        new(
            $"{nameof(LiftLaws)}.{nameof(LiftLaws.LiftForce)}",
            "The trade's rule: at span/64 the force is a sixteenth of the tension (flat angle; 0.05 % at 1/32)",
            Mark.Read,
            1.0 / 16,
            5e-5,
            "1",
            () => LiftLaws.LiftForce<Real>(1, 0, 1.0 / 64, 1, 1, 0)
        ),
    ];
}
