using FsCheck.Xunit;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class TrackingLawsPropertyTests
{
    [Property(MaxTest = 1000)]
    public void BeamFactorIsTheFormulaInHyperbolicFunctions(Fraction slenderness)
    {
        double z = slenderness.Ratio(0.5, 500);
        Close.Within(Hyperbolic(z), Factor(z), 1e-13);
    }

    // Short of the formula's digits: the sums of sinh and cosh, term by term.
    [Property(MaxTest = 1000)]
    public void BeamFactorIsItsPowerSeriesForShortWideBelts(Fraction slenderness)
    {
        double z = slenderness.Ratio(1e-4, 1);

        // Below 0.05 the law keeps two terms of its own series; the next is z^4/1260.
        double allowed = 1e-11 + (z < 0.05 ? Math.Pow(z, 4) / 1260 : 0);
        Close.Within(Series(z), Factor(z), allowed);
    }

    [Property]
    public void BeamFactorLiesBetweenAThirdAndOne(Fraction slenderness)
    {
        double factor = Factor(slenderness.Ratio(1e-6, 1e6));
        Assert.InRange(factor, 1.0 / 3, 1);
    }

    [Fact]
    public void AStiffBeltDriftsAThirdAndAStringFully()
    {
        Close.Within(1.0 / 3, Factor(1e-6), 1e-12);
        Close.Within(1, Factor(1e6), 3e-6);
    }

    // The branch that is not chosen must not spoil the slope.
    [Property]
    public void SlopeOfTheBeamFactorHoldsOnBothSidesOfTheChange(Fraction slenderness)
    {
        double z = slenderness.Ratio(0.01, 5);
        double strain = z * z / 108;
        double slope = TrackingLaws.BeamFactor<Dual<Real>>(1.35, 0.45, Dual<Real>.Variable(strain)).Slope;

        // d/dz of the series by differences in z, far larger steps than the law could take; dz/dstrain = 54/z.
        double expected = Close.Slope(z < 1 ? Series : Hyperbolic, z, 1e-4 * z) * 54 / z;
        Close.To(expected, slope, z < 0.05 ? 2e-6 : 2e-6);
    }

    [Property]
    public void ShortensWithTheSideTightened(Fraction skew)
    {
        // Left longer: the belt goes right, towards the shorter side; and the other way about.
        double phi = skew.Between(1e-5, 0.02);
        Assert.True(TrackingLaws.StringDrift<Real>(phi, 1.35, 2.85) > 0);
        Close.To(
            -(double)TrackingLaws.StringDrift<Real>(phi, 1.35, 2.85),
            TrackingLaws.StringDrift<Real>(-phi, 1.35, 2.85)
        );
    }

    /// <summary>A string on two rollers, followed step by step: it meets each roller square, and keeps its place on it.</summary>
    [Fact]
    public void StringDriftIsThatOfAStringFollowedInTime()
    {
        const double c = 1.35;
        const double arc = 0.075;
        const double skew = 2e-3;
        const double step = 1.0 / 4000;
        const int steps = 400_000;
        int arcSteps = (int)Math.Round(arc / step);
        double[] tail = new double[steps + 1];
        double[] front = new double[steps + 1];
        for (int i = 0; i < steps; i++)
        {
            // What comes off a roller went onto it half a turn earlier; a skewed roller carries it along its own
            // normal, which points forth on one strand and back on the other: no step aside on the way round.
            double offTail = i < arcSteps ? 0 : tail[i - arcSteps];
            double offFront = i < arcSteps ? 0 : front[i - arcSteps];
            tail[i + 1] = tail[i] + (step * (skew - ((tail[i] - offFront) / c)));
            front[i + 1] = front[i] + (step * (0 - ((front[i] - offTail) / c)));
        }

        double metres = steps * step / 2;
        double drift = (tail[steps] - tail[steps / 2]) / metres;
        Close.To(drift, TrackingLaws.StringDrift<Real>(skew, c, (2 * c) + (2 * arc)), 1e-6);
    }

    [Property(MaxTest = 20)]
    public void OffsetIsTheSolutionOfDriftAgainstACrown(Fraction first, Fraction drift, Fraction crown, Fraction length)
    {
        double y0 = first.Between(-0.01, 0.01);
        double g = drift.Between(-1e-3, 1e-3);
        double lambda = crown.Between(2, 50);
        double x = length.Between(1, 100);
        Vector<double>[] path = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense(1, y0),
            0,
            x,
            2001,
            (_, y) => g - (y / lambda)
        );
        double settled = TrackingLaws.SettledOffset<Real>(g, lambda);
        Close.Within(path[^1][0], TrackingLaws.OffsetAfter<Real>(y0, settled, x, lambda), 1e-9);
    }

    [Property]
    public void OffsetNeverPassesTheOneItSettlesAt(Fraction first, Fraction settled, Fraction length)
    {
        double y0 = first.Between(-0.01, 0.01);
        double end = settled.Between(-0.01, 0.01);
        double y = TrackingLaws.OffsetAfter<Real>(y0, end, length.Ratio(1e-3, 1e4), 12);
        Assert.InRange(y, Math.Min(y0, end) - 1e-17, Math.Max(y0, end) + 1e-17);
        Close.Within(end, TrackingLaws.OffsetAfter<Real>(y0, end, 1e4, 12), 1e-17);
        Assert.Equal(y0, TrackingLaws.OffsetAfter<Real>(y0, end, 0, 12), 1e-17);
    }

    [Property]
    public void OffsetsInTurnAreOneOverBothLengths(Fraction first, Fraction one, Fraction two)
    {
        double y0 = first.Between(-0.01, 0.01);
        double a = one.Between(0, 60);
        double b = two.Between(0, 60);
        double between = TrackingLaws.OffsetAfter<Real>(y0, 0.004, a, 12);
        Close.Within(
            TrackingLaws.OffsetAfter<Real>(y0, 0.004, a + b, 12),
            TrackingLaws.OffsetAfter<Real>(between, 0.004, b, 12),
            1e-16
        );
    }

    [Property]
    public void TheGainThatWasPutInIsObserved(Fraction gain, Fraction skew)
    {
        double g = gain.Between(0.3, 1);
        double phi = skew.Between(1e-4, 0.01);
        double drift = g * TrackingLaws.StringDrift<Real>(phi, 1.35, 2.85);
        Close.To(g, TrackingLaws.ObservedGain<Real>(drift, phi, 1.35, 2.85));
    }

    /// <summary>The law for a belt three times as long as wide, by its slenderness.</summary>
    private static double Factor(double z) => TrackingLaws.BeamFactor<Real>(1.35, 0.45, z * z / 108);

    private static double Hyperbolic(double z)
    {
        // Divided by cosh, which overflows first.
        double inverse = 1 / Math.Cosh(z);
        double h = (1 - (Math.Tanh(z) / z)) / (1 - inverse);
        return (2 * h) - 1;
    }

    private static double Series(double z)
    {
        // cosh z - sinh z/z = sum of z^2k (1/(2k)! - 1/(2k+1)!), cosh z - 1 = sum of z^2k/(2k)!, both from k = 1.
        double top = 0;
        double bottom = 0;
        double term = 1;
        for (int k = 1; k < 12; k++)
        {
            term *= z * z / ((2 * k) - 1) / (2 * k);
            top += term * (1 - (1.0 / ((2 * k) + 1)));
            bottom += term;
        }

        return (2 * top / bottom) - 1;
    }
}
