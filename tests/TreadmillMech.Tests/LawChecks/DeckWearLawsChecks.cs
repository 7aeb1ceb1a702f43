using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class DeckWearLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(DeckWearLaws.StribeckFriction),
            "By hand: at the Stribeck speed 1/e of the difference is left",
            Mark.Derived,
            0.2 + (0.15 / Math.E),
            1e-15,
            "1",
            () => DeckWearLaws.StribeckFriction<Real>(0.2, 0.35, 0.1, 0.1)
        ),
        Row(
            nameof(DeckWearLaws.WornVolume),
            "Archard 1953 by hand: K 1e-6, 150 N, 100 km, 300 MPa",
            Mark.Derived,
            5e-08,
            1e-20,
            "m3",
            () => DeckWearLaws.WornVolume<Real>(1e-6, 150, 1e5, 300e6)
        ),
        Row(
            nameof(DeckWearLaws.WornDepth),
            "By hand: 50 mm3 on 0.5 m2",
            Mark.Derived,
            0.1,
            1e-12,
            "um",
            () => DeckWearLaws.WornDepth<Real>(50e-9, 0.5) * 1e6
        ),
        Row(
            nameof(DeckWearLaws.FrictionWorkPerArea),
            "By hand: 0.2 times 784.532 N over 10 km on 0.3 m2",
            Mark.Derived,
            5.23,
            0.0005,
            "MJ/m2",
            () => DeckWearLaws.FrictionWorkPerArea<Real>(0.2, 80 * FreeFall, 1e4, 0.3) / 1e6
        ),
        Row(
            nameof(DeckWearLaws.FinalRise),
            "By hand: 435.9 W carried off at 12 W/K",
            Mark.Derived,
            36.325,
            1e-12,
            "K",
            () => DeckWearLaws.FinalRise<Real>(435.9, 12)
        ),
        Row(
            nameof(DeckWearLaws.MidSpanDeflection),
            "Shigley's Mechanical Engineering Design, 9th ed., table A-9, stiff supports: the trap 5 kip on 8 ft, 30e6 psi, 75 in4; 0.1024 in less the spread 12 kip's 0.0614 in",
            Mark.Derived,
            0.04096,
            5e-6,
            "in",
            () => DeckWearLaws.MidSpanDeflection<Real>(5000, 96, 30e6, 75, 1e30)
        ),
        Row(
            nameof(DeckWearLaws.MidSpanDeflection),
            "By hand: a rigid deck sinks by half of the load over one cushion",
            Mark.Derived,
            4,
            1e-12,
            "mm",
            () => 1000 * DeckWearLaws.MidSpanDeflection<Real>(800, 0.6, 1e30, 1, 1e5)
        ),
        Row(
            nameof(DeckWearLaws.DropForce),
            "By hand: no height, twice the weight",
            Mark.Derived,
            2 * 80 * FreeFall,
            1e-9,
            "N",
            () => DeckWearLaws.DropForce<Real>(80, 0, 1e5)
        ),
        Row(
            nameof(DeckWearLaws.DropForce),
            "By hand: a height of four weights over stiffness gives four times the weight",
            Mark.Derived,
            4 * 80 * FreeFall,
            1e-9,
            "N",
            () => DeckWearLaws.DropForce<Real>(80, 4 * 80 * FreeFall / 1e5, 1e5)
        ),
        Row(
            nameof(DeckWearLaws.StopForce),
            "By hand: 4 kg at 3 m/s on 100 N/m",
            Mark.Derived,
            60,
            1e-12,
            "N",
            () => DeckWearLaws.StopForce<Real>(4, 3, 100)
        ),
        Scipy(nameof(DeckWearLaws.DropForce), "deck.drop", "N", () => DeckWearLaws.DropForce<Real>(80, 0.05, 50e3)),
        Scipy(nameof(DeckWearLaws.StopForce), "deck.stop", "N", () => DeckWearLaws.StopForce<Real>(75, 3.2, 20e3)),
        Scipy(
            nameof(DeckWearLaws.MidSpanDeflection),
            "deck.midspan",
            "m",
            () => DeckWearLaws.MidSpanDeflection<Real>(1000, 0.6, 1e9, 1215e-9, 150e3)
        ),
        new(
            $"{nameof(DeckWearLaws)}.{nameof(DeckWearLaws.RectangleSecondMoment)}",
            "By hand: 600 mm wide, 20 mm thick",
            Mark.Derived,
            40,
            1e-12,
            "cm4",
            () => DeckWearLaws.RectangleSecondMoment<Real>(60, 2)
        ),
        new(
            $"{nameof(DeckWearLaws)}.{nameof(DeckWearLaws.Travel)}",
            "By hand: an hour at 2.5 m/s",
            Mark.Derived,
            9000,
            1e-09,
            "m",
            () => DeckWearLaws.Travel<Real>(2.5, 3600)
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
    ) => new($"{nameof(DeckWearLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(DeckWearLaws)}.{law}", name, unit, compute);
}
