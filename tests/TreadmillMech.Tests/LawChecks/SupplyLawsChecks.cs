using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class SupplyLawsChecks
{
    private const string Fitzgerald =
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.2 (three-phase, 220 V)";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.MainsCurrent)}",
            $"{Fitzgerald}: one phase of 220 V/sqrt 3 at power factor 0.846; 6050.4 W of the whole circuit recomputed "
                + "in Python with complex numbers",
            Mark.Transcribed,
            18.8,
            0.05,
            "A",
            () => SupplyLaws.MainsCurrent<Real>(6050.4 / 3, 220 / Math.Sqrt(3), 0.846)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.MainsPower)}",
            $"{Fitzgerald}: 42.4 N m at 1176 rpm for an efficiency of 86 %; tolerance: half a unit of 86",
            Mark.Transcribed,
            6050.4,
            6050.4 * 0.005 / 0.86,
            "W",
            () => SupplyLaws.MainsPower<Real>(42.4 * Rpm(1176), 0.86, 0)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.MainsPower)}",
            "By hand: 900 W at 90 % and 12 W at rest",
            Mark.Derived,
            1012,
            1e-9,
            "W",
            () => SupplyLaws.MainsPower<Real>(900, 0.9, 12)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.MainsPower)}",
            "By hand: a rectifier feeds nothing back, so braking leaves the 12 W at rest",
            Mark.Derived,
            12,
            0,
            "W",
            () => SupplyLaws.MainsPower<Real>(-900, 0.9, 12)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.MainsCurrent)}",
            "By hand: 1104 W at 230 V and 0.6",
            Mark.Derived,
            8,
            1e-12,
            "A",
            () => SupplyLaws.MainsCurrent<Real>(1104, 230, 0.6)
        ),
    ];
}
