using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class DeckAndHubPropertyTests
{
    // A mass on the belt, any incline: friction holds the belt, weight drives it.
    [Property]
    public void FrictionIsFoundAgainFromThePullOfAMass(Fraction friction, Fraction mass, Fraction incline)
    {
        double mu = friction.Between(0.05, 0.5);
        double m = mass.Between(20, 200);
        double theta = incline.Between(-0.1, 0.15);
        double pull =
            DeckLaws.FrictionForce<Real>(mu, GaitLaws.MeanNormalForce<Real>(m, theta, 0))
            + GaitLaws.MeanTangentialForce<Real>(m, theta, 0, 0);
        Close.To(mu, DeckLaws.FrictionFromPull<Real>(pull, m, theta), 1e-11);
    }

    [Property]
    public void CurrentAndPowerAgreeOnThePull(Fraction current, Fraction constant, Fraction motorSpeed, Fraction speed)
    {
        double i = current.Between(0, 20);
        double k = constant.Between(0.1, 1);
        double w = motorSpeed.Between(10, 500);
        double v = speed.Between(0.2, 6);
        double power = k * w * i;
        Close.To(DeckLaws.PullFromPower<Real>(power, 1, v), DeckLaws.PullFromCurrent<Real>(i, k, w, v));
        Close.To(power, DeckLaws.PullFromPower<Real>(power, 1, v) * v);
    }

    [Property]
    public void HubLoadIsTheSumOfTwoVectors(Fraction first, Fraction second, Fraction wrap)
    {
        double t1 = first.Between(1, 3000);
        double t2 = second.Between(1, 3000);
        double theta = wrap.Between(0, 2 * Math.PI);

        // Strands leave along the tangents; their directions differ by pi less the wrap.
        double x = t1 + (t2 * Math.Cos(Math.PI - theta));
        double y = t2 * Math.Sin(Math.PI - theta);
        Close.Within(Math.Sqrt((x * x) + (y * y)), HubLaws.HubLoad<Real>(t1, t2, theta), 1e-9);
    }

    [Property]
    public void HubLoadLiesBetweenDifferenceAndSum(Fraction first, Fraction second, Fraction wrap)
    {
        double t1 = first.Between(1, 3000);
        double t2 = second.Between(1, 3000);
        double load = HubLaws.HubLoad<Real>(t1, t2, wrap.Between(0, 2 * Math.PI));
        Assert.InRange(load, Math.Abs(t1 - t2) - 1e-9, t1 + t2 + 1e-9);
        Close.To(t1 + t2, HubLaws.HubLoad<Real>(t1, t2, Math.PI), 1e-14);
        Assert.Equal(Math.Abs(t1 - t2), (double)HubLaws.HubLoad<Real>(t1, t2, 0));
    }

    [Property]
    public void BothStrandsCountAlike(Fraction first, Fraction second, Fraction wrap)
    {
        double t1 = first.Between(1, 3000);
        double t2 = second.Between(1, 3000);
        double theta = wrap.Between(2, 4);
        Assert.Equal(HubLaws.HubLoad<Real>(t1, t2, theta), HubLaws.HubLoad<Real>(t2, t1, theta));
    }

    [Property]
    public void FilmTimesAreaIsVolume(Fraction area, Fraction film)
    {
        double a = area.Between(0.1, 1);
        double h = film.Between(1e-6, 1e-4);
        Close.To(h, DeckLaws.LubricantVolume<Real>(a, h) / a);
    }
}
