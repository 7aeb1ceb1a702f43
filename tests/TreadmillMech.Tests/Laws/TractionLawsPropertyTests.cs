using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class TractionLawsPropertyTests
{
    [Property]
    public void InTheMiddleOfTheLoopTheTextbookIsRight(Fraction tension, Fraction friction, Fraction wrap)
    {
        double t = tension.Between(100, 3000);
        double r = TractionLaws.TensionRatio<Real>(friction.Between(0.05, 0.6), wrap.Between(2.5, 4));
        double textbook = 2 * t * (r - 1) / (r + 1);
        Close.To(textbook, TractionLaws.HoldingPull<Real>(t, r, 0.5));
        Close.To(textbook, TractionLaws.HoldingPullBackwards<Real>(t, r, 0.5));
    }

    [Property]
    public void AtTheHoldingPullTheTensionsStandAtTheirRatio(Fraction tension, Fraction ratio, Fraction share)
    {
        double t = tension.Between(100, 3000);
        double r = ratio.Between(1.1, 10);
        double s = share.Between(0, 1);
        double pull = TractionLaws.HoldingPull<Real>(t, r, s);
        double slack = TractionLaws.SlackTension<Real>(t, pull, pull * s);
        double tight = TractionLaws.TightTension<Real>(t, pull * s);
        Close.To(r, tight / slack, 1e-10);
        Close.To(pull, tight - slack, 1e-10);
        Close.To(TractionLaws.Grip<Real>(t, 0, r), TractionLaws.SlipDemand<Real>(pull, pull * s, r), 1e-10);
    }

    [Property]
    public void AtTheHoldingPullBackwardsTheSidesChangeRoles(Fraction tension, Fraction ratio, Fraction share)
    {
        double t = tension.Between(100, 3000);
        double r = ratio.Between(1.1, 10);
        double s = share.Between(0, 1);
        double pull = -TractionLaws.HoldingPullBackwards<Real>(t, r, s);
        double slack = TractionLaws.SlackTension<Real>(t, pull, pull * s);
        double tight = TractionLaws.TightTension<Real>(t, pull * s);
        Close.To(r, slack / tight, 1e-10);
        Close.To(TractionLaws.Grip<Real>(t, 0, r), TractionLaws.OverrunDemand<Real>(pull, pull * s, r), 1e-10);
    }

    [Property]
    public void CentrifugalTensionCarriesNothing(Fraction tension, Fraction centrifugal, Fraction ratio)
    {
        double t = tension.Between(300, 3000);
        double tc = centrifugal.Between(0, 100);
        double r = ratio.Between(1.1, 10);
        Close.To(
            TractionLaws.HoldingPull<Real>(t - tc, r, 0.5) * (r + 1) / 2,
            TractionLaws.Grip<Real>(t, tc, r),
            1e-11
        );
        Assert.True(TractionLaws.Grip<Real>(tc, tc + 1, r) < 0);
    }

    [Property]
    public void ASoftUndrivenRollerIsADeadWeight(Fraction tension, Fraction ratio, Fraction distance)
    {
        double t = tension.Between(100, 3000);
        double r = ratio.Between(1.1, 10);
        double x = distance.Between(0.1, 1.3);
        double ahead = TractionLaws.LoadShare<Real>(x, 2.85, 0, 1e12, 0);
        Close.To(TractionLaws.HoldingPullOfDeadWeight<Real>(t, r), TractionLaws.HoldingPull<Real>(t, r, ahead), 1e-10);
        Close.To(t * (1 - (1 / r)), TractionLaws.HoldingPullOfDeadWeight<Real>(t, r), 1e-11);

        // Behind the undriven roller the weight keeps the slack side instead: more by the factor R.
        double behind = TractionLaws.LoadShare<Real>(x + 1.4, 2.85, 0, 1e12, 1);
        Close.To(t * (r - 1), TractionLaws.HoldingPull<Real>(t, r, behind), 1e-10);
    }

    [Property]
    public void ASoftDriveRollerSharesEvenly(Fraction distance) =>
        Close.To(0.5, TractionLaws.LoadShare<Real>(distance.Between(0, 2.85), 2.85, 1e12, 0, 0), 1e-11);

    [Property]
    public void WithoutGiveTheShareIsTheDistance(Fraction distance, Fraction length, Fraction passed)
    {
        double l = length.Between(2, 4);
        double x = distance.Between(0, l);
        Close.Within(x / l, TractionLaws.LoadShare<Real>(x, l, 0, 0, passed.Value), 1e-15);
    }

    [Property]
    public void WithoutFrictionNothingHolds(Fraction tension, Fraction wrap, Fraction share)
    {
        double r = TractionLaws.TensionRatio<Real>(0, wrap.Between(2.5, 4));
        Assert.Equal(1, r);
        Assert.Equal(0, (double)TractionLaws.HoldingPull<Real>(tension.Between(100, 3000), r, share.Value));
        Assert.Equal(0, (double)TractionLaws.HoldingPullBackwards<Real>(tension.Between(100, 3000), r, share.Value));
    }

    [Property]
    public void AFootFurtherBehindTheFrontRollerAsksForLess(Fraction near, Fraction step, Fraction ratio)
    {
        double r = ratio.Between(1.1, 10);
        double x = near.Between(0.1, 0.8);
        double further = x + step.Between(0.01, 0.5);
        Assert.True(Demand(further) < Demand(x));

        double Demand(double distance)
        {
            double share = TractionLaws.LoadShare<Real>(distance, 2.85, 0.3, 0.5, 0);
            return TractionLaws.SlipDemand<Real>(300, 300 * share, r);
        }
    }

    [Property]
    public void ARearDriveHoldsMoreAndHoldsBackLess(Fraction foot, Fraction drive, Fraction undriven, Fraction ratio)
    {
        // The same foot, seen along the belt from either roller.
        double x = foot.Between(0.1, 0.9);
        double give = drive.Between(0, 0.5);
        double otherGive = undriven.Between(0, 0.5);
        double r = ratio.Between(1.1, 10);
        double front = TractionLaws.LoadShare<Real>(x, 2.85, give, otherGive, 0);
        double rear = TractionLaws.LoadShare<Real>(1.425 + x, 2.85, give, otherGive, 1);
        Assert.True(TractionLaws.HoldingPull<Real>(1000, r, rear) > TractionLaws.HoldingPull<Real>(1000, r, front));
        Assert.True(
            TractionLaws.HoldingPullBackwards<Real>(1000, r, rear)
                < TractionLaws.HoldingPullBackwards<Real>(1000, r, front)
        );
    }

    [Property]
    public void LoadsAddUp(Fraction first, Fraction second, Fraction ratio)
    {
        double a = first.Between(-500, 500);
        double b = second.Between(-500, 500);
        double r = ratio.Between(1, 10);
        double alone = TractionLaws.SlipDemand<Real>(a, 0.1 * a, r) + TractionLaws.SlipDemand<Real>(b, 0.6 * b, r);
        Close.Within(alone, TractionLaws.SlipDemand<Real>(a + b, (0.1 * a) + (0.6 * b), r), 1e-10);
    }

    [Property]
    public void WedgingMultipliesFrictionAndAFlatGrooveDoesNot(Fraction friction, Fraction half)
    {
        double mu = friction.Between(0.05, 0.6);
        Assert.Equal(mu, (double)TractionLaws.WedgedFriction<Real>(mu, Math.PI / 2));
        Assert.True(TractionLaws.WedgedFriction<Real>(mu, half.Between(0.2, 1.5)) > mu);
    }

    // Belt wrapped twice: the ratios of both arcs multiply.
    [Property]
    public void ArcsMultiply(Fraction friction, Fraction first, Fraction second)
    {
        double mu = friction.Between(0.05, 0.6);
        double a = first.Between(0, 4);
        double b = second.Between(0, 4);
        Close.To(
            TractionLaws.TensionRatio<Real>(mu, a) * TractionLaws.TensionRatio<Real>(mu, b),
            TractionLaws.TensionRatio<Real>(mu, a + b)
        );
    }

    [Property]
    public void WithTheSlowingForceTheRollerIsAtItsLimit(Fraction demand, Fraction grip, Fraction ratio)
    {
        double d = demand.Between(0, 4000);
        double g = grip.Between(0, 4000);
        double r = ratio.Between(1.1, 10);
        double inertia = TractionLaws.SlowingForce<Real>(d, g, r);
        Close.Within(g, d - TractionLaws.SlipDemand<Real>(inertia, 0.5 * inertia, r), 1e-9);
    }
}
