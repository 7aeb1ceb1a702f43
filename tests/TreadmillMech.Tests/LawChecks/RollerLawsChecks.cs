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
    ];
}
