using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class TrackingLawsChecks
{
    private const string Bvp =
        "Beam in tension, y'''' = z2 y'', clamped at 0, slope 1 and no moment at 1, solved with scipy solve_bvp: "
        + "2 y(1) - 1";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Generated.Check(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.OffCentreDrift)}",
            "track.near",
            "mm/m",
            () => 1000 * TrackingLaws.OffCentreDrift<Real>(16, 0.45, 1.35, 2.85, 6075)
        ),
        Generated.Check(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.OffCentreDrift)}",
            "track.far",
            "mm/m",
            () => 1000 * TrackingLaws.OffCentreDrift<Real>(16, 1.1, 1.35, 2.85, 6075)
        ),
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
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.SettledOffset)}",
            "By hand: 0.4 mm for each metre against 15 m",
            Mark.Derived,
            6,
            1e-12,
            "mm",
            () => 1000 * TrackingLaws.SettledOffset<Real>(4e-4, 15)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.OffsetAfter)}",
            "By hand: from 10 mm towards 2 mm, the natural logarithm of 4 times the crown length",
            Mark.Derived,
            4,
            1e-12,
            "mm",
            () => 1000 * TrackingLaws.OffsetAfter<Real>(0.010, 0.002, 12 * Math.Log(4), 12)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.ObservedGain)}",
            "By hand: a string of 1.35 m in a loop of 2.7 m drifts by half of the skew",
            Mark.Derived,
            1,
            1e-12,
            "1",
            () => TrackingLaws.ObservedGain<Real>(1e-3, 2e-3, 1.35, 2.7)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.ObservedGain)}",
            "By hand: the stiff belt goes a third of that",
            Mark.Derived,
            1.0 / 3,
            1e-12,
            "1",
            () => TrackingLaws.ObservedGain<Real>(1e-3 / 3, 2e-3, 1.35, 2.7)
        ),
        Generated.Check(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.OffsetAfter)}",
            "track.offset",
            "mm",
            () => 1000 * TrackingLaws.OffsetAfter<Real>(-0.004, 0.0096, 20, 12)
        ),
        Generated.Check(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.SettledOffset)}",
            "track.settled",
            "mm",
            () => 1000 * TrackingLaws.SettledOffset<Real>(0.0008, 12)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.LengthToOffset)}",
            "By hand: from 10 mm towards 2 mm, 4 mm after the natural logarithm of 4 times the crown length",
            Mark.Derived,
            16.635532333,
            5e-9,
            "m",
            () => TrackingLaws.LengthToOffset<Real>(0.010, 0.002, 0.004, 12)
        ),
        Generated.Check(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.LengthToOffset)}",
            "track.length",
            "m",
            () => TrackingLaws.LengthToOffset<Real>(-0.004, 0.0096, 0.006, 12)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.CrownLength)}",
            "By hand: an offset halved in 12 ln 2 m",
            Mark.Derived,
            12,
            1e-9,
            "m",
            () => TrackingLaws.CrownLength<Real>(0.008, 0, 0.004, 8.317766166719343)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.LengthAtSteadyDrift)}",
            "By hand: 18 mm at half a millimetre a metre",
            Mark.Derived,
            36,
            1e-9,
            "m",
            () => TrackingLaws.LengthAtSteadyDrift<Real>(0.002, 0.020, 0.0005)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.OffsetAtSteadyDrift)}",
            "By hand: from 2 mm, half a millimetre a metre, 36 m",
            Mark.Derived,
            20,
            1e-12,
            "mm",
            () => 1000 * TrackingLaws.OffsetAtSteadyDrift<Real>(0.002, 0.0005, 36)
        ),
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.TurnsLeft)}",
            "By hand: a quarter turn brought 3 mm a metre down to 1, an eighth is left",
            Mark.Derived,
            0.125,
            1e-15,
            "1",
            () => TrackingLaws.TurnsLeft<Real>(0.25, 3, 1)
        ),
    ];

    /// <summary>A belt three times as long as wide, with the strain that gives it the slenderness.</summary>
    private static LawCheck Beam(double slenderness, double expected) =>
        new(
            $"{nameof(TrackingLaws)}.{nameof(TrackingLaws.BeamFactor)}",
            FormattableString.Invariant($"{Bvp}, z = {slenderness}"),
            Mark.Library,
            expected,
            5e-8,
            "1",
            () => TrackingLaws.BeamFactor<Real>(1.35, 0.45, slenderness * slenderness / 108)
        );
}
