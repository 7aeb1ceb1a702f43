using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class ScrewTorqueLawsChecks
{
    private const string Shigley = "Shigley's Mechanical Engineering Design, 9th ed.";

    private const string Solutions = "Solutions to Shigley's Mechanical Engineering Design";

    private const double Flank = Math.PI / 6;

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(ScrewTorqueLaws.RaisingTorque),
            $"{Shigley}, Ex. 8-1: square, lead 8 mm, 30 mm, f 0.08, collar 40 mm and 0.08, 6.4 kN",
            Mark.Memory,
            26.18,
            0.005,
            "N m",
            () => WithCollar(ScrewTorqueLaws.RaisingTorque<Real>(6400, 0.03, 0.008, 0.08, 0), 6400, 0.04, 0.08)
        ),
        Row(
            nameof(ScrewTorqueLaws.LoweringTorque),
            $"{Shigley}, Ex. 8-1: square, lead 8 mm, 30 mm, f 0.08, collar 40 mm and 0.08, 6.4 kN",
            Mark.Memory,
            9.77,
            0.005,
            "N m",
            () => WithCollar(ScrewTorqueLaws.LoweringTorque<Real>(6400, 0.03, 0.008, 0.08, 0), 6400, 0.04, 0.08)
        ),
        Row(
            nameof(ScrewTorqueLaws.Efficiency),
            $"{Shigley}, Ex. 8-1: square, lead 8 mm, 30 mm, f 0.08, collar 40 mm and 0.08, 6.4 kN",
            Mark.Memory,
            0.311,
            0.0005,
            "1",
            () => ScrewTorqueLaws.Efficiency<Real>(6400, 0.008, 26.18)
        ),
        Row(
            nameof(ScrewTorqueLaws.RaisingTorque),
            $"{Solutions}, 8-4: square, 6 kN, lead 5 mm, 22.5 mm, f 0.08, collar 40 mm and 0.05",
            Mark.Transcribed,
            16.23,
            0.005,
            "N m",
            () => WithCollar(ScrewTorqueLaws.RaisingTorque<Real>(6000, 0.0225, 0.005, 0.08, 0), 6000, 0.04, 0.05)
        ),
        Row(
            nameof(ScrewTorqueLaws.LoweringTorque),
            $"{Solutions}, 8-4: square, 6 kN, lead 5 mm, 22.5 mm, f 0.08, collar 40 mm and 0.05",
            Mark.Transcribed,
            6.622,
            0.0005,
            "N m",
            () => WithCollar(ScrewTorqueLaws.LoweringTorque<Real>(6000, 0.0225, 0.005, 0.08, 0), 6000, 0.04, 0.05)
        ),
        Row(
            nameof(ScrewTorqueLaws.Efficiency),
            $"{Solutions}, 8-4: square, 6 kN, lead 5 mm, 22.5 mm, f 0.08, collar 40 mm and 0.05",
            Mark.Transcribed,
            0.294,
            0.0005,
            "1",
            () => ScrewTorqueLaws.Efficiency<Real>(6000, 0.005, 16.23)
        ),
        Row(
            nameof(ScrewTorqueLaws.RaisingTorque),
            $"{Solutions}, 8-6: 2500 lbf, 2.75 in, lead 0.5 in, f 0.05, secant 1.033",
            Mark.Transcribed,
            377.6,
            0.05,
            "lbf in",
            () => ScrewTorqueLaws.RaisingTorque<Real>(2500, 2.75, 0.5, 0.05, Math.Acos(1 / 1.033))
        ),
        Row(
            nameof(ScrewTorqueLaws.CollarTorque),
            $"{Solutions}, 8-6: 2500 lbf, collar 5 in, f 0.06",
            Mark.Transcribed,
            375,
            0.5,
            "lbf in",
            () => ScrewTorqueLaws.CollarTorque<Real>(2500, 5, 0.06)
        ),
        Row(
            nameof(ScrewTorqueLaws.TighteningTorque),
            $"{Shigley}, Ex. 8-3: 3/4-16, 25 kip, both frictions 0.15, collar (1 + 1.5)/2 times the size",
            Mark.Read,
            3551,
            0.5,
            "lbf in",
            () => ScrewTorqueLaws.TighteningTorque<Real>(25000, 0.7093, 1.0 / 16, 0.15, 1.25 * 0.75, 0.15)
        ),
        Row(
            nameof(ScrewTorqueLaws.TorqueByNutFactor),
            $"{Shigley}, Ex. 8-3: 3/4 in, 25 kip, K 0.2",
            Mark.Read,
            3750,
            0.5,
            "lbf in",
            () => ScrewTorqueLaws.TorqueByNutFactor<Real>(25000, 0.75, 0.2)
        ),
        Row(
            nameof(ScrewTorqueLaws.LockingRatio),
            "By hand: friction that is the tangent of the lead angle, pi d f = l",
            Mark.Derived,
            1,
            1e-15,
            "1",
            () => ScrewTorqueLaws.LockingRatio<Real>(0.01, 0.002, 0.2 / Math.PI, 0)
        ),
        Row(
            nameof(ScrewTorqueLaws.LockingRatio),
            $"{Shigley}, 8-2: the square screw of Ex. 8-1 is self-locking, 0.08 against tan of the lead angle 8/(30 pi)",
            Mark.Derived,
            0.942477796,
            5e-10,
            "1",
            () => ScrewTorqueLaws.LockingRatio<Real>(0.03, 0.008, 0.08, 0)
        ),
        Row(
            nameof(ScrewTorqueLaws.AxialStress),
            "ISO 898-1, class 8.8: proof load 21 200 N of M8 on 36.6 mm2 is 580 MPa; tolerance: half a unit of 36.6 mm2",
            Mark.Read,
            580,
            0.8,
            "MPa",
            () => ScrewTorqueLaws.AxialStress<Real>(21200, 36.6 * SquareMillimetre) / 1e6
        ),
        Row(
            nameof(ScrewTorqueLaws.EquivalentStress),
            "By hand: 300 MPa and a torque whose shear is 400/sqrt 3 MPa",
            Mark.Derived,
            500,
            1e-9,
            "MPa",
            () => ScrewTorqueLaws.EquivalentStress<Real>(300e6, 400e6 / Math.Sqrt(3) * Math.PI * 1e-6 / 16, 0.01) / 1e6
        ),
        Scipy(
            nameof(ScrewTorqueLaws.RaisingTorque),
            "screw.raise",
            "N m",
            () => ScrewTorqueLaws.RaisingTorque<Real>(5000, 0.0071881, 0.00125, 0.15, Flank)
        ),
        Scipy(
            nameof(ScrewTorqueLaws.LoweringTorque),
            "screw.lower",
            "N m",
            () => ScrewTorqueLaws.LoweringTorque<Real>(5000, 0.0071881, 0.00125, 0.15, Flank)
        ),
        Scipy(
            nameof(ScrewTorqueLaws.TighteningForce),
            "screw.force",
            "N",
            () => ScrewTorqueLaws.TighteningForce<Real>(576e6, 36.6e-6, 0.0071881, 0.00125, 0.12)
        ),
        Scipy(
            nameof(ScrewTorqueLaws.EquivalentStress),
            "screw.stress",
            "Pa",
            () => ScrewTorqueLaws.EquivalentStress<Real>(4e8, 12, RodOfM8)
        ),
        .. Vdi(8, 1, [(0.10, 20.7, 22.8), (0.12, 20.2, 26.1), (0.14, 19.7, 29.2)], (11.63 + 9) / 2, 0.1),
        .. Vdi(10, 1.25, [(0.10, 32.4, 44), (0.12, 31.6, 51), (0.14, 30.8, 57)], (14.63 + 11) / 2, 1),
        .. Vdi(12, 1.25, [(0.10, 49.1, 79), (0.12, 48.0, 90), (0.14, 46.8, 101)], (16.63 + 13.5) / 2, 1),
        .. Vdi(14, 1.5, [(0.10, 66.4, 124), (0.12, 64.8, 142), (0.14, 63.2, 159)], null, 1),
        .. Vdi(16, 1.5, [(0.10, 89.6, 189), (0.12, 87.6, 218), (0.14, 85.5, 244)], (22.49 + 17.5) / 2, 1),
        new(
            $"{nameof(ScrewTorqueLaws)}.{nameof(ScrewTorqueLaws.ForceByNutFactor)}",
            "Shigley's Mechanical Engineering Design, 9th ed., Ex. 8-3 read backwards: 3750 lbf in on 3/4 in, K 0.2",
            Mark.Read,
            25000,
            1e-09,
            "lbf",
            () => ScrewTorqueLaws.ForceByNutFactor<Real>(3750, 0.75, 0.2)
        ),
        new(
            $"{nameof(ScrewTorqueLaws)}.{nameof(ScrewTorqueLaws.NutFactor)}",
            "Shigley's Mechanical Engineering Design, 9th ed., Ex. 8-3: 3551 lbf in for 25 kip on 3/4 in",
            Mark.Derived,
            3551 / 18750.0,
            1e-15,
            "1",
            () => ScrewTorqueLaws.NutFactor<Real>(25000, 0.75, 3551)
        ),
        new(
            $"{nameof(ScrewTorqueLaws)}.{nameof(ScrewTorqueLaws.ProofLoad)}",
            "ISO 898-1: 21 200 N for M8, class 8.8, printed to three figures: 580 MPa on 36.6 mm2",
            Mark.Read,
            21200,
            50,
            "N",
            () => ScrewTorqueLaws.ProofLoad<Real>(580e6, 36.6 * SquareMillimetre)
        ),
        new(
            $"{nameof(ScrewTorqueLaws)}.{nameof(ScrewTorqueLaws.HandForce)}",
            "By hand: 4 N m at 100 mm",
            Mark.Derived,
            40,
            1e-12,
            "N",
            () => ScrewTorqueLaws.HandForce<Real>(4, 0.1)
        ),
    ];

    private static readonly double RodOfM8 = Math.Sqrt(4 * 36.6e-6 / Math.PI);

    // Pitch and stress diameters of ISO 724 and ISO 898-1, in m.
    private static double PitchDiameter(double diameter, double pitch) => diameter - (0.649519052838329 * pitch);

    private static double StressArea(double diameter, double pitch) =>
        Math.PI / 4 * Math.Pow(diameter - (0.938194187433141 * pitch), 2);

    private static double WithCollar(double thread, double load, double collar, double friction) =>
        thread + ScrewTorqueLaws.CollarTorque<Real>(load, collar, friction);

    /// <summary>Three rows of VDI 2230:2001 as printed in a supplier's copy, for hexagon heads of ISO 4014.</summary>
    /// <remarks>
    /// The mean of head and hole diameter is null where the head is not certain. Classes 10.9 and 12.9 are left out: the
    /// table scales them from the rounded values of class 8.8, so their last digit is not the formula's.
    /// </remarks>
    private static IEnumerable<LawCheck> Vdi(
        double size,
        double pitch,
        (double Friction, double Force, double Torque)[] rows,
        double? head,
        double torqueDigit
    )
    {
        double d = size * Millimetre;
        double p = pitch * Millimetre;
        foreach ((double friction, double force, double torque) in rows)
        {
            string source = FormattableString.Invariant(
                $"VDI 2230:2001, assembly preload at 0.9 of 640 MPa, M{size}x{pitch} class 8.8, mu {friction}"
            );
            double Force() =>
                ScrewTorqueLaws.TighteningForce<Real>(0.9 * 640e6, StressArea(d, p), PitchDiameter(d, p), p, friction);
            yield return Row(
                nameof(ScrewTorqueLaws.TighteningForce),
                source,
                Mark.Read,
                force,
                0.05,
                "kN",
                () => Force() / 1000
            );
            if (head is double mean)
            {
                yield return Row(
                    nameof(ScrewTorqueLaws.TighteningTorque),
                    source,
                    Mark.Read,
                    torque,
                    torqueDigit / 2,
                    "N m",
                    () =>
                        ScrewTorqueLaws.TighteningTorque<Real>(
                            Force(),
                            PitchDiameter(d, p),
                            p,
                            friction,
                            mean * Millimetre,
                            friction
                        )
                );
            }
        }
    }

    private static LawCheck Row(
        string law,
        string source,
        Mark mark,
        double expected,
        double tolerance,
        string unit,
        Func<double> compute
    ) => new($"{nameof(ScrewTorqueLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(ScrewTorqueLaws)}.{law}", name, unit, compute);
}
