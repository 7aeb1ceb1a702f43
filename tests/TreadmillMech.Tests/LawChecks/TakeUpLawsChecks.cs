using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class TakeUpLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.CentreDistanceChange)}",
            "By hand: ends moved 1 mm and 2 mm move the middle 1.5 mm; bolts at 60 deg pass on half",
            Mark.Derived,
            0.75,
            1e-12,
            "mm",
            () => TakeUpLaws.CentreDistanceChange<Real>(1 * Millimetre, 2 * Millimetre, Degrees(60)) / Millimetre
        ),
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.Skew)}",
            "By hand: left 0.5 mm ahead of right on 500 mm is one thousandth",
            Mark.Derived,
            1,
            1e-12,
            "mrad",
            () => TakeUpLaws.Skew<Real>(0.8 * Millimetre, 0.3 * Millimetre, 0, 0.5) * 1000
        ),
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.Skew)}",
            "By hand: the same bolts at 60 deg pass on half",
            Mark.Derived,
            0.5,
            1e-12,
            "mrad",
            () => TakeUpLaws.Skew<Real>(0.8 * Millimetre, 0.3 * Millimetre, Degrees(60), 0.5) * 1000
        ),
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.Elongation)}",
            "By hand: a quarter of 1.25 mm on both bolts is 0.625 mm of a 2850 mm loop, 1/4560",
            Mark.Derived,
            100.0 / 4560,
            1e-12,
            "%",
            () => 100 * TakeUpLaws.Elongation<Real>(0.3125 * Millimetre, 0, 2850 * Millimetre)
        ),
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.EdgeStrain)}",
            "By hand: 1 mrad over half of 450 mm lengthens the edge's centres by 0.225 mm, its loop by 0.45 mm of "
                + "2850 mm",
            Mark.Derived,
            100 * 0.45 / 2850,
            1e-12,
            "%",
            () => 100 * TakeUpLaws.EdgeStrain<Real>(1e-3, 450 * Millimetre, 0, 2850 * Millimetre)
        ),
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.BoltForce)}",
            "By hand: 2 kN on two bolts at 60 degrees",
            Mark.Derived,
            500,
            1e-09,
            "N",
            () => TakeUpLaws.BoltForce<Real>(2000, 2, Math.PI / 3)
        ),
        new(
            $"{nameof(TakeUpLaws)}.{nameof(TakeUpLaws.BoltCompliance)}",
            "By hand: a rod of 100 mm, 50 mm2 and 200 GPa takes 100 N/um; two of them side by side",
            Mark.Derived,
            0.005,
            1e-15,
            "um/N",
            () => TakeUpLaws.BoltCompliance<Real>(50e-6, 200e9, 0.1, 2, 0) * 1e6
        ),
    ];
}
