using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class ForeAftLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(ForeAftLaws.WalkingBrakingImpulse),
            "One walker of 72.6 kg on a treadmill, open data (OpenSim project): 0.0256 without the mean of the record, 0.0288 as fitted to both feet; the tolerance spans both",
            Mark.Read,
            0.0272,
            0.0020,
            "s",
            () => ForeAftLaws.WalkingBrakingImpulse<Real>()
        ),
        Row(
            nameof(ForeAftLaws.RunningBrakingImpulse),
            "Measured 0.019 body weights times seconds a step at 3 m/s, 37 and 24 runners (Alcantara et al. 2021), quoted",
            Mark.Memory,
            0.019,
            0.0005,
            "s",
            () => ForeAftLaws.RunningBrakingImpulse<Real>(3)
        ),
        Row(
            nameof(ForeAftLaws.RunningBrakingImpulse),
            "Measured 0.021 body weights times seconds a step at 5 m/s, as above",
            Mark.Memory,
            0.021,
            0.0005,
            "s",
            () => ForeAftLaws.RunningBrakingImpulse<Real>(5)
        ),
        Row(
            nameof(ForeAftLaws.WalkingFourthSine),
            "scipy's least_squares on 14 points of the sum of both feet, the record above: 0.47",
            Mark.Library,
            0.47,
            0.05,
            "1",
            () => ForeAftLaws.WalkingFourthSine<Real>()
        ),
        Row(
            nameof(ForeAftLaws.WalkingBrakingEnd),
            "Change of sign in the record above: 0.59 in the fit of one foot, 0.62 in that of both",
            Mark.Read,
            0.605,
            0.015,
            "1",
            () => ForeAftLaws.WalkingBrakingEnd<Real>()
        ),
        Row(
            nameof(ForeAftLaws.OddSines),
            "By hand: end at 0.4, sin 36 deg over sin 36 deg and a third of sin 72 deg together",
            Mark.Derived,
            0.6496270939773013,
            1e-14,
            "1",
            () => ForeAftLaws.OddSines<Real>(0.4, 0)
        ),
        Row(
            nameof(ForeAftLaws.OddSines),
            "By hand: end at a third, sin 120 deg over a third of sin 60 deg",
            Mark.Derived,
            3,
            1e-14,
            "1",
            () => ForeAftLaws.OddSines<Real>(1.0 / 3, 0)
        ),
        Row(
            nameof(ForeAftLaws.SineSum),
            "By hand: at 30 deg 1/2, sqrt(3)/2, 1 and sqrt(3)/2 of 1, 2, 3 and 4 N",
            Mark.Derived,
            3.5 + (6 * 0.86602540378443865),
            1e-14,
            "N",
            () => ForeAftLaws.SineSum<Real>(0.5, 0.86602540378443865, 1, 2, 3, 4)
        ),
        Row(
            nameof(ForeAftLaws.BrakingPart),
            "By hand: half a sine wave over half the stance, 1/pi",
            Mark.Derived,
            0.318309886183791,
            5e-16,
            "1",
            () => ForeAftLaws.BrakingPart<Real>(0.5, 0.4, 0)
        ),
        Row(
            nameof(ForeAftLaws.BrakingPart),
            "By hand: end at a third, w = 3: 1.5/(2 pi) + 1.5/pi",
            Mark.Derived,
            0.716197243913529,
            5e-15,
            "1",
            () => ForeAftLaws.BrakingPart<Real>(1.0 / 3, 0, 3)
        ),
        Row(
            nameof(ForeAftLaws.BrakingShapePeak),
            "By hand: sin x + sin(2x)/2 is largest at 60 deg, 3 sqrt(3)/4",
            Mark.Derived,
            1.299038105676658,
            1e-12,
            "1",
            () => ForeAftLaws.BrakingShapePeak<Real>(0.5, 0)
        ),
        Row(
            nameof(ForeAftLaws.BrakingShapePeak),
            "scipy.optimize.minimize_scalar, r = 0.45, w = -0.177",
            Mark.Library,
            1.1096516135,
            1e-9,
            "1",
            () => ForeAftLaws.BrakingShapePeak<Real>(0.45, -0.177)
        ),
        Row(
            nameof(ForeAftLaws.SecondSine),
            "By hand: 10 N s in 0.5 s by half a sine wave over half the stance, 20 pi N",
            Mark.Derived,
            62.83185307179586,
            1e-12,
            "N",
            () => ForeAftLaws.SecondSine<Real>(10, 0.5, 1 / Math.PI)
        ),
    ];

    private static LawCheck Row(
        string law,
        string source,
        Mark mark,
        double expected,
        double tolerance,
        string unit,
        Func<double> compute
    ) => new($"{nameof(ForeAftLaws)}.{law}", source, mark, expected, tolerance, unit, compute);
}
