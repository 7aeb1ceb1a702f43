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
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.RmsOfRamp)}",
            "Dubey, Fundamentals of Electrical Drives, Ex. 4.3: 0 to 400 kW in 5 min, 500 kW for 5, 400 kW for 4, idle for 2",
            Mark.Transcribed,
            367,
            0.5,
            "kW",
            () =>
                SupplyLaws.RmsOfTwo<Real>(
                    SupplyLaws.RmsOfTwo<Real>(SupplyLaws.RmsOfRamp<Real>(0, 400), 0.5, 500),
                    10.0 / 16,
                    SupplyLaws.RmsOfTwo<Real>(400, 4.0 / 6, 0)
                )
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.RmsOfTwo)}",
            "Dubey, Fundamentals of Electrical Drives, Ex. 4.3, by the mean square 160 000/3 of the ramp",
            Mark.Transcribed,
            367,
            0.5,
            "kW",
            () =>
                SupplyLaws.RmsOfTwo<Real>(
                    SupplyLaws.RmsOfTwo<Real>(400 / Math.Sqrt(3), 0.5, 500),
                    10.0 / 16,
                    SupplyLaws.RmsOfTwo<Real>(400, 4.0 / 6, 0)
                )
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.RmsOfTwo)}",
            "By hand: 7 and 1 for halves of the time",
            Mark.Derived,
            5,
            1e-14,
            "1",
            () => SupplyLaws.RmsOfTwo<Real>(7, 0.5, 1)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.RmsOfRamp)}",
            "By hand: a triangle has its peak over the root of 3",
            Mark.Derived,
            1 / Math.Sqrt(3),
            1e-15,
            "1",
            () => SupplyLaws.RmsOfRamp<Real>(0, 1)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.LastingCurrent)}",
            "US National Electrical Code 210.19 and 210.20: lasting loads at most 80 %, 20 A",
            Mark.Read,
            16,
            1e-12,
            "A",
            () => SupplyLaws.LastingCurrent<Real>(20)
        ),
        new(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.LastingCurrent)}",
            "US National Electrical Code 210.20, the other way: 12 A lasting times 1.25",
            Mark.Derived,
            12,
            1e-12,
            "A",
            () => SupplyLaws.LastingCurrent<Real>(12 * 1.25)
        ),
        Generated.Check(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.RmsOfRamp)}",
            "supply.ramp",
            "1",
            () => SupplyLaws.RmsOfRamp<Real>(2, 9)
        ),
        Generated.Check(
            $"{nameof(SupplyLaws)}.{nameof(SupplyLaws.RmsOfTwo)}",
            "supply.two",
            "1",
            () => SupplyLaws.RmsOfTwo<Real>(3, 0.35, 2)
        ),
    ];
}
