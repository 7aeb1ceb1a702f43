using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class RollerLawsChecks
{
    private const string Law = $"{nameof(RollerLaws)}.{nameof(RollerLaws.TubeInertia)}";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            Law,
            "Mass times the square of its distance from the axis, integrated with scipy quad: steel of 7850 kg/m3, "
                + "50 mm outside, 44 mm inside, 500 mm long",
            Mark.Library,
            964.07361,
            5e-6,
            "kg mm2",
            () =>
                RollerLaws.TubeInertia<Real>(7850, 50 * Millimetre, 3 * Millimetre, 500 * Millimetre) / SquareMillimetre
        ),
        new(
            Law,
            "By hand: 2 kg of solid cylinder of 0.1 m radius are m r2/2; density 2 kg over pi r2 l",
            Mark.Derived,
            0.01,
            1e-15,
            "kg m2",
            () => RollerLaws.TubeInertia<Real>(2 / (Math.PI * 0.01 * 0.4), 0.2, 0.1, 0.4)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.TubeSecondMoment)}",
            "By hand: pi/64 of 50 and 44 mm to the fourth",
            Mark.Derived,
            122812,
            0.5,
            "mm4",
            () => RollerLaws.TubeSecondMoment<Real>(50, 3)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.Deflection)}",
            "By hand: tube of 50 and 44 mm over 500 mm, 1 N/mm on all of it, 206 GPa",
            Mark.Derived,
            0.0322,
            5e-05,
            "mm",
            () => RollerLaws.Deflection<Real>(500, 500, 500, 206e3, 122812)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.Deflection)}",
            "Sarkar, Strength of Materials, Prob. 6.7: 40 kN spread on 5 m, 10.5 GPa, section 177.7 x 347.2 mm for 10 mm; tolerance: half units of the section",
            Mark.Transcribed,
            10,
            10 * ((0.05 / 177.7) + (3 * 0.05 / 347.2)),
            "mm",
            () => RollerLaws.Deflection<Real>(40e3, 5000, 5000, 10.5e3, 177.7 * Math.Pow(347.2, 3) / 12)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.BendingStress)}",
            "Sarkar, Strength of Materials, Prob. 6.7: the same beam, 7 MPa; tolerance: half units of the section",
            Mark.Transcribed,
            7,
            7 * ((0.05 / 177.7) + (2 * 0.05 / 347.2)),
            "MPa",
            () =>
                RollerLaws.BendingStress<Real>(
                    RollerLaws.BendingMoment<Real>(40e3, 5000, 5000),
                    347.2,
                    177.7 * Math.Pow(347.2, 3) / 12
                )
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.Deflection)}",
            "Units trap by hand: 5 kip in the middle and 1.5 kip/ft on 8 ft, 30e6 psi, 75 in4",
            Mark.Derived,
            0.1024,
            5e-5,
            "in",
            () =>
                RollerLaws.Deflection<Real>(5000, 0, 96, 30e6, 75)
                + RollerLaws.Deflection<Real>(12000, 96, 96, 30e6, 75)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.BendingMoment)}",
            "By hand: a load in the middle gives W L/4, one spread over all W L/8; half as wide the mean",
            Mark.Derived,
            187.5,
            1e-12,
            "N m",
            () => RollerLaws.BendingMoment<Real>(1000, 0.5, 1)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.BendingStress)}",
            "By hand: a rod of 32 mm under pi 32^3 N mm has 32 MPa",
            Mark.Derived,
            32,
            1e-12,
            "MPa",
            () => RollerLaws.BendingStress<Real>(Math.PI * Math.Pow(32, 3), 32, Math.PI * Math.Pow(32, 4) / 64)
        ),
        Generated.Check(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.TubeSecondMoment)}",
            "roller.second",
            "m4",
            () => RollerLaws.TubeSecondMoment<Real>(0.05, 0.003)
        ),
        Generated.Check(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.Deflection)}",
            "roller.deflection",
            "m",
            () =>
                RollerLaws.Deflection<Real>(
                    2000,
                    0.45,
                    0.52,
                    206e9,
                    Math.PI / 64 * (Math.Pow(0.05, 4) - Math.Pow(0.044, 4))
                )
        ),
        Generated.Check(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.BendingMoment)}",
            "roller.moment",
            "N m",
            () => RollerLaws.BendingMoment<Real>(2000, 0.45, 0.52)
        ),
        new(
            $"{nameof(RollerLaws)}.{nameof(RollerLaws.OverhangMoment)}",
            "By hand: 500 N at 30 mm",
            Mark.Derived,
            15,
            1e-12,
            "N m",
            () => RollerLaws.OverhangMoment<Real>(500, 0.03)
        ),
    ];
}
