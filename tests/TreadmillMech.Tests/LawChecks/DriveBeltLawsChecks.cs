using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class DriveBeltLawsChecks
{
    private const string Khurmi = "Khurmi and Gupta, Theory of Machines";

    // Small pulley of Ex. 11.16: sin a = (200 - 125)/2000.
    private static readonly double Wrap = Math.PI - (2 * Math.Asin(0.0375));

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTensionSum)}",
            $"{Khurmi}, Ex. 11.12: initial tension 2000 N, mu 0.3, 150 deg, radius 0.2 m, 500 rpm",
            Mark.Transcribed,
            15.7,
            0.05,
            "kW",
            () => DriveBeltLaws.CapacityOfTensionSum<Real>(4000, Math.Exp(0.3 * Degrees(150))) * 0.2 * Rpm(500) / 1000
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTensionSum)}",
            $"{Khurmi}, Ex. 11.16: initial tension 10 % up gives 10 % more power",
            Mark.Transcribed,
            10,
            0.5,
            "%",
            () =>
                100
                * (
                    (
                        DriveBeltLaws.CapacityOfTensionSum<Real>(1100, Math.Exp(0.4 * Wrap))
                        / DriveBeltLaws.CapacityOfTensionSum<Real>(1000, Math.Exp(0.4 * Wrap))
                    ) - 1
                )
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTensionSum)}",
            $"{Khurmi}, Ex. 11.16: friction 10 % up gives 7.6 % more power at the same initial tension",
            Mark.Transcribed,
            7.6,
            0.05,
            "%",
            () =>
                100
                * (
                    (
                        DriveBeltLaws.CapacityOfTensionSum<Real>(1000, Math.Exp(0.44 * Wrap))
                        / DriveBeltLaws.CapacityOfTensionSum<Real>(1000, Math.Exp(0.4 * Wrap))
                    ) - 1
                )
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfSlackSide)}",
            $"{Khurmi}, Ex. 11.5: 2.5 turns at mu 0.25, 177.33 N hold 9000 N; tolerance: half a unit of 177.33",
            Mark.Transcribed,
            9000 - 177.33,
            0.26,
            "N",
            () => DriveBeltLaws.CapacityOfSlackSide<Real>(177.33, Math.Exp(0.25 * 5 * Math.PI))
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTightSide)}",
            $"{Khurmi}, Ex. 11.4: 0.6 m at 200 rpm, mu 0.25, 160 deg, tight side 2500 N",
            Mark.Transcribed,
            7.89,
            0.005,
            "kW",
            () => DriveBeltLaws.CapacityOfTightSide<Real>(2500, Math.Exp(0.25 * Degrees(160))) * 0.3 * Rpm(200) / 1000
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTightSide)}",
            $"{Khurmi}, Ex. 11.10: 1200 N less a third for the centrifugal part, mu 0.3, 120 deg, 25.82 m/s",
            Mark.Transcribed,
            9.64,
            0.005,
            "kW",
            () => DriveBeltLaws.CapacityOfTightSide<Real>(800, Math.Exp(0.3 * Degrees(120))) * 25.82 / 1000
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTightSide)}",
            $"{Khurmi}, Ex. 11.16: 400 and 250 mm at 2 m, mu 0.4, tight side 1200 N, 10 m/s",
            Mark.Transcribed,
            8.48,
            0.005,
            "kW",
            () => DriveBeltLaws.CapacityOfTightSide<Real>(1200, Math.Exp(0.4 * Wrap)) * 10 / 1000
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CapacityOfTightSide)}",
            $"{Khurmi}, Ex. 11.18: V-belt in a 30 deg groove, 560 N less a third, mu 0.15, 140 deg, 23.09 m/s",
            Mark.Transcribed,
            6.53,
            0.005,
            "kW",
            () =>
                DriveBeltLaws.CapacityOfTightSide<Real>(
                    560 * 2.0 / 3,
                    Math.Exp(TractionLaws.WedgedFriction<Real>(0.15, Degrees(15)) * Degrees(140))
                )
                * 23.09
                / 1000
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.CircumferentialForce)}",
            "Wentzell, Machine Design (2004), Ex. 14.1: 2 hp at 2450 rpm (63 000) at a radius of 3 in; shaft pull "
                + "37.14 lb less twice the slack side's 10 lb",
            Mark.Transcribed,
            37.14 - 20,
            0.005,
            "lb",
            () =>
                DriveBeltLaws.CircumferentialForce<Real>(63_000.0 * 2 / 2450 * PoundForce, 1 * Inch, 3 * Inch)
                / PoundForce
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.StretchFitTension)}",
            "By hand: 40 kN stretched by 1.5 %",
            Mark.Derived,
            600,
            1e-9,
            "N",
            () => DriveBeltLaws.StretchFitTension<Real>(40e3, 1.015, 1)
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.SpeedRatio)}",
            $"{Khurmi}, Ex. 11.1: 150 rpm on 750 and 450 mm, then 900 and 150 mm, no slip",
            Mark.Transcribed,
            1500,
            0.5,
            "rpm",
            () => 150 / DriveBeltLaws.SpeedRatio<Real>(750, 450) / DriveBeltLaws.SpeedRatio<Real>(900, 150)
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.SpeedRatioError)}",
            "By hand: 30 and 90 mm, both 1 mm larger: 1/90 - 1/30",
            Mark.Derived,
            -1.0 / 45,
            1e-15,
            "1",
            () => DriveBeltLaws.SpeedRatioError<Real>(30, 90, 1)
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.SpeedRatioError)}",
            "By hand: the ratio of 30.03 and 90.03 mm against that of 30 and 90 mm; tolerance: the second order",
            Mark.Derived,
            (90.03 / 30.03 / 3) - 1,
            1e-6,
            "1",
            () => DriveBeltLaws.SpeedRatioError<Real>(30, 90, 0.03)
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.TensionOfHubForce)}",
            "By hand: half a turn shares the force between two strands",
            Mark.Derived,
            250,
            1e-12,
            "N",
            () => DriveBeltLaws.TensionOfHubForce<Real>(500, Math.PI)
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.TensionOfHubForce)}",
            "By hand: three equal forces at 120 degrees",
            Mark.Derived,
            500,
            1e-9,
            "N",
            () => DriveBeltLaws.TensionOfHubForce<Real>(500, Degrees(60))
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.RibbedWidth)}",
            "By hand: six ribs at 3.56 mm",
            Mark.Derived,
            21.36,
            1e-12,
            "mm",
            () => DriveBeltLaws.RibbedWidth<Real>(3.56, 6)
        ),
        new(
            $"{nameof(DriveBeltLaws)}.{nameof(DriveBeltLaws.PitchDiameter)}",
            "By hand: an effective diameter of 45 mm, cord 2 mm outside of the effective line (ISO 9981:2020, 5.4)",
            Mark.Derived,
            49,
            1e-12,
            "mm",
            () => DriveBeltLaws.PitchDiameter<Real>(45, 2)
        ),
    ];
}
