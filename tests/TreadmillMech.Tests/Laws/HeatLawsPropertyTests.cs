using FsCheck.Xunit;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class HeatLawsPropertyTests
{
    [Property]
    public void TwoTimesInTurnAreTheirSum(Fraction first, Fraction final, Fraction one, Fraction two)
    {
        double f = final.Between(0, 100);
        double a = first.Between(0, 100);
        double t1 = one.Between(0, 7200);
        double t2 = two.Between(0, 7200);
        double between = ThermalLaws.RiseAfter<Real>(f, a, t1, 1800);
        Close.Within(
            ThermalLaws.RiseAfter<Real>(f, a, t1 + t2, 1800),
            ThermalLaws.RiseAfter<Real>(f, between, t2, 1800),
            1e-11
        );
    }

    [Property(MaxTest = 20)]
    public void RiseIsTheSolutionOfFirstOrderHeating(Fraction first, Fraction power, Fraction time)
    {
        double a = first.Between(0, 60);
        double p = power.Between(0, 200);
        double t = time.Between(100, 5000);
        Vector<double>[] path = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense(1, a),
            0,
            t,
            1001,
            (_, y) => (p - (1.5 * y)) / 2700
        );
        Close.Within(path[^1][0], ThermalLaws.RiseAfter<Real>(p / 1.5, a, t, 1800), 1e-8);
    }

    [Property]
    public void NoTimeChangesNothingAndMuchTimeIsTheEnd(Fraction first, Fraction final)
    {
        double a = first.Between(0, 60);
        double f = final.Between(0, 60);
        Close.Within(a, ThermalLaws.RiseAfter<Real>(f, a, 0, 1800), 1e-13);
        Close.Within(f, ThermalLaws.RiseAfter<Real>(f, a, 1e6, 1800), 1e-13);
    }

    // A load that the factor allows reaches the lasting rise just at its end.
    [Property]
    public void ShortTimeFactorEndsAtTheLastingRise(Fraction time, Fraction constant)
    {
        double t = time.Between(60, 7200);
        double tau = constant.Between(600, 7200);
        double factor = ThermalLaws.ShortTimeFactor<Real>(t, tau);
        Assert.True(factor >= 1);
        Close.To(50, ThermalLaws.RiseAfter<Real>(50 * factor, 0, t, tau), 1e-11);
    }

    [Property]
    public void DutyCycleRiseIsThatOfCyclesFollowedOneByOne(Fraction load, Fraction rest, Fraction hot, Fraction cold)
    {
        double t1 = load.Between(100, 3600);
        double t2 = rest.Between(100, 3600);
        double tau1 = hot.Between(900, 4000);
        double tau2 = cold.Between(900, 4000);
        double rise = 0;
        for (int i = 0; i < 1000; i++)
        {
            double cooled = ThermalLaws.RiseAfter<Real>(0, rise, t2, tau2);
            rise = ThermalLaws.RiseAfter<Real>(70, cooled, t1, tau1);
        }

        Close.To(rise, ThermalLaws.DutyCycleRise<Real>(70, t1, t2, tau1, tau2), 1e-11);
    }

    [Property]
    public void DutyCycleRiseLiesBetweenOneLoadFromColdAndALastingOne(Fraction load, Fraction rest)
    {
        double t1 = load.Between(100, 3600);
        double t2 = rest.Between(100, 3600);
        double rise = ThermalLaws.DutyCycleRise<Real>(70, t1, t2, 1800, 2600);
        Assert.InRange<double>(rise, ThermalLaws.RiseAfter<Real>(70, 0, t1, 1800), 70);
        Close.To(
            ThermalLaws.RiseAfter<Real>(70, 0, t1, 1800),
            ThermalLaws.DutyCycleRise<Real>(70, t1, 1e6, 1800, 2600)
        );
    }

    // Resistance, loss and rise fed into each other settle where the law says, below a ratio of one.
    [Property]
    public void CopperRiseIsTheFixedPointOfItsOwnLoss(Fraction loss, Fraction conductance)
    {
        double p = loss.Between(5, 100);
        double g = conductance.Between(1, 3);
        double ratio = ThermalLaws.RunawayRatio<Real>(p, 0.00393, g);
        double rise = 0;
        for (int i = 0; i < 400; i++)
        {
            rise = DeckWearLaws.FinalRise<Real>(p * (1 + (0.00393 * rise)), g);
        }

        Assert.True(ratio < 1);
        Close.To(rise, ThermalLaws.CopperRise<Real>(p, 0.00393, g), 1e-11);
        Close.To(p / g / (1 - ratio), ThermalLaws.CopperRise<Real>(p, 0.00393, g), 1e-12);
    }

    [Fact]
    public void AtARunawayRatioOfOneTheRiseIsInfiniteAndBeyondItNegative()
    {
        Assert.Equal(1, (double)ThermalLaws.RunawayRatio<Real>(64, 1.0 / 256, 0.25));
        Assert.True(double.IsPositiveInfinity(ThermalLaws.CopperRise<Real>(64, 1.0 / 256, 0.25)));
        Assert.True(ThermalLaws.CopperRise<Real>(65, 1.0 / 256, 0.25) < 0);
    }

    [Property]
    public void TemperatureAndResistanceUndoEachOther(Fraction cold, Fraction hot, Fraction resistance)
    {
        double t1 = cold.Between(0, 40);
        double t2 = hot.Between(0, 150);
        double r1 = resistance.Between(0.1, 5);
        double r2 = DcMotorLaws.CopperResistance<Real>(r1, t1, t2);
        Close.Within(t2, ThermalLaws.CopperTemperature<Real>(r1, r2, t1), 1e-10);
    }

    // The gain of resistance at ambient and the zero of resistance are one statement.
    [Property]
    public void CopperRiseAgreesWithItsTemperatureCoefficient(Fraction cold, Fraction loss)
    {
        double t1 = cold.Between(0, 40);
        double alpha = 1 / (234.5 + t1);
        double rise = ThermalLaws.CopperRise<Real>(loss.Between(5, 100), alpha, 1.5);
        double hot = DcMotorLaws.CopperResistance<Real>(0.8, t1, t1 + rise);
        Close.To(DcMotorLaws.CopperLoss<Real>(1, 0.8) * (1 + (alpha * rise)), DcMotorLaws.CopperLoss<Real>(1, hot));
        Close.Within(t1 + rise, ThermalLaws.CopperTemperature<Real>(0.8, hot, t1), 1e-9);
    }

    [Property]
    public void FanConductanceRunsFromStillToRated(Fraction still, Fraction fan, Fraction speed)
    {
        double g0 = still.Between(0.1, 2);
        double g1 = fan.Between(0, 3);
        Close.To(g0, ThermalLaws.FanConductance<Real>(g0, g1, 0));
        Close.To(g0 + g1, ThermalLaws.FanConductance<Real>(g0, g1, 1));
        Assert.InRange<double>(ThermalLaws.FanConductance<Real>(g0, g1, speed.Value), g0, (g0 + g1) * (1 + 1e-15));
    }

    [Property]
    public void WarmMagnetsRunFasterAtOneVoltage(Fraction rise)
    {
        double t = rise.Between(1, 80);
        double warm = DcMotorLaws.WarmConstant<Real>(0.5, 0.002, t);
        Close.To(0.5 * (1 - (0.002 * t)), warm);
        Assert.True(DcMotorLaws.Speed<Real>(warm, 100, 5, 0.8, 2) > DcMotorLaws.Speed<Real>(0.5, 100, 5, 0.8, 2));
    }
}
