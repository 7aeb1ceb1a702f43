using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class DriveBeltLawsPropertyTests
{
    [Property]
    public void ASlackSideIdlerHoldsLessInBrakingByExactlyTheRatio(Fraction tension, Fraction ratio)
    {
        double t = tension.Between(50, 1000);
        double r = ratio.Between(1.05, 20);
        Close.To(r, DriveBeltLaws.CapacityOfSlackSide<Real>(t, r) / DriveBeltLaws.CapacityOfTightSide<Real>(t, r));
    }

    // Whichever tension is kept: the other follows by the ratio, and the force is their difference.
    [Property]
    public void AllKindsDescribeTheSamePairOfTensions(Fraction slack, Fraction ratio)
    {
        double t2 = slack.Between(50, 1000);
        double r = ratio.Between(1.05, 20);
        double t1 = r * t2;
        Close.To(t1 - t2, DriveBeltLaws.CapacityOfSlackSide<Real>(t2, r));
        Close.To(t1 - t2, DriveBeltLaws.CapacityOfTightSide<Real>(t1, r));
        Close.To(t1 - t2, DriveBeltLaws.CapacityOfTensionSum<Real>(t1 + t2, r));
    }

    [Property]
    public void AtOneTensionAtRestASlackSideIdlerHoldsMost(Fraction tension, Fraction ratio)
    {
        double t = tension.Between(50, 1000);
        double r = ratio.Between(1.05, 20);
        double sum = DriveBeltLaws.CapacityOfTensionSum<Real>(2 * t, r);
        Assert.True(DriveBeltLaws.CapacityOfSlackSide<Real>(t, r) > sum);
        Assert.True(DriveBeltLaws.CapacityOfTightSide<Real>(t, r) < sum);
    }

    [Property]
    public void WithoutGripNothingIsTransmitted(Fraction tension)
    {
        double t = tension.Between(50, 1000);
        Assert.Equal(0, (double)DriveBeltLaws.CapacityOfTensionSum<Real>(t, 1));
        Assert.Equal(0, (double)DriveBeltLaws.CapacityOfSlackSide<Real>(t, 1));
        Assert.Equal(0, (double)DriveBeltLaws.CapacityOfTightSide<Real>(t, 1));
    }

    // However good the grip, a kept tight side cannot give more than itself, a kept sum not more than the sum.
    [Property]
    public void GripWithoutEndIsNotForceWithoutEnd(Fraction tension)
    {
        double t = tension.Between(50, 1000);
        Close.To(t, DriveBeltLaws.CapacityOfTightSide<Real>(t, 1e12), 1e-11);
        Close.To(t, DriveBeltLaws.CapacityOfTensionSum<Real>(t, 1e12), 1e-11);
    }

    [Property]
    public void TorqueIsTheSameAtBothRadii(Fraction pull, Fraction roller, Fraction pulley)
    {
        double f = pull.Between(-1000, 1000);
        double r1 = roller.Between(0.02, 0.05);
        double rp = pulley.Between(0.03, 0.15);
        Close.To(f * r1, DriveBeltLaws.CircumferentialForce<Real>(f, r1, rp) * rp);
    }

    [Property]
    public void HubForceAndHubLoadUndoEachOther(Fraction tension, Fraction wrap)
    {
        double t = tension.Between(50, 1000);
        double angle = wrap.Between(0.5, Math.PI);
        Close.To(t, DriveBeltLaws.TensionOfHubForce<Real>(HubLaws.HubLoad<Real>(t, t, angle), angle), 1e-11);
    }

    [Property]
    public void SpeedRatioErrorIsTheSlopeOfTheRatio(Fraction motor, Fraction roller)
    {
        double m = motor.Between(0.015, 0.04);
        double r = roller.Between(0.05, 0.12);
        double slope = Close.Slope(e => DriveBeltLaws.SpeedRatio<Real>(m + e, r + e), 0, 1e-6);
        double relative = slope / DriveBeltLaws.SpeedRatio<Real>(m, r);
        Close.To(relative * 0.001, DriveBeltLaws.SpeedRatioError<Real>(m, r, 0.001), 1e-7);
    }
}
