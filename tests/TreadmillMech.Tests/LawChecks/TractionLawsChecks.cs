using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class TractionLawsChecks
{
    private const string Khurmi = "Khurmi and Gupta, Theory of Machines";
    private const string Lattice = "Lattice of 1140 springs on 2.85 m, EA 360 kN, 1 kN at rest, solved in Python";
    private const string Sprung = Lattice + ", drive hub 3 N/um, undriven hub 2 N/um";

    // Ratio and greatest pull of Ex. 11.12, the latter from a first course in belts: 2 T0 (R - 1)/(R + 1).
    private static readonly double Ratio = Math.Exp(0.3 * Degrees(150));

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.TensionRatio)}",
            $"{Khurmi}, Ex. 11.5: mu 0.25, 2.5 turns, 9000 N",
            Mark.Transcribed,
            177.33,
            0.005,
            "N",
            () => 9000 / TractionLaws.TensionRatio<Real>(0.25, 5 * Math.PI)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.TensionRatio)}",
            "Beer and Johnston, Statics, Ex. 8.7: 150 N hold 7500 N by two turns at mu 0.311; tolerance: half a unit "
                + "of 0.311",
            Mark.Transcribed,
            50,
            50 * 4 * Math.PI * 0.0005,
            "1",
            () => TractionLaws.TensionRatio<Real>(0.311, 4 * Math.PI)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.FrictionFromTensions)}",
            "Beer and Johnston, Statics, Ex. 8.7: 150 N hold 7500 N by two turns",
            Mark.Transcribed,
            0.311,
            0.0005,
            "1",
            () => TractionLaws.FrictionFromTensions<Real>(7500, 150, 4 * Math.PI)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.WedgedFriction)}",
            "Hamrock, Fundamentals of Machine Elements, Prob. 19.14: mu 0.2, half angle 18 deg",
            Mark.Read,
            0.647,
            0.0005,
            "1",
            () => TractionLaws.WedgedFriction<Real>(0.2, Degrees(18))
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.LoadShare)}",
            $"{Lattice}: load 0.3 m behind a front drive",
            Mark.Library,
            0.105263158,
            5e-10,
            "1",
            () => TractionLaws.LoadShare<Real>(0.3, 2.85, 0, 0, 0)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.LoadShare)}",
            $"{Sprung}: load 0.95 m behind the drive, ahead of the undriven roller",
            Mark.Library,
            0.293827160,
            5e-10,
            "1",
            () => TractionLaws.LoadShare<Real>(0.95, 2.85, 0.48, 0.72, 0)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.LoadShare)}",
            $"{Sprung}: load 1.9 m behind the drive, past the undriven roller",
            Mark.Library,
            0.706172840,
            5e-10,
            "1",
            () => TractionLaws.LoadShare<Real>(1.9, 2.85, 0.48, 0.72, 1)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.SlackTension)}",
            $"{Lattice}: 250 N, 180 N, 60 N at 0.3 m, 0.95 m, 1.9 m",
            Mark.Library,
            636.315789,
            5e-7,
            "N",
            () => TractionLaws.SlackTension<Real>(1000, 490, ((250 * 0.3) + (180 * 0.95) + (60 * 1.9)) / 2.85)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.TightTension)}",
            $"{Lattice}: 250 N, 180 N, 60 N at 0.3 m, 0.95 m, 1.9 m",
            Mark.Library,
            1126.315789,
            5e-7,
            "N",
            () => TractionLaws.TightTension<Real>(1000, ((250 * 0.3) + (180 * 0.95) + (60 * 1.9)) / 2.85)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.HoldingPull)}",
            $"{Khurmi}, Ex. 11.12: initial tension 2000 N, mu 0.3, 150 deg, radius 0.2 m, 500 rpm; two pulleys share "
                + "the stretch evenly, s = 1/2",
            Mark.Transcribed,
            15.7,
            0.05,
            "kW",
            () => TractionLaws.HoldingPull<Real>(2000, Ratio, 0.5) * 0.2 * Rpm(500) / 1000
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.HoldingPull)}",
            "By hand: 1000 N, R = 3, s = 1/4: T0 - 3F/4 and T0 + F/4 are as 1 to 3 at F = 800 N (400 N and 1200 N)",
            Mark.Derived,
            800,
            1e-9,
            "N",
            () => TractionLaws.HoldingPull<Real>(1000, 3, 0.25)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.HoldingPullBackwards)}",
            $"{Khurmi}, Ex. 11.12 the other way round: the same at s = 1/2",
            Mark.Transcribed,
            15.7,
            0.05,
            "kW",
            () => TractionLaws.HoldingPullBackwards<Real>(2000, Ratio, 0.5) * 0.2 * Rpm(500) / 1000
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.HoldingPullBackwards)}",
            "By hand: 900 N, R = 3, s = 1/4: T0 + 3F/4 and T0 - F/4 are as 3 to 1 at F = 1200 N (1800 N and 600 N)",
            Mark.Derived,
            1200,
            1e-9,
            "N",
            () => TractionLaws.HoldingPullBackwards<Real>(900, 3, 0.25)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.SlipDemand)}",
            "By hand: 800 N at s = 1/4 with R = 3 need a tension at rest of 1000 N, times R - 1",
            Mark.Derived,
            2000,
            1e-9,
            "N",
            () => TractionLaws.SlipDemand<Real>(800, 200, 3)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.OverrunDemand)}",
            "By hand: 1200 N driving at s = 1/4 with R = 3 need a tension at rest of 900 N, times R - 1",
            Mark.Derived,
            1800,
            1e-9,
            "N",
            () => TractionLaws.OverrunDemand<Real>(-1200, -300, 3)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.Grip)}",
            $"{Khurmi}, Ex. 11.12 in Python: 1494.739 N pulled at s = 1/2, R = 2.193280; over R - 1 the initial tension",
            Mark.Transcribed,
            1494.739 * (2.193280 + 1) / 2,
            0.005,
            "N",
            () => TractionLaws.Grip<Real>(2000, 0, Ratio)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.Grip)}",
            "By hand: 1050 N less 50 N that press on no roller, R = 3",
            Mark.Derived,
            2000,
            1e-9,
            "N",
            () => TractionLaws.Grip<Real>(1050, 50, 3)
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.HoldingPullOfDeadWeight)}",
            $"{Khurmi}, Ex. 11.4: tight side kept at 2500 N, mu 0.25, 160 deg, 0.6 m at 200 rpm",
            Mark.Transcribed,
            7.89,
            0.005,
            "kW",
            () =>
                TractionLaws.HoldingPullOfDeadWeight<Real>(2500, Math.Exp(0.25 * Degrees(160))) * 0.3 * Rpm(200) / 1000
        ),
        new(
            $"{nameof(TractionLaws)}.{nameof(TractionLaws.SlowingForce)}",
            "By hand: 1000 N at rest, R = 3, 1000 N of load at s = 1/4; with 250 N of inertia at s = 1/2 the sides are "
                + "1000 - 750 + 125 = 375 N and 1000 + 250 - 125 = 1125 N, as 1 to 3",
            Mark.Derived,
            250,
            1e-9,
            "N",
            () => TractionLaws.SlowingForce<Real>(2500, 2000, 3)
        ),
    ];
}
