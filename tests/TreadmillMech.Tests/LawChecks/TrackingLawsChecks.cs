using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class TrackingLawsChecks
{
    private const string Bvp =
        "Beam in tension, y'''' = z2 y'', clamped at 0, slope 1 and no moment at 1, solved with scipy solve_bvp: "
        + "2 y(1) - 1";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.StringDrift)}",
            "By hand: a string shifts phi C at the skewed roller and nothing at the other in one loop of 2 C + 2 pi r; "
                + "1 mrad, 1.35 m, r 25 mm",
            Mark.Derived,
            0.472510456,
            5e-10,
            "mm/m",
            () => 1000 * TrackingLaws.StringDrift<Real>(1e-3, 1.35, 2.7 + (2 * Math.PI * 0.025))
        ),
        Beam(0.1, 0.3335555),
        Beam(0.5, 0.3388397),
        Beam(1, 0.3547875),
        Beam(2, 0.4110264),
        Beam(5, 0.6218918),
        Beam(20, 0.9000000),
    ];

    /// <summary>A belt three times as long as wide, with the strain that gives it the slenderness.</summary>
    private static LawCheck Beam(double slenderness, double expected) =>
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.BeamFactor)}",
            $"{Bvp}, z = {slenderness}",
            Mark.Library,
            expected,
            5e-8,
            "1",
            () => TrackingLaws.BeamFactor<Real>(1.35, 0.45, slenderness * slenderness / 108)
        );
}
