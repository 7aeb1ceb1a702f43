using FsCheck.Xunit;
using MathNet.Numerics.Integration;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>Balances and shapes of the feet's forces, by quadrature and dense sampling.</summary>
[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class GaitLawsPropertyTests
{
    private const int Order = 32;
    private const double LeastHarmonic = -1.0 / 3;

    [Property]
    public void TwoFeetCarryTheWeightOverAStride(Fraction duty, Fraction harmonic, Fraction mass)
    {
        double beta = duty.Between(0.2, 0.75);
        double q = harmonic.Between(LeastHarmonic, 1);
        double weight = GaitLaws.MeanNormalForce<Real>(mass.Between(30, 200), 0, 0);
        double amplitude = GaitLaws.NormalAmplitude<Real>(weight, beta, q);
        Close.To(weight, StrideMean(u => amplitude * GaitLaws.NormalShape<Real>(u, q), beta), 1e-13);
    }

    [Property]
    public void ForeAftForcesCancelOverAStance(Fraction share)
    {
        double phi = share.Between(0.1, 0.9);
        double Shape(double u) => GaitLaws.ForeAftShape<Real>(u, phi);
        double braking = GaussLegendreRule.Integrate(Shape, 0, phi, Order);
        double propulsion = GaussLegendreRule.Integrate(Shape, phi, 1, Order);

        // A half sine of height one and length phi.
        Close.To(2 * phi / Math.PI, braking, 1e-13);
        Close.Within(0, braking + propulsion, 1e-15);
    }

    [Property]
    public void FrictionPowerIsThatOfTheMeanForceForTheLawsWaveform(
        Fraction duty,
        Fraction harmonic,
        Fraction incline,
        Fraction speed
    )
    {
        double beta = duty.Between(0.2, 0.75);
        double q = harmonic.Between(LeastHarmonic, 1);
        double theta = incline.Between(-0.05, 0.15);
        double v = speed.Between(0.2, 6);
        double normal = GaitLaws.MeanNormalForce<Real>(80, theta, 0);
        double amplitude = GaitLaws.NormalAmplitude<Real>(normal, beta, q);
        double mean = StrideMean(
            u => v * DeckLaws.FrictionForce<Real>(0.2, amplitude * GaitLaws.NormalShape<Real>(u, q)),
            beta
        );
        Close.To(0.2 * 80 * 9.80665 * v * Math.Cos(theta), mean, 1e-12);
        Close.To(mean, DeckLaws.FrictionPower<Real>(0.2, normal, v), 1e-12);
    }

    /// <summary>Waveforms that the laws do not know: any power of any skew hump, brought to the weight.</summary>
    [Property]
    public void FrictionPowerIsThatOfTheMeanForceForAnyWaveform(Fraction duty, Fraction power, Fraction skew)
    {
        double beta = duty.Between(0.2, 0.75);
        int exponent = (int)power.Between(1, 6);
        double lean = skew.Between(-0.9, 0.9);
        double Hump(double u) => Math.Pow(4 * u * (1 - u), exponent) * (1 + (lean * ((2 * u) - 1)));
        double weight = GaitLaws.MeanNormalForce<Real>(80, 0, 0);
        double height = weight / StrideMean(Hump, beta);
        double mean = StrideMean(u => 2.5 * DeckLaws.FrictionForce<Real>(0.2, height * Hump(u)), beta);
        Close.To(DeckLaws.FrictionPower<Real>(0.2, weight, 2.5), mean, 1e-12);
    }

    [Property]
    public void MidStanceIsOneLessTheThirdHarmonic(Fraction harmonic)
    {
        double q = harmonic.Between(LeastHarmonic, 1);
        Close.Within(1 - q, GaitLaws.NormalShape<Real>(0.5, q), 1e-15);
    }

    [Property]
    public void ShapeIsTheSumOfTwoSines(Fraction phase, Fraction harmonic)
    {
        double u = phase.Value;
        double q = harmonic.Between(LeastHarmonic, 1);
        Close.Within(Math.Sin(Math.PI * u) + (q * Math.Sin(3 * Math.PI * u)), GaitLaws.NormalShape<Real>(u, q), 1e-14);
    }

    [Property]
    public void TheForceHasTwoHumpsAboveANinth(Fraction harmonic)
    {
        double q = harmonic.Between(LeastHarmonic, 1);

        // At a ninth the humps lie on top of each other; leave what dense sampling cannot tell apart.
        if (Math.Abs(q - (1.0 / 9)) > 1e-4)
        {
            Assert.Equal(q > 1.0 / 9 ? 2 : 1, Humps(q));
        }
    }

    [Theory]
    [InlineData(0.1, 1)]
    [InlineData(0.111, 1)]
    [InlineData(0.1115, 2)]
    [InlineData(0.2, 2)]
    public void HumpsAreCounted(double q, int expected) => Assert.Equal(expected, Humps(q));

    [Property(MaxTest = 300)]
    public void PeakIsTheLargestOfManySamples(Fraction harmonic)
    {
        double q = harmonic.Between(LeastHarmonic, 1);
        double[] samples = Samples(q);
        double peak = GaitLaws.NormalShapePeak<Real>(q);

        // Samples a 4000th apart miss a summit by at most its curvature, 10 pi squared at most, over 8 x 4000^2.
        Assert.All(samples, sample => Assert.True(sample <= peak + 1e-15));
        Close.Within(peak, samples.Max(), 10 * Math.PI * Math.PI / (8 * 4000.0 * 4000.0));
    }

    [Property]
    public void NoFootPullsOnTheBelt(Fraction harmonic) =>
        Assert.All(Samples(harmonic.Between(LeastHarmonic, 1)), force => Assert.True(force >= -1e-15));

    [Theory]
    [InlineData(-0.34)]
    [InlineData(1.01)]
    public void BeyondTheRangeOfTheThirdHarmonicAFootWouldPull(double q) => Assert.Contains(Samples(q), f => f < -1e-6);

    [Property]
    public void TheForceIsTheSameForwardsAndBackwards(Fraction phase, Fraction harmonic)
    {
        double q = harmonic.Between(LeastHarmonic, 1);
        Close.Within(GaitLaws.NormalShape<Real>(phase.Value, q), GaitLaws.NormalShape<Real>(1 - phase.Value, q), 1e-14);
    }

    [Property]
    public void FootBrakesFirstAndPushesOffAfterwards(Fraction share, Fraction phase)
    {
        double phi = share.Between(0.1, 0.9);
        Assert.True(GaitLaws.ForeAftShape<Real>(phi * phase.Between(0.01, 0.99), phi) > 0);
        Assert.True(GaitLaws.ForeAftShape<Real>(phi + ((1 - phi) * phase.Between(0.01, 0.99)), phi) < 0);
        Close.Within(0, GaitLaws.ForeAftShape<Real>(phi, phi), 1e-14);
    }

    [Property]
    public void StepAndContactMakeTheDutyFactor(Fraction duty, Fraction frequency)
    {
        double f = frequency.Between(1, 4);
        double contact = GaitLaws.ContactTime<Real>(duty.Between(0.2, 0.75), f);
        Close.To(duty.Between(0.2, 0.75), contact / (2 / f));
    }

    [Property]
    public void WeightSplitsOnAnInclineByPythagoras(Fraction mass, Fraction incline, Fraction rails)
    {
        double m = mass.Between(30, 200);
        double theta = incline.Between(-0.2, 0.2);
        double lambda = rails.Between(0, 0.9);
        double normal = GaitLaws.MeanNormalForce<Real>(m, theta, lambda);
        double tangential = GaitLaws.MeanTangentialForce<Real>(m, theta, lambda, 0);
        Close.To((1 - lambda) * m * 9.80665, Math.Sqrt((normal * normal) + (tangential * tangential)));
        Assert.True(theta > 0 ? tangential < 0 : tangential >= 0);
    }

    [Fact]
    public void WalkersAlwaysHaveAFootOnTheBeltAndRunnersNeverTwo()
    {
        for (double v = 0.1; v < 12; v += 0.05)
        {
            Assert.InRange<double>(GaitLaws.WalkingDutyFactor<Real>(v), 0.5, 0.7);
            Assert.InRange<double>(GaitLaws.RunningDutyFactor<Real>(v), 0.1, 0.5);
            Assert.InRange<double>(GaitLaws.WalkingThirdHarmonic<Real>(v), LeastHarmonic, 1);
            Assert.InRange<double>(GaitLaws.RunningBrakingShare<Real>(v), 0.34, 0.62);
        }
    }

    [Fact]
    public void WalkersHaveTwoHumpsAndRunnersOne()
    {
        Assert.Equal(2, Humps(GaitLaws.WalkingThirdHarmonic<Real>(1.2)));
        Assert.Equal(1, Humps(GaitLaws.RunningThirdHarmonic<Real>(3)));
    }

    /// <summary>Mean over a stride of both feet together, the second half a stride behind the first.</summary>
    private static double StrideMean(Func<double, double> stance, double duty)
    {
        double Foot(double stride) => stride < duty ? stance(stride / duty) : 0;
        double Feet(double stride) => Foot(stride) + Foot((stride + 0.5) % 1);

        // Pieces between which no foot lands or leaves.
        double[] ends = [.. new[] { 0, duty, 0.5, (duty + 0.5) % 1, 1 }.Order()];
        return ends.Zip(ends.Skip(1), (from, to) => to > from ? GaussLegendreRule.Integrate(Feet, from, to, Order) : 0)
            .Sum();
    }

    private static double[] Samples(double q) =>
        [.. Enumerable.Range(0, 4001).Select(i => (double)GaitLaws.NormalShape<Real>(i / 4000.0, q))];

    private static int Humps(double q)
    {
        double[] force = Samples(q);
        return Enumerable.Range(1, 3999).Count(i => force[i] > force[i - 1] && force[i] >= force[i + 1]);
    }

    // Froude number one half: what walking on a stiff leg needs of gravity.
    [Property]
    public void WalkRunSpeedHasAFroudeNumberOfOneHalf(Fraction leg)
    {
        double l = leg.Between(0.4, 1.1);
        double v = GaitLaws.WalkRunSpeed<Real>(l);
        Close.To(0.5, v * v / (9.80665 * l));
    }

    // The mean of the stance shape is the stance-mean force: both feet carry the weight over a stride.
    [Property]
    public void StanceMeanForceIsTheMeanOfTheForceShape(Fraction duty, Fraction harmonic)
    {
        double beta = duty.Between(0.25, 0.7);
        double q = harmonic.Between(-0.2, 0.8);
        double mean =
            GaussLegendreRule.Integrate(s => GaitLaws.NormalShape<Real>(s, q), 0, 1, 64)
            * GaitLaws.NormalAmplitude<Real>(1, beta, q);
        Close.To(mean, GaitLaws.StanceMeanForce<Real>(beta), 1e-10);
    }

    [Property]
    public void UnevenFeetKeepTheStrideMean(Fraction asymmetry)
    {
        double a = asymmetry.Between(-1, 1);
        Close.To(2, GaitLaws.AsymmetryFactor<Real>(a) + GaitLaws.AsymmetryFactor<Real>(-a), 1e-15);
    }

    // Dynamic similarity: equal Froude numbers, v2/(g l), and equal Strouhal numbers, f l/v.
    [Property]
    public void LegsOfAnyLengthHaveTheSameFroudeAndStrouhalNumbers(Fraction leg, Fraction speed)
    {
        double l = leg.Between(0.4, 1.3);
        double v = speed.Between(0.5, 2);
        double scale = GaitLaws.LegScale<Real>(l, 0.92);
        double similar = v * scale;
        Close.To(similar * similar / 0.92, v * v / l);
        double f = scale * GaitLaws.WalkingStepFrequency<Real>(similar);
        Close.To(GaitLaws.WalkingStepFrequency<Real>(similar) * 0.92 / similar, f * l / v);
        Close.To(GaitLaws.WalkRunSpeed<Real>(0.92), GaitLaws.WalkRunSpeed<Real>(l) * scale);
    }
}
