using TreadmillMech.Studies;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>Published examples of both guides.</summary>
public sealed class PublishedUncertaintyTests
{
    // JCGM 100:2008, H.1, read: l = 50 000 838 nm, u = 32 nm (31.71), 16 degrees of freedom, U99 = 93 nm.
    [Fact]
    public void AnEndGauge()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal("ls", 50_000_623, 25) with
            {
                DegreesOfFreedom = 18,
            },
            UncertainInput.Normal("d", 215, 9.7) with
            {
                DegreesOfFreedom = 25.6,
            },
            UncertainInput.Normal("alpha", Per(11.5e-6), Per(1.2e-6)),
            UncertainInput.Normal("theta", Kelvin(-0.1), Kelvin(0.41)),
            UncertainInput.Normal("d alpha", Per(0), Per(0.58e-6)) with
            {
                DegreesOfFreedom = 50,
            },
            UncertainInput.Normal("d theta", Kelvin(0), Kelvin(0.029)) with
            {
                DegreesOfFreedom = 2,
            },
        ];
        PropagatedUncertainty gauge = Uncertainty.Propagate(new Gauge(), inputs, new() { Coverage = 0.99 }).Value;
        Assert.Equal(50_000_838, gauge.Value.Si, 0.5);
        Assert.Equal(31.71, gauge.StandardUncertainty.Si, 0.005);
        Assert.Equal(16, Math.Floor(gauge.EffectiveDegreesOfFreedom));
        Assert.Equal(2.92, gauge.CoverageFactor, 0.005);
        Assert.Equal(93, gauge.ExpandedUncertainty.Si, 0.5);
        Assert.False(gauge.DegreesOfFreedomAreAGuide);

        // By hand: u(ls) (1 - 0), ls alpha u(d theta), u(d), ls theta u(d alpha); the other two have no slope.
        double[] expected = [25, 50_000_623 * 11.5e-6 * 0.029, 9.7, 50_000_623 * 0.1 * 0.58e-6, 0, 0];
        Assert.Equal(6, gauge.Budget.Count);
        for (int i = 0; i < 6; i++)
        {
            Assert.Equal(expected[i], gauge.Budget[i].Contribution.Si, 1e-9);
        }

        Assert.Equal(1, gauge.Budget.Sum(row => row.Share.DecimalFractions), 12);
        Assert.Equal("1/K", gauge.Budget[3].Input.Value.Unit);

        static PhysicalValue Per(double value) => PhysicalValue.Of(value, "1/K");
        static PhysicalValue Kelvin(double value) => PhysicalValue.Of(value, "K");
    }

    // JCGM 100:2008, H.2: inputs and results transcribed (a public worked copy of the example gives 127.732(70),
    // 219.85(30), 254.26(24)); the standard uncertainties 0.06998, 0.29572, 0.23660 are those inputs recomputed (numpy).
    [Theory]
    [InlineData(0, 127.732, 0.0005, 0.0699787)]
    [InlineData(1, 219.85, 0.005, 0.2957168)]
    [InlineData(2, 254.26, 0.005, 0.2366030)]
    public void ResistanceAndReactanceMeasuredTogether(int which, double value, double tolerance, double uncertainty)
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal("V", ElectricPotential.FromVolts(4.9990), ElectricPotential.FromVolts(0.0032)),
            UncertainInput.Normal(
                "I",
                ElectricCurrent.FromMilliamperes(19.6610),
                ElectricCurrent.FromMilliamperes(0.0095)
            ),
            UncertainInput.Normal("phi", Angle.FromRadians(1.04446), Angle.FromRadians(0.00075)),
        ];
        UncertaintyOptions options = new()
        {
            Correlations = [new("V", "I", -0.36), new("V", "phi", 0.86), new("I", "phi", -0.65)],
        };
        ComparedUncertainty both = Uncertainty.Compare(new Impedance(which), inputs, seed: 2, options).Value;
        Assert.Equal(value, both.Propagated.Value.As<ElectricResistance>().Ohms, tolerance);
        Assert.Equal(uncertainty, both.Propagated.StandardUncertainty.Si, 5e-8);
        Assert.Equal(uncertainty, both.Sampled.StandardUncertainty.Si, 0.01 * uncertainty);
        // An uncertainty of 0.070 has a fine second digit: a million draws may leave it open.
        Assert.NotEqual(Agreement.Differ, both.Agreement);
        Assert.Equal(1, both.Propagated.Budget.Sum(row => row.Share.DecimalFractions), 12);
    }

    // JCGM 100:2008, 5.2.2, example, from memory: ten resistors of 1000 ohm, each compared with the same standard of
    // u = 100 mohm: all correlations are one, so the sum has u = 1 ohm, not 0.32 ohm.
    [Fact]
    public void TenResistorsComparedWithOneStandard()
    {
        ElectricResistance each = ElectricResistance.FromOhms(1000);
        ElectricResistance u = ElectricResistance.FromMilliohms(100);
        UncertainInput[] inputs = [.. Enumerable.Range(0, 10).Select(i => UncertainInput.Normal($"R{i}", each, u))];
        Correlation[] all =
        [
            .. from i in Enumerable.Range(0, 10)
            from j in Enumerable.Range(0, i)
            select new Correlation($"R{i}", $"R{j}", 1),
        ];
        ComparedUncertainty tied = Uncertainty.Compare(new Sum("ohm"), inputs, 1, new() { Correlations = all }).Value;
        Assert.Equal(1, tied.Propagated.StandardUncertainty.As<ElectricResistance>().Ohms, 1e-12);
        Assert.Equal(1, tied.Sampled.StandardUncertainty.Si, 0.01);
        Assert.Equal(Agreement.Agree, tied.Agreement);
        Assert.Equal(
            Math.Sqrt(10) * 0.1,
            Uncertainty.Propagate(new Sum("ohm"), inputs).Value.StandardUncertainty.Si,
            1e-12
        );
    }

    // JCGM 101:2008, 9.2.2: four standard normal inputs, derived: u = 2, 95 % within 1.95996 times that.
    [Fact]
    public void FourNormalInputs()
    {
        UncertainInput[] inputs = [.. Enumerable.Range(0, 4).Select(i => UncertainInput.Normal($"x{i}", 0, 1))];
        ComparedUncertainty sum = Uncertainty.Compare(new Sum(), inputs, 9, new() { Draws = 1_000_000 }).Value;
        Assert.Equal(3.91993, sum.Propagated.High.Si, 5e-6);
        Assert.Equal(3.91993, sum.Sampled.High.Si, 0.015);
        Assert.Equal(-3.91993, sum.Sampled.ShortestLow.Si, 0.05);
        Assert.Equal(Agreement.Agree, sum.Agreement);
        Assert.Equal(0.05, sum.Tolerance.Si, 1e-15);
    }

    // JCGM 101:2008, 9.2.3, derived: four rectangular inputs of u = 1 each, 95 % within 2 sqrt3 (2 - (3/5)^(1/4)).
    [Fact]
    public void FourRectangularInputs()
    {
        UncertainInput[] inputs =
        [
            .. Enumerable.Range(0, 4).Select(i => UncertainInput.Rectangular($"x{i}", 0, Math.Sqrt(3))),
        ];
        ComparedUncertainty sum = Uncertainty.Compare(new Sum(), inputs, 9, new() { Draws = 1_000_000 }).Value;
        double end = 2 * Math.Sqrt(3) * (2 - Math.Pow(0.6, 0.25));
        Assert.Equal(3.8794, end, 5e-5);
        Assert.Equal(end, sum.Sampled.High.Si, 0.012);
        Assert.Equal(-end, sum.Sampled.Low.Si, 0.012);
        Assert.Equal(2, sum.Sampled.StandardUncertainty.Si, 0.006);
        Assert.Equal(3.91993, sum.Propagated.High.Si, 5e-6);
        Assert.True(sum.Sampled.Convergence.Settled);
    }

    // JCGM 101:2008, 9.2.4, from memory: one rectangular input of u = 10 among three of u = 1. Against the drawing of
    // +-17.0 the law of propagation gives +-19.9: they do not agree.
    [Fact]
    public void OneInputThatOutweighsTheOthers()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Rectangular("x0", 0, Math.Sqrt(3)),
            UncertainInput.Rectangular("x1", 0, Math.Sqrt(3)),
            UncertainInput.Rectangular("x2", 0, Math.Sqrt(3)),
            UncertainInput.Rectangular("x3", 0, 10 * Math.Sqrt(3)),
        ];
        ComparedUncertainty sum = Uncertainty.Compare(new Sum(), inputs, 9, new() { Draws = 1_000_000 }).Value;
        Assert.Equal(17.0, sum.Sampled.High.Si, 0.05);
        Assert.Equal(19.9, sum.Propagated.High.Si, 0.05);
        Assert.Equal(Agreement.Differ, sum.Agreement);
        Assert.Equal("x3", sum.Propagated.Budget[0].Input.Name);
    }

    // JCGM 101:2008, 9.3: mass calibration. By drawing u = 0.0754 and the shortest interval 1.0834 to 1.3825, by the first
    // order of the law 0.0539 and 1.1285 to 1.3395, all from memory; ten million draws in numpy gave u = 0.07547 and the
    // symmetric interval 1.0846 to 1.3836 (masses in mg). Where the shortest interval lies is noisy, its length is not.
    [Fact]
    public void AMassInAir()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal("m Rc", 100_000, 0.05),
            UncertainInput.Normal("dm Rc", 1.234, 0.02),
            UncertainInput.Rectangular("air", 1.2, 0.1),
            UncertainInput.Rectangular("weight", 8000, 1000),
            UncertainInput.Rectangular("reference", 8000, 50),
        ];
        ComparedUncertainty mass = Uncertainty.Compare(new MassInAir(), inputs, 4, new() { Draws = 1_000_000 }).Value;
        Assert.Equal(1.234, mass.Propagated.Value.Si, 1e-9);
        Assert.Equal(0.0539, mass.Propagated.StandardUncertainty.Si, 5e-5);
        Assert.Equal(1.1285, mass.Propagated.Low.Si, 1e-4);
        Assert.Equal(1.3395, mass.Propagated.High.Si, 1e-4);
        Assert.Equal(1.234, mass.Sampled.Mean.Si, 5e-4);
        Assert.Equal(0.0754, mass.Sampled.StandardUncertainty.Si, 2e-4);
        Assert.Equal(1.0846, mass.Sampled.Low.Si, 1e-3);
        Assert.Equal(1.3836, mass.Sampled.High.Si, 1e-3);
        Assert.Equal(1.3825 - 1.0834, mass.Sampled.ShortestHigh.Si - mass.Sampled.ShortestLow.Si, 1e-3);
        Assert.Equal(Agreement.Differ, mass.Agreement);
    }

    // JCGM 101:2008, 9.4, derived: Y = X1^2 + X2^2 with both normal about zero, u = 0.005. Uncorrelated it is u^2 times
    // chi-squared with two degrees of freedom: mean and u 50e-6, 95th percentile -2 u^2 ln 0.05. With a correlation of 0.9
    // u is 2 u^2 sqrt(1 + 0.9^2). The first order of the law gives u = 0.
    [Theory]
    [InlineData(0)]
    [InlineData(0.9)]
    public void ALossOfPower(double correlation)
    {
        UncertainInput[] inputs = [UncertainInput.Normal("x1", 0, 0.005), UncertainInput.Normal("x2", 0, 0.005)];
        UncertaintyOptions options = new() { Draws = 1_000_000, Correlations = [new("x1", "x2", correlation)] };
        ComparedUncertainty loss = Uncertainty.Compare(new Squares(), inputs, 8, options).Value;
        Assert.Equal(0, loss.Propagated.StandardUncertainty.Si);
        Assert.Equal(50e-6, loss.Sampled.Mean.Si, 0.4e-6);
        Assert.Equal(50e-6 * Math.Sqrt(1 + (correlation * correlation)), loss.Sampled.StandardUncertainty.Si, 0.5e-6);
        Assert.Equal(Agreement.Differ, loss.Agreement);
        if (correlation == 0)
        {
            Assert.Equal(-50e-6 * Math.Log(0.05), loss.Sampled.ShortestHigh.Si, 1e-6);
            Assert.InRange(loss.Sampled.ShortestLow.Si, 0, 0.2e-6);
            Assert.Equal(-50e-6 * Math.Log(0.975), loss.Sampled.Low.Si, 0.05e-6);
            Assert.Equal(-50e-6 * Math.Log(0.5), loss.Sampled.Percentile(0.5).Si, 0.2e-6);
            Assert.Equal(0.5, loss.Sampled.ShareBelow(-50e-6 * Math.Log(0.5)), 0.002);
        }
    }

    // JCGM 100:2008, H.3, from memory: a line fitted to eleven readings of a thermometer, intercept -0.1712 deg C with
    // u = 0.0029, slope 0.00218 with u = 0.00067, correlation -0.930; the correction at 30 deg C, 10 K from where the
    // intercept was taken, is -0.1494 deg C with u = 0.0041 and 9 degrees of freedom. Without the correlation u would be
    // 0.0073 (by hand).
    [Fact]
    public void ACorrectionFromAFittedLine()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal("intercept", -0.1712, 0.0029),
            UncertainInput.Normal("slope", 0.00218, 0.00067),
        ];
        UncertaintyOptions tied = new() { Correlations = [new("intercept", "slope", -0.930)] };
        ComparedUncertainty both = Uncertainty.Compare(new Line(10), inputs, 3, tied).Value;
        Assert.Equal(-0.1494, both.Propagated.Value.Si, 5e-5);
        Assert.Equal(0.0041, both.Propagated.StandardUncertainty.Si, 5e-5);
        Assert.Equal(0.0041, both.Sampled.StandardUncertainty.Si, 1e-4);
        Assert.NotEqual(Agreement.Differ, both.Agreement);
        Assert.Equal(
            Math.Sqrt((0.0029 * 0.0029) + (0.0067 * 0.0067)),
            Uncertainty.Propagate(new Line(10), inputs).Value.StandardUncertainty.Si,
            1e-12
        );
    }

    // EURACHEM/CITAC guide CG 4, example A1, from memory: cadmium weighed and dissolved, 1002.7 mg/l with u = 0.9 mg/l; by
    // hand 1002.7 sqrt(0.0005^2 + 0.000058^2 + 0.0007^2) = 0.863 with u of the volume taken as 0.07 ml.
    [Fact]
    public void AStandardSolution()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal("mass", 100.28, 0.05),
            UncertainInput.Rectangular("purity", 0.9999, 0.0001),
            UncertainInput.Normal("volume", 100, 0.07),
        ];
        ComparedUncertainty both = Uncertainty.Compare(new Concentration(), inputs, 5).Value;
        Assert.Equal(1002.7, both.Propagated.Value.Si, 0.05);
        Assert.Equal(0.9, both.Propagated.StandardUncertainty.Si, 0.05);
        Assert.Equal(0.9, both.Sampled.StandardUncertainty.Si, 0.05);
        Assert.Equal("volume", both.Propagated.Budget[0].Input.Name);
        Assert.Equal("purity", both.Propagated.Budget[^1].Input.Name);
    }

    private sealed class Line(double beyond) : IMeasurement
    {
        public string Name => "correction";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => x[0] + (beyond * x[1]);
    }

    private sealed class Concentration : IMeasurement
    {
        public string Name => "concentration";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => 1000 * x[0] * x[1] / x[2];
    }

    private sealed class Gauge : IMeasurement
    {
        public string Name => "length";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => x[0] + x[1] - (x[0] * ((x[4] * x[3]) + (x[2] * x[5])));
    }

    private sealed class Impedance(int which) : IMeasurement
    {
        public string Name => "impedance";

        public string Unit => "ohm";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T>
        {
            (T sin, T cos) = T.SinCos(x[2]);
            T size = x[0] / x[1];
            return which switch
            {
                0 => size * cos,
                1 => size * sin,
                _ => size,
            };
        }
    }

    private sealed class MassInAir : IMeasurement
    {
        public string Name => "deviation of the mass";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => ((x[0] + x[1]) * (1 + ((x[2] - 1.2) * ((1 / x[3]) - (1 / x[4]))))) - 100_000;
    }

    private sealed class Squares : IMeasurement
    {
        public string Name => "loss";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => (x[0] * x[0]) + (x[1] * x[1]);
    }
}
