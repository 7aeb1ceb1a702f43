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
}
