using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class BeltLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        Generated.Check(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.BendingStiffnessInPlane)}",
            "belt.plane",
            "N m2",
            () => BeltLaws.BendingStiffnessInPlane<Real>(360e3, 0.45)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.Stiffness)}",
            "By hand: 8 N/mm at 1 % on 450 mm is 3600 N at 1 %, hence 360 kN at 100 %",
            Mark.Derived,
            360,
            1e-9,
            "kN",
            () => BeltLaws.Stiffness<Real>(8 / Millimetre, 450 * Millimetre) / 1000
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.StrandTension)}",
            "By hand: 3600 N at 1 %, so 1080 N at 0.3 % in one strand",
            Mark.Derived,
            1080,
            1e-9,
            "N",
            () => BeltLaws.StrandTension<Real>(360_000, 0.003)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.CompliantLength)}",
            "By hand: 1 N more in each strand moves a hub on 2 N/um by 1 um and frees 2 um of loop; 360 kN of belt "
                + "gives 2 um for 1 N over 0.72 m",
            Mark.Derived,
            720,
            1e-9,
            "mm",
            () => BeltLaws.CompliantLength<Real>(360_000, 1 / 2e6) / Millimetre
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.TensionGain)}",
            "By hand: 5 mm on a loop of 2850 mm is 1/570; 360 kN / 570 = 631.579 N on a rigid frame",
            Mark.Derived,
            631.579,
            0.0005,
            "N",
            () => BeltLaws.TensionGain<Real>(360_000, 5 * Millimetre, 2850 * Millimetre, 0)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.TensionGain)}",
            "By hand: hub of 2 N/um in series; x N stretch the belt 2850 x/360 um and move the hub enough to free "
                + "2 x um, together 5000 um: x = 5000/(2850/360 + 2)",
            Mark.Derived,
            504.202,
            0.0005,
            "N",
            () => BeltLaws.TensionGain<Real>(360_000, 5 * Millimetre, 2850 * Millimetre, 720 * Millimetre)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.CentrifugalTension)}",
            "Khurmi and Gupta, Theory of Machines, Ex. 11.10: 600 mm2 at 1000 kg/m3, 25.82 m/s where it is a third of "
                + "1200 N; tolerance: half a unit of the printed speed",
            Mark.Transcribed,
            400,
            2 * 0.6 * 25.82 * 0.005,
            "N",
            () => BeltLaws.CentrifugalTension<Real>(0.6, 25.82)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.CentrifugalTension)}",
            "Khurmi and Gupta, Theory of Machines, Ex. 11.18: 0.35 kg/m, 23.09 m/s where it is a third of 560 N; "
                + "tolerance: half a unit of the printed speed",
            Mark.Transcribed,
            560.0 / 3,
            2 * 0.35 * 23.09 * 0.005,
            "N",
            () => BeltLaws.CentrifugalTension<Real>(0.35, 23.09)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.SpringLoss)}",
            "By hand: mountings worth a quarter of the loop",
            Mark.Derived,
            0.2,
            1e-15,
            "1",
            () => BeltLaws.SpringLoss<Real>(3, 0.75)
        ),
        new(
            $"{nameof(BeltLaws)}.{nameof(BeltLaws.ForcePerWidth)}",
            "ISO 21181, definition: at 1 % the relaxed force itself",
            Mark.Derived,
            8,
            1e-12,
            "N/mm",
            () => BeltLaws.ForcePerWidth<Real>(8, 0.01)
        ),
    ];
}
