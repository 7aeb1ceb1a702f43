using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class HubLawsChecks
{
    private const string Law = $"{nameof(HubLaws)}.{nameof(HubLaws.HubLoad)}";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Generated.Check(
            $"{nameof(HubLaws)}.{nameof(HubLaws.SideLoad)}",
            "hub.side",
            "N",
            () => HubLaws.SideLoad<Real>(2000, 300, 0.1, 0.56)
        ),
        new(
            Law,
            "Wentzell, Machine Design (2004), Ex. 14.1: 2 hp at 2450 rpm (63 000), radius 3 in, slack side 10 lb, "
                + "180 deg",
            Mark.Transcribed,
            37.14,
            0.005,
            "lb",
            () =>
                HubLaws.HubLoad<Real>((10 + (63_000.0 * 2 / 2450 / 3)) * PoundForce, 10 * PoundForce, Math.PI)
                / PoundForce
        ),
        new(
            Law,
            "By hand: 1080 N in both strands of a half turn",
            Mark.Derived,
            2160,
            1e-9,
            "N",
            () => HubLaws.HubLoad<Real>(1080, 1080, Math.PI)
        ),
        new(
            Law,
            "Pythagoras: 3 and 4 square to each other make 5",
            Mark.Derived,
            5,
            1e-12,
            "N",
            () => HubLaws.HubLoad<Real>(3, 4, Math.PI / 2)
        ),
        new(
            Law,
            "Components added in Python: 1000 N and 600 N, strands 30 deg from parallel",
            Mark.Library,
            1548.94496,
            5e-6,
            "N",
            () => HubLaws.HubLoad<Real>(1000, 600, Degrees(150))
        ),
        new(
            $"{nameof(HubLaws)}.{nameof(HubLaws.NearBearingLoad)}",
            "By hand: pulley half a spacing outside",
            Mark.Derived,
            450,
            1e-12,
            "N",
            () => HubLaws.NearBearingLoad<Real>(300, 0.05, 0.1)
        ),
        new(
            $"{nameof(HubLaws)}.{nameof(HubLaws.FarBearingLoad)}",
            "By hand: pulley half a spacing outside",
            Mark.Derived,
            150,
            1e-12,
            "N",
            () => HubLaws.FarBearingLoad<Real>(300, 0.05, 0.1)
        ),
    ];
}
