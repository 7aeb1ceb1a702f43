using FsCheck.Xunit;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>Bearings, the belt over time, deck friction, wear and impact.</summary>
[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class LifeLawsPropertyTests
{
    [Property]
    public void LifeRatioIsTheQuotientOfTwoLives(Fraction before, Fraction after)
    {
        double p = before.Between(200, 3000);
        double q = after.Between(200, 3000);
        Close.To(
            BearingLaws.BallLife<Real>(9000, q) / BearingLaws.BallLife<Real>(9000, p),
            BearingLaws.BallLifeRatio<Real>(q, p)
        );
        Close.To(
            BearingLaws.RollerLife<Real>(9000, q) / BearingLaws.RollerLife<Real>(9000, p),
            BearingLaws.RollerLifeRatio<Real>(q, p)
        );
    }

    [Property]
    public void TheRatingIsTheLoadForAMillionRevolutions(Fraction rating)
    {
        double c = rating.Between(1000, 20000);
        Close.To(1e6, BearingLaws.BallLife<Real>(c, c));
        Close.To(1e6, BearingLaws.RollerLife<Real>(c, c));
    }

    [Property]
    public void SpectrumLoadLiesBetweenItsLoadsAndMeetsThemAtTheEnds(Fraction first, Fraction second, Fraction share)
    {
        double a = first.Between(100, 3000);
        double b = second.Between(100, 3000);
        double p = BearingLaws.SpectrumLoad<Real>(a, share.Value, b);
        Assert.InRange(p, Math.Min(a, b) * (1 - 1e-12), Math.Max(a, b) * (1 + 1e-12));
        Close.To(a, BearingLaws.SpectrumLoad<Real>(a, 1, b));
        Close.To(b, BearingLaws.SpectrumLoad<Real>(a, 0, b));

        // Never below the plain mean: the higher load counts for more.
        Assert.True(p >= ((share.Value * a) + ((1 - share.Value) * b)) * (1 - 1e-12));
    }

    [Property]
    public void SpectrumLoadUsesUpAsMuchLifeAsItsParts(Fraction first, Fraction second, Fraction share)
    {
        double a = first.Between(100, 3000);
        double b = second.Between(100, 3000);
        double q = share.Value;
        double damage = (q / BearingLaws.BallLife<Real>(9000, a)) + ((1 - q) / BearingLaws.BallLife<Real>(9000, b));
        Close.To(1 / damage, BearingLaws.BallLife<Real>(9000, BearingLaws.SpectrumLoad<Real>(a, q, b)), 1e-11);
    }

    // Three loads by two applications, in either order.
    [Property]
    public void SpectraCompose(Fraction first, Fraction second, Fraction third)
    {
        double a = first.Between(100, 3000);
        double b = second.Between(100, 3000);
        double c = third.Between(100, 3000);
        Close.To(
            BearingLaws.SpectrumLoad<Real>(BearingLaws.SpectrumLoad<Real>(a, 0.4, b), 0.5, c),
            BearingLaws.SpectrumLoad<Real>(a, 0.2, BearingLaws.SpectrumLoad<Real>(b, 0.375, c)),
            1e-11
        );
    }

    [Property]
    public void RelaxedTensionIsLinearInDecadesAndBeginsAtTheFirst(Fraction tension, Fraction share, Fraction decades)
    {
        double t = tension.Between(200, 3000);
        double r = share.Between(0, 0.1);
        double n = decades.Between(0, 5);
        Assert.Equal(t, (double)BeltLifeLaws.RelaxedTension<Real>(t, r, 0));
        Close.Within(
            2 * BeltLifeLaws.RelaxedTension<Real>(t, r, n / 2),
            t + BeltLifeLaws.RelaxedTension<Real>(t, r, n),
            1e-9
        );
    }

    [Property]
    public void ABeltThatExpandsAsItsFrameAndKeepsItsStiffnessKeepsItsTension(Fraction tension, Fraction rise)
    {
        double t = tension.Between(200, 3000);
        Assert.Equal(t, (double)BeltLifeLaws.WarmTension<Real>(t, 360e3, 0, 0, rise.Between(0, 40)));
        Assert.Equal(t, (double)BeltLifeLaws.WarmTension<Real>(t, 360e3, 1e-5, 0.003, 0));
    }

    // The exact loss by the belt's mass on both strands, to first order.
    [Property]
    public void CreepIsTheLossOfMassFlow(Fraction tight, Fraction slack)
    {
        double t1 = tight.Between(400, 3000);
        double t2 = slack.Between(0, 400);
        double exact = 1 - ((1 + (t2 / 360e3)) / (1 + (t1 / 360e3)));
        double creep = BeltLifeLaws.Creep<Real>(t1, t2, 360e3);
        Close.Within(exact, creep, 1.01 * creep * t1 / 360e3);
    }

    [Property]
    public void BendingStrainIsTheLongerArcOverTheMiddleOne(Fraction thickness, Fraction diameter)
    {
        double h = thickness.Between(0.001, 0.004);
        double d = diameter.Between(0.02, 0.1);
        Close.To(((d + (2 * h)) / (d + h)) - 1, BeltLifeLaws.BendingStrain<Real>(h, d), 1e-12);
    }

    [Property]
    public void TensionOfTheMarksIsTensionOfTheStrain(Fraction strain)
    {
        double e = strain.Between(0, 0.02);
        Close.Within(
            BeltLaws.StrandTension<Real>(360e3, e),
            BeltLaws.StrandTension<Real>(360e3, BeltLifeLaws.MarkElongation<Real>(1 + e, 1)),
            1e-9
        );
        Close.Within(
            DriveBeltLaws.StretchFitTension<Real>(360e3, 1 + e, 1),
            BeltLaws.StrandTension<Real>(360e3, e),
            1e-9
        );
    }

    [Property]
    public void FrictionRunsFromStaticToKinetic(Fraction kinetic, Fraction more, Fraction speed)
    {
        double k = kinetic.Between(0.1, 0.3);
        double s = k + more.Between(0, 0.2);
        double mu = DeckWearLaws.StribeckFriction<Real>(k, s, speed.Between(0, 3), 0.1);
        Assert.InRange(mu, k, s);
        Close.To(s, DeckWearLaws.StribeckFriction<Real>(k, s, 0, 0.1));
        Close.To(k, DeckWearLaws.StribeckFriction<Real>(k, s, 10, 0.1));
        Close.To(
            DeckWearLaws.StribeckFriction<Real>(k, s, -0.07, 0.1),
            DeckWearLaws.StribeckFriction<Real>(k, s, 0.07, 0.1)
        );
    }

    // Wear depth on the deck goes with friction work for each area: K/(mu H) of it.
    [Property]
    public void WearGoesWithTheWorkOfFriction(Fraction friction, Fraction force, Fraction distance, Fraction area)
    {
        double mu = friction.Between(0.05, 0.5);
        double n = force.Between(100, 3000);
        double s = distance.Between(1e3, 1e6);
        double a = area.Between(0.1, 2);
        double depth = DeckWearLaws.WornDepth<Real>(DeckWearLaws.WornVolume<Real>(1e-7, n, s, 3e8), a);
        Close.To(1e-7 / (mu * 3e8) * DeckWearLaws.FrictionWorkPerArea<Real>(mu, n, s, a), depth);
    }

    [Property]
    public void AFallFromNoHeightDoublesTheWeight(Fraction mass, Fraction stiffness)
    {
        double m = mass.Between(20, 200);
        Close.To(2 * m * 9.80665, DeckWearLaws.DropForce<Real>(m, 0, stiffness.Between(1e4, 1e6)));
    }

    [Property]
    public void AFallGivesItsEnergyToTheSpring(Fraction mass, Fraction height, Fraction stiffness)
    {
        double m = mass.Between(20, 200);
        double h = height.Between(0, 0.5);
        double k = stiffness.Between(1e4, 1e6);
        double travel = DeckWearLaws.DropForce<Real>(m, h, k) / k;
        Close.To(m * 9.80665 * (h + travel), k * travel * travel / 2, 1e-10);
    }

    [Property]
    public void AStumbleGivesItsEnergyToTheSpring(Fraction mass, Fraction speed, Fraction stiffness)
    {
        double m = mass.Between(20, 200);
        double v = speed.Between(0.1, 6);
        double k = stiffness.Between(1e3, 1e6);
        double force = DeckWearLaws.StopForce<Real>(m, v, k);
        Close.To(m * v * v / 2, force * force / k / 2);
    }

    // The forces of a fall from far above are those of its speed alone.
    [Fact]
    public void AHighFallIsAStop()
    {
        const double h = 1e4;
        double v = Math.Sqrt(2 * 9.80665 * h);
        Close.To(DeckWearLaws.StopForce<Real>(80, v, 1e5), DeckWearLaws.DropForce<Real>(80, h, 1e5), 1e-3);
    }

    [Property]
    public void DeckAndCushionsAreSpringsInSeries(Fraction load, Fraction span, Fraction cushion)
    {
        double f = load.Between(300, 3000);
        double a = span.Between(0.3, 1);
        double k = cushion.Between(5e4, 5e5);
        double beam = RollerLaws.Deflection<Real>(f, 0, a, 5e9, 1.2e-7);
        Close.To(beam + (f / (2 * k)), DeckWearLaws.MidSpanDeflection<Real>(f, a, 5e9, 1.2e-7, k));
    }

    [Fact]
    public void TheFinalRiseIsWhatHeatingInTimeEndsAt()
    {
        double end = DeckWearLaws.FinalRise<Real>(300, 6);
        Vector<double>[] path = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense(1),
            0,
            30_000,
            5001,
            (_, y) => (300 - (6 * y)) / 9000
        );
        Close.To(end, path[^1][0], 1e-8);
    }
}
