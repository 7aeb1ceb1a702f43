using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class BeltLifeLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(BeltLifeLaws.RelaxedTension),
            "By hand: 4 % lost in each of three decades of 1000 N",
            Mark.Derived,
            880,
            1e-12,
            "N",
            () => BeltLifeLaws.RelaxedTension<Real>(1000, 0.04, 3)
        ),
        Row(
            nameof(BeltLifeLaws.WarmTension),
            "By hand: 360 kN times 2e-5 times 25 K is 180 N; 1000 less 180, a tenth softer",
            Mark.Derived,
            738,
            1e-9,
            "N",
            () => BeltLifeLaws.WarmTension<Real>(1000, 360e3, 2e-5, 0.004, 25)
        ),
        Row(
            nameof(BeltLifeLaws.Creep),
            "By hand: stresses of 1.4 and 0.5 MPa in leather of 100 MPa; the strands differ by 0.9 % in length",
            Mark.Derived,
            0.009,
            1e-15,
            "1",
            () => BeltLifeLaws.Creep<Real>(1.4e6 * 1e-3, 0.5e6 * 1e-3, 100e6 * 1e-3)
        ),
        Row(
            nameof(BeltLifeLaws.Creep),
            "By hand, mass flow: a mark spacing of 1.004 on the tight side and 1.001 on the slack side; tolerance: the second order, 0.003 times 0.004",
            Mark.Derived,
            1 - (1.001 / 1.004),
            1.2e-05,
            "1",
            () => BeltLifeLaws.Creep<Real>(4 * 360, 1 * 360, 360e3)
        ),
        Row(
            nameof(BeltLifeLaws.BendingStrain),
            "By hand: outer arc over middle arc, 2 mm on 48 mm",
            Mark.Derived,
            0.04,
            1e-15,
            "1",
            () => BeltLifeLaws.BendingStrain<Real>(0.002, 0.048)
        ),
        Row(
            nameof(BeltLifeLaws.MarkElongation),
            "ISO 21181 by its definition: 1000 mm marks at 1005 mm are 0.5 %",
            Mark.Derived,
            0.5,
            1e-12,
            "%",
            () => 100 * BeltLifeLaws.MarkElongation<Real>(1.005, 1)
        ),
        Row(
            nameof(BeltLifeLaws.DeckEdgeForce),
            "By hand: a belt bent by 60 degrees at each end presses with its tension at each",
            Mark.Derived,
            1000,
            1e-9,
            "N",
            () => BeltLifeLaws.DeckEdgeForce<Real>(500, Degrees(60), Degrees(60))
        ),
        Scipy(
            nameof(BeltLifeLaws.BendingStrain),
            "belt.bending",
            "1",
            () => BeltLifeLaws.BendingStrain<Real>(0.002, 0.046)
        ),
        Scipy(
            nameof(BeltLifeLaws.DeckEdgeForce),
            "belt.edge",
            "N",
            () => BeltLifeLaws.DeckEdgeForce<Real>(800, 0.05, 0.03)
        ),
        new(
            $"{nameof(BeltLifeLaws)}.{nameof(BeltLifeLaws.Decades)}",
            "By hand: a minute to a hundred minutes",
            Mark.Derived,
            2,
            1e-14,
            "1",
            () => BeltLifeLaws.Decades<Real>(60, 6000)
        ),
        new(
            $"{nameof(BeltLifeLaws)}.{nameof(BeltLifeLaws.LeastRollerDiameter)}",
            "By hand: 2 mm at 4 % bends to a middle line of 50 mm",
            Mark.Derived,
            48,
            1e-12,
            "mm",
            () => BeltLifeLaws.LeastRollerDiameter<Real>(2, 0.04)
        ),
        new(
            $"{nameof(BeltLifeLaws)}.{nameof(BeltLifeLaws.DeckEdgeAngle)}",
            "By hand: 1 in the square root of 3 is 30 degrees",
            Mark.Derived,
            30,
            1e-12,
            "deg",
            () => BeltLifeLaws.DeckEdgeAngle<Real>(1, Math.Sqrt(3)) * 180 / Math.PI
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
    ) => new($"{nameof(BeltLifeLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(BeltLifeLaws)}.{law}", name, unit, compute);
}
