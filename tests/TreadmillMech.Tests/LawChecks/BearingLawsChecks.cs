using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class BearingLawsChecks
{
    private const string Mott = "Mott, Machine Elements in Mechanical Design, ch. 14, solutions";

    private const string Faires = "Faires, Design of Machine Elements, solutions, 601: 29 900 lb, 2770 lb, 1500 rpm";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(BearingLaws.BallLife),
            "Wentzell, Machine Design (2004), Ex. 20.1: C 5050 lb, P 2400 lb, 1750 rpm",
            Mark.Transcribed,
            88.73,
            0.005,
            "h",
            () => BearingLaws.LifeTime<Real>(BearingLaws.BallLife<Real>(5050, 2400), Rpm(1750)) / 3600
        ),
        Row(
            nameof(BearingLaws.BallLife),
            Faires,
            Mark.Transcribed,
            1258,
            0.5,
            "million",
            () => BearingLaws.BallLife<Real>(29900, 2770) / 1e6
        ),
        Row(
            nameof(BearingLaws.LifeTime),
            Faires,
            Mark.Transcribed,
            14000,
            500,
            "h",
            () => BearingLaws.LifeTime<Real>(1258e6, Rpm(1500)) / 3600
        ),
        Row(
            nameof(BearingLaws.BallLife),
            $"{Mott}, 2: rating 12 729.11 lb for 20 000 h at 880 rpm under 1250 lb",
            Mark.Transcribed,
            1056,
            0.005,
            "million",
            () => BearingLaws.BallLife<Real>(12729.11, 1250) / 1e6
        ),
        Row(
            nameof(BearingLaws.LifeTime),
            "Wentzell, Machine Design (2004), Ex. 20.1: C 5050 lb, P 2400 lb, 1750 rpm",
            Mark.Transcribed,
            88.73,
            0.005,
            "h",
            () => BearingLaws.LifeTime<Real>(1e6 * Math.Pow(5050.0 / 2400, 3), Rpm(1750)) / 3600
        ),
        Row(
            nameof(BearingLaws.RollerLife),
            "Solutions to Shigley's Mechanical Engineering Design, 11-3: 91.1 kN under 10.279 kN; tolerance: half a unit of 91.1",
            Mark.Transcribed,
            1440,
            1440 * 10.0 / 3 * 0.05 / 91.1,
            "million",
            () => BearingLaws.RollerLife<Real>(91.1, 10.279) / 1e6
        ),
        Row(
            nameof(BearingLaws.BallLifeRatio),
            $"{Mott}, 1: 1675 lb in place of 2350 lb",
            Mark.Transcribed,
            2.76,
            0.005,
            "1",
            () => BearingLaws.BallLifeRatio<Real>(1675, 2350)
        ),
        Row(
            nameof(BearingLaws.BallLifeRatio),
            $"{Mott}, 3: 2200 lb in place of 3150 lb",
            Mark.Transcribed,
            2.94,
            0.005,
            "1",
            () => BearingLaws.BallLifeRatio<Real>(2200, 3150)
        ),
        Row(
            nameof(BearingLaws.BallLifeRatio),
            $"{Mott}, 3: 4500 lb in place of 3150 lb",
            Mark.Transcribed,
            0.343,
            0.0005,
            "1",
            () => BearingLaws.BallLifeRatio<Real>(4500, 3150)
        ),
        Row(
            nameof(BearingLaws.BallLifeRatio),
            "By hand: a tenth more load",
            Mark.Derived,
            0.751,
            0.0005,
            "1",
            () => BearingLaws.BallLifeRatio<Real>(1.1, 1)
        ),
        Row(
            nameof(BearingLaws.RollerLifeRatio),
            "By hand: a tenth more load",
            Mark.Derived,
            0.728,
            0.0005,
            "1",
            () => BearingLaws.RollerLifeRatio<Real>(1.1, 1)
        ),
        Row(
            nameof(BearingLaws.RollerLifeRatio),
            "By hand: an eighth of the load is 2 to the power of 10",
            Mark.Derived,
            1024,
            1e-9,
            "1",
            () => BearingLaws.RollerLifeRatio<Real>(1, 8)
        ),
        Row(
            nameof(BearingLaws.SpectrumLoad),
            "By hand: half of the time each, cubes of 27 and 189 have the mean 108",
            Mark.Derived,
            Math.Cbrt(108),
            1e-12,
            "1",
            () => BearingLaws.SpectrumLoad<Real>(3, 0.5, Math.Cbrt(189))
        ),
        Scipy(
            nameof(BearingLaws.SpectrumLoad),
            "bearing.spectrum",
            "N",
            () => BearingLaws.SpectrumLoad<Real>(900, 0.3, 1500)
        ),
        Scipy(nameof(BearingLaws.RollerLife), "bearing.roller", "1", () => BearingLaws.RollerLife<Real>(12500, 1000)),
        Generated.Check(
            $"{nameof(BearingLaws)}.{nameof(BearingLaws.RollerSpectrumLoad)}",
            "bearing.rollers",
            "N",
            () => BearingLaws.RollerSpectrumLoad<Real>(900, 0.3, 1500)
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
    ) => new($"{nameof(BearingLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(BearingLaws)}.{law}", name, unit, compute);
}
