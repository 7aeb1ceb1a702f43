using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class RollerLawsPropertyTests
{
    // Shigley's table of solids gives a hollow cylinder by its mass: m/8 times the sum of both squared diameters.
    [Property]
    public void InertiaIsMassTimesTheMeanOfTheSquaredRadii(Fraction density, Fraction diameter, Fraction wall)
    {
        double rho = density.Between(1000, 8000);
        double outside = diameter.Between(0.03, 0.1);
        double w = wall.Between(0.001, outside / 2);
        double inside = outside - (2 * w);
        double mass = rho * 0.5 * Math.PI * w * (outside - w);
        Close.To(
            mass / 8 * ((outside * outside) + (inside * inside)),
            RollerLaws.TubeInertia<Real>(rho, outside, w, 0.5),
            1e-11
        );
    }

    [Property]
    public void TubesFillUpToARod(Fraction diameter, Fraction wall)
    {
        // A tube and the thinner rod that was bored out of it are the rod.
        double d = diameter.Between(0.03, 0.1);
        double w = wall.Between(0.001, 0.014);
        double rod = RollerLaws.TubeInertia<Real>(7850, d, d / 2, 0.5);
        double core = RollerLaws.TubeInertia<Real>(7850, d - (2 * w), (d / 2) - w, 0.5);
        Close.To(rod, core + RollerLaws.TubeInertia<Real>(7850, d, w, 0.5));
    }

    [Property]
    public void NarrowAndFullLoadsAreTheTablesBeams(Fraction load, Fraction span, Fraction stiffness)
    {
        double w = load.Between(500, 5000);
        double l = span.Between(0.4, 0.8);
        double ei = stiffness.Between(5e3, 1e5);
        Close.To(w * l * l * l / 48 / ei, RollerLaws.Deflection<Real>(w, 0, l, ei, 1));
        Close.To(5 * w * l * l * l / 384 / ei, RollerLaws.Deflection<Real>(w, l, l, ei, 1));
        Close.To(w * l / 4, RollerLaws.BendingMoment<Real>(w, 0, l));
        Close.To(w * l / 8, RollerLaws.BendingMoment<Real>(w, l, l));
    }

    // The load cut into slices, each a force at its place: F b (3 L2 - 4 b2)/48 EI at the middle (Shigley's table A-9).
    [Property]
    public void DeflectionIsTheSumOfItsSlices(Fraction width)
    {
        const double l = 0.55;
        double c = width.Between(0.1, l);
        double sum = 0;
        const int slices = 4000;
        for (int i = 0; i < slices; i++)
        {
            double b = (l / 2) - (c / 2 * (i + 0.5) / slices);
            sum += 2000.0 / slices * b * ((3 * l * l) - (4 * b * b)) / 48 / 25e3;
        }

        Close.To(sum, RollerLaws.Deflection<Real>(2000, c, l, 25e3, 1), 1e-7);
    }

    [Property]
    public void InertiaIsTwiceTheSecondMomentTimesMassPerVolume(Fraction diameter, Fraction wall)
    {
        double d = diameter.Between(0.03, 0.1);
        double w = wall.Between(0.001, d / 2);
        Close.To(
            2 * 7850 * 0.5 * RollerLaws.TubeSecondMoment<Real>(d, w),
            RollerLaws.TubeInertia<Real>(7850, d, w, 0.5)
        );
    }

    // Stress over the section: its moment about the neutral line is the bending moment.
    [Property]
    public void BendingStressOfARodIsThirtyTwoMOverPiD3(Fraction moment, Fraction diameter)
    {
        double m = moment.Between(10, 500);
        double d = diameter.Between(0.01, 0.1);
        Close.To(
            32 * m / Math.PI / (d * d * d),
            RollerLaws.BendingStress<Real>(m, d, RollerLaws.TubeSecondMoment<Real>(d, d / 2)),
            1e-11
        );
    }
}
