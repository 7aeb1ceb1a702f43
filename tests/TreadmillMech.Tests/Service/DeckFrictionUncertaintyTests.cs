using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Stated uncertainties against the scatter of drawn readings (JCGM 101: propagation of distributions).</summary>
public sealed class DeckFrictionUncertaintyTests
{
    private const int Draws = 40_000;

    [Fact]
    public void OfAPull()
    {
        Mass mass = Mass.FromKilograms(60);
        Estimate<double> stated = DeckFriction
            .FromPull(mass, Force.FromNewtons(150), Force.FromNewtons(25), 0.03)
            .Value;
        Random random = new(11);
        double scatter = Scatter(() =>
            DeckFriction.FromPull(
                mass,
                Force.FromNewtons(Normal.Sample(random, 150, 0.03 * 150)),
                Force.FromNewtons(Normal.Sample(random, 25, 0.03 * 25))
            )
        );
        Close.To(scatter, stated.StandardUncertainty, 0.02);
    }

    // 2 % of each current, the options' default, and 4 % of the constant.
    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    public void OfACurrent(double grade)
    {
        Random random = new(12);
        double scatter = Scatter(() =>
            DeckFrictionCurrentTests.Friction(
                Normal.Sample(random, 5, 0.1),
                Normal.Sample(random, 2, 0.04),
                grade,
                Normal.Sample(random, 0.5, 0.02)
            )
        );
        Close.To(scatter, DeckFrictionCurrentTests.Friction(5, 2, grade).Value.StandardUncertainty, 0.02);
    }

    // 3 % of each power, the options' default, and 0.1 of the efficiency.
    [Theory]
    [InlineData(0)]
    [InlineData(0.1)]
    public void OfAPower(double grade)
    {
        Random random = new(13);
        double scatter = Scatter(() =>
            DeckFrictionPowerTests.Friction(
                Normal.Sample(random, 700, 21),
                Normal.Sample(random, 150, 4.5),
                grade,
                2,
                Normal.Sample(random, 0.65, 0.1)
            )
        );
        Close.To(scatter, DeckFrictionPowerTests.Friction(700, 150, grade, 2).Value.StandardUncertainty, 0.03);
    }

    // 0.5 % of each voltage and speed.
    [Fact]
    public void OfAMotorConstant()
    {
        Random random = new(14);
        Estimate<MotorConstant> stated = Constant(25, 50, 110, 220).Value;
        double scatter = Enumerable
            .Range(0, Draws)
            .Select(_ => Constant(Draw(25), Draw(50), Draw(110), Draw(220)).Value.Value.VoltSecondsPerRadian)
            .StandardDeviation();
        Close.To(scatter, stated.StandardUncertainty.VoltSecondsPerRadian, 0.03);

        double Draw(double value) => Normal.Sample(random, value, 0.005 * value);
    }

    private static Answer<Estimate<MotorConstant>> Constant(double v1, double v2, double w1, double w2) =>
        DeckFriction.MotorConstantFromUnloadedPoints(
            (ElectricPotential.FromVolts(v1), ElectricCurrent.FromAmperes(1), RotationalSpeed.FromRadiansPerSecond(w1)),
            (
                ElectricPotential.FromVolts(v2),
                ElectricCurrent.FromAmperes(1.2),
                RotationalSpeed.FromRadiansPerSecond(w2)
            ),
            ElectricResistance.FromOhms(1)
        );

    private static double Scatter(Func<Answer<Estimate<double>>> draw) =>
        Enumerable.Range(0, Draws).Select(_ => draw().Value.Value).StandardDeviation();
}
