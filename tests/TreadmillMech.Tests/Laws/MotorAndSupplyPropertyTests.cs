using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class MotorAndSupplyPropertyTests
{
    [Property]
    public void VoltageAndSpeedUndoEachOther(Fraction constant, Fraction speed, Fraction current, Fraction resistance)
    {
        double k = constant.Between(0.1, 1);
        double w = speed.Between(0, 500);
        double i = current.Between(-20, 30);
        double r = resistance.Between(0, 5);
        double v = DcMotorLaws.Voltage<Real>(k, w, i, r, 2);
        Close.Within(w, DcMotorLaws.Speed<Real>(k, v, i, r, 2), 1e-9);
    }

    [Property]
    public void PowerInIsShaftPowerAndLosses(Fraction torque, Fraction friction, Fraction constant, Fraction speed)
    {
        double m = torque.Between(0, 10);
        double mf = friction.Between(0, 1);
        double k = constant.Between(0.1, 1);
        double w = speed.Between(0, 500);
        double i = DcMotorLaws.Current<Real>(m, mf, k);
        double electrical = DcMotorLaws.Voltage<Real>(k, w, i, 0.8, 2) * i;
        Close.To((m * w) + (mf * w) + (i * i * 0.8) + (2 * i), electrical, 1e-11);
    }

    [Property]
    public void TwoUnloadedPointsGiveBackTheConstant(
        Fraction constant,
        Fraction low,
        Fraction high,
        Fraction drop,
        Fraction resistance
    )
    {
        double k = constant.Between(0.1, 1);
        double slow = low.Between(10, 100);
        double fast = high.Between(150, 400);
        double brushes = drop.Between(0, 3);
        double r = resistance.Between(0, 3);
        double v1 = DcMotorLaws.Voltage<Real>(k, slow, 0.7, r, brushes);
        double v2 = DcMotorLaws.Voltage<Real>(k, fast, 1.1, r, brushes);
        Close.To(k, DcMotorLaws.ConstantFromTwoPoints<Real>(v1, v2, slow, fast, 0.7, 1.1, r), 1e-10);
    }

    [Property]
    public void CopperComesBackToItsResistance(Fraction resistance, Fraction from, Fraction to)
    {
        double r = resistance.Between(0.05, 10);
        double t1 = from.Between(-20, 150);
        double t2 = to.Between(-20, 150);
        Close.To(r, DcMotorLaws.CopperResistance<Real>(DcMotorLaws.CopperResistance<Real>(r, t1, t2), t2, t1));
        Close.To(r, DcMotorLaws.CopperResistance<Real>(r, t1, t1), 1e-15);
    }

    // The mean and the root mean square of a pull that takes any two values for any shares of the time.
    [Property]
    public void RmsCurrentIsThatOfASquareWave(Fraction low, Fraction high, Fraction share, Fraction perPull)
    {
        double a = low.Between(-200, 200);
        double b = high.Between(-200, 400);
        double p = share.Value;
        double c = perPull.Between(0.005, 0.05);
        double mean = (p * a) + ((1 - p) * b);
        double square = (p * a * a) + ((1 - p) * b * b);
        double expected = Math.Sqrt((p * c * a * c * a) + ((1 - p) * c * b * c * b));

        // Nearly steady pulls lose digits in the difference of squares.
        Close.Within(expected, DcMotorLaws.RmsCurrent<Real>(c * mean, c, mean, square), 1e-6);
    }

    [Property]
    public void ASteadyCurrentIsItsOwnRms(Fraction current, Fraction pull)
    {
        double f = pull.Between(-500, 500);

        // A square short of the mean's by rounding is no fluctuation, and no NaN.
        Close.To(
            current.Between(0.1, 20),
            DcMotorLaws.RmsCurrent<Real>(current.Between(0.1, 20), 0.03, f, f * f * (1 - 1e-15))
        );
    }

    [Property]
    public void MainsCurrentTimesVoltageIsApparentPower(Fraction power, Fraction voltage, Fraction factor)
    {
        double p = power.Between(0, 3000);
        double v = voltage.Between(90, 250);
        double pf = factor.Between(0.4, 1);
        Close.To(p, SupplyLaws.MainsCurrent<Real>(p, v, pf) * v * pf);
    }

    [Property]
    public void BrakingFeedsNothingBack(Fraction braking, Fraction efficiency, Fraction standby)
    {
        double rest = standby.Between(0, 50);
        Assert.Equal(
            rest,
            (double)SupplyLaws.MainsPower<Real>(-braking.Between(0, 2000), efficiency.Between(0.5, 1), rest)
        );
    }

    [Property]
    public void NothingComesOutOfTheMainsForFree(Fraction power, Fraction efficiency)
    {
        double p = power.Between(0, 3000);
        Assert.True(SupplyLaws.MainsPower<Real>(p, efficiency.Between(0.5, 1), 0) >= p);
        Close.To(p + 12, SupplyLaws.MainsPower<Real>(p, 1, 12));
    }

    [Property]
    public void RmsOfTwoLiesBetweenMeanAndLarger(Fraction first, Fraction second, Fraction share)
    {
        double a = first.Between(0, 3);
        double b = second.Between(0, 3);
        double rms = SupplyLaws.RmsOfTwo<Real>(a, share.Value, b);
        Assert.InRange(rms, ((share.Value * a) + ((1 - share.Value) * b)) * (1 - 1e-12), Math.Max(a, b) * (1 + 1e-12));
        Close.To(a, SupplyLaws.RmsOfTwo<Real>(a, 1, b));
        Close.To(a, SupplyLaws.RmsOfTwo<Real>(a, share.Value, a));
    }

    // A ramp is its two halves in turn.
    [Property]
    public void RmsOfARampIsThatOfItsParts(Fraction from, Fraction to, Fraction cut)
    {
        double a = from.Between(0, 3);
        double b = to.Between(0, 3);
        double q = cut.Value;
        double between = a + (q * (b - a));
        double parts = SupplyLaws.RmsOfTwo<Real>(
            SupplyLaws.RmsOfRamp<Real>(a, between),
            q,
            SupplyLaws.RmsOfRamp<Real>(between, b)
        );
        Close.Within(SupplyLaws.RmsOfRamp<Real>(a, b), parts, 1e-12);
        Close.To(b, SupplyLaws.RmsOfRamp<Real>(b, b));
    }

    // A chopped square wave has the mean that the duty ratio was made for.
    [Property]
    public void DutyRatioGivesTheMeanVoltage(Fraction voltage, Fraction bus)
    {
        double v = voltage.Between(5, 150);
        double b = bus.Between(150, 350);
        double d = DcMotorLaws.DutyRatio<Real>(v, b);
        Close.To(v, (d * b) + ((1 - d) * 0));
    }

    [Property]
    public void LossOfAFluctuatingCurrentIsThatOfItsRms(Fraction first, Fraction second, Fraction share)
    {
        double a = first.Between(0, 20);
        double b = second.Between(0, 20);
        double q = share.Value;
        double mean = (q * DcMotorLaws.CopperLoss<Real>(a, 1.2)) + ((1 - q) * DcMotorLaws.CopperLoss<Real>(b, 1.2));
        Close.Within(mean, DcMotorLaws.CopperLoss<Real>(SupplyLaws.RmsOfTwo<Real>(a, q, b), 1.2), 1e-10);
    }
}
