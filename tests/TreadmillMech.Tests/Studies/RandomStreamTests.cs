using System.Runtime.InteropServices;
using MathNet.Numerics.Distributions;
using TreadmillMech.Studies;
using Sweep = TreadmillMech.Tests.Numbers.Sweep;

namespace TreadmillMech.Tests.Studies;

/// <summary>The random numbers against values computed another way, and their distributions against MathNet's.</summary>
public sealed class RandomStreamTests
{
    // xoshiro256++ from the state 1, 2, 3, 4, in whole numbers of any size (Python).
    [Fact]
    public void TheNumbersAreThoseOfTheGenerator()
    {
        RandomStream stream = new(1, 2, 3, 4);
        ulong[] expected =
        [
            41943041,
            58720359,
            3588806011781223,
            3591011842654386,
            9228616714210784205,
            9973669472204895162,
        ];
        Assert.Equal(expected, expected.Select(_ => stream.Next()));
    }

    // The step as a matrix over two elements, squared 128 times (Python): it shares no constant with the jump.
    [Fact]
    public void AJumpIsThatManySteps()
    {
        RandomStream stream = new(1, 2, 3, 4);
        stream.Jump();
        ulong[] expected =
        [
            17043750140134683703,
            2364973248208838314,
            13951431646535487319,
            8066193832155293345,
            10838999831620499216,
            8680420094678800874,
        ];
        Assert.Equal(expected, expected.Select(_ => stream.Next()));
    }

    // SplitMix64 from 1234567, in whole numbers of any size (Python): the state is its first four numbers.
    [Fact]
    public void ASeedFillsTheState()
    {
        RandomStream filled = new(6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431);
        Assert.Equal(filled.Next(), RandomStream.Of(1234567, 1)[0].Next());
        RandomStream[] streams = RandomStream.Of(1234567, 3);
        filled = RandomStream.Of(1234567, 1)[0];
        filled.Jump();
        filled.Jump();
        Assert.Equal(filled.Next(), streams[2].Next());
    }

    [Theory]
    [InlineData(Distribution.Normal, double.PositiveInfinity, false)]
    [InlineData(Distribution.Normal, double.PositiveInfinity, true)]
    [InlineData(Distribution.Normal, 1, false)]
    [InlineData(Distribution.Normal, 5, false)]
    [InlineData(Distribution.Normal, 5, true)]
    [InlineData(Distribution.Rectangular, double.PositiveInfinity, false)]
    [InlineData(Distribution.Rectangular, double.PositiveInfinity, true)]
    [InlineData(Distribution.Triangular, double.PositiveInfinity, false)]
    [InlineData(Distribution.Triangular, double.PositiveInfinity, true)]
    [InlineData(Distribution.Lognormal, double.PositiveInfinity, false)]
    [InlineData(Distribution.Lognormal, double.PositiveInfinity, true)]
    public void DrawsHaveTheQuantilesOfTheirDistribution(Distribution distribution, double freedom, bool correlated)
    {
        UncertainInput input = distribution switch
        {
            Distribution.Rectangular => UncertainInput.Rectangular("x", 5, 2),
            Distribution.Triangular => UncertainInput.Triangular("x", 5, 2),
            Distribution.Lognormal => UncertainInput.Lognormal("x", 5, 2),
            _ => UncertainInput.Normal("x", 5, 2) with { DegreesOfFreedom = freedom },
        };
        IContinuousDistribution expected = distribution switch
        {
            Distribution.Rectangular => new ContinuousUniform(3, 7),
            Distribution.Triangular => new Triangular(3, 7, 5),
            Distribution.Lognormal => LogNormal.WithMeanVariance(5, 4),
            _ when double.IsFinite(freedom) => new StudentT(5, 2, freedom),
            _ => new Normal(5, 2),
        };
        UncertaintyOptions options = correlated ? new() { Correlations = [new("x", "y", 0.6)] } : new();
        UncertainSet set = new([UncertainInput.Normal("y", 0, 1), input], options);
        using Drawing drawing = new(set);
        LaneStream random = LaneStream.Of(17, 1)[0];
        const int Count = 100_000;
        double[] below = new double[Count];
        double[] drawn = new double[200];
        for (int i = 0; i < Count; i += drawn.Length)
        {
            drawing.Fill(ref random, drawn.Length);
            Marshal.Copy(drawing.Columns[1], drawn, 0, drawn.Length);
            for (int k = 0; k < drawn.Length; k++)
            {
                below[i + k] = expected.CumulativeDistribution(drawn[k]);
            }
        }

        // Kolmogorov and Smirnov: the largest distance exceeds 1.95 over the root of the count once in a thousand.
        Array.Sort(below);
        double distance = below.Select((b, i) => Math.Abs(b - ((i + 0.5) / Count))).Max();
        Assert.InRange(distance, 0, 1.95 / Math.Sqrt(Count));
    }

    // Correlation of the inputs, and what it becomes: exact for normal ones; for rectangular ones the copula gives
    // 6/pi asin(r/2) (Pearson 1907, from memory).
    [Theory]
    [InlineData(0.8)]
    [InlineData(-0.5)]
    [InlineData(1)]
    [InlineData(-1)]
    public void DrawsHaveTheCorrelationAskedFor(double coefficient)
    {
        UncertaintyOptions options = new() { Correlations = [new("a", "b", coefficient), new("c", "d", coefficient)] };
        UncertainSet set = new(
            [
                UncertainInput.Normal("a", 1, 2),
                UncertainInput.Normal("b", 3, 0.5),
                UncertainInput.Rectangular("c", 0, 1),
                UncertainInput.Rectangular("d", 7, 2),
            ],
            options
        );
        using Drawing drawing = new(set);
        LaneStream random = LaneStream.Of(5, 1)[0];
        double[][] columns = [new double[50_000], new double[50_000], new double[50_000], new double[50_000]];
        for (int i = 0; i < columns[0].Length; i += 200)
        {
            drawing.Fill(ref random, 200);
            for (int k = 0; k < 4; k++)
            {
                Marshal.Copy(drawing.Columns[k], columns[k], i, 200);
            }
        }

        double spread = 4 * (1 - (coefficient * coefficient)) / Math.Sqrt(columns[0].Length);
        Assert.Equal(
            coefficient,
            MathNet.Numerics.Statistics.Correlation.Pearson(columns[0], columns[1]),
            spread + 1e-9
        );
        double rectangular = 6 / Math.PI * Math.Asin(0.5 * coefficient);
        Assert.Equal(
            rectangular,
            MathNet.Numerics.Statistics.Correlation.Pearson(columns[2], columns[3]),
            (1.2 * spread) + 1e-9
        );
        Assert.Equal(0, MathNet.Numerics.Statistics.Correlation.Pearson(columns[0], columns[2]), 4 / Math.Sqrt(50_000));
    }

    [Fact]
    public void EveryLaneIsAStreamOfItsOwn()
    {
        RandomStream[] alone = RandomStream.Of(23, 18);
        LaneStream[] side = LaneStream.Of(23, 2);
        for (int i = 0; i < 1000; i++)
        {
            for (int set = 0; set < 2; set++)
            {
                var (low, high) = side[set].Next();
                for (int k = 0; k < LaneStream.Count; k++)
                {
                    Assert.Equal(alone[(9 * set) + k].Next(), k < 4 ? low[k] : high[k - 4]);
                }
            }
        }
    }

    [Fact]
    public void TheInverseOfTheNormalDistributionIsThatOfMathNet()
    {
        double[] shares =
        [
            .. Sweep.Even(0.0005, 0.9995, 20_000),
            .. Sweep.Log(1.2e-16, 0.5, 20_000),
            .. Sweep.Log(1.2e-16, 0.5, 20_000).Select(p => 1 - p),
        ];
        double worst = 0;
        for (int i = 0; i + 200 <= shares.Length; i += 200)
        {
            double[] found = [.. shares.AsSpan(i, 200)];
            double[] four = [.. found];
            NormalQuantile.Of<Lanes>(found);
            NormalQuantile.Of<FourLanes>(four);
            Assert.Equal(found, four);
            for (int k = 0; k < found.Length; k++)
            {
                // Relative to the quantile, and to its slope near the middle.
                double expected = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, shares[i + k]);
                worst = Math.Max(worst, Math.Abs(found[k] - expected) / (Math.Abs(expected) + 1e-3));
            }
        }

        Assert.True(worst <= 4e-15, $"worst {worst:E2}");
    }

    // Quantiles printed in every table of the normal distribution.
    [Theory]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.05, -1.6448536269514722)]
    [InlineData(0.5, 0)]
    [InlineData(1e-9, -5.997807015007687)]
    public void TheInverseOfTheNormalDistributionIsThatOfTables(double share, double expected)
    {
        double[] found = [.. Enumerable.Repeat(share, Lanes.Count)];
        NormalQuantile.Of<Lanes>(found);
        Assert.All(found, quantile => Assert.Equal(expected, quantile, 1e-14 * (1 + Math.Abs(expected))));
    }

    [Fact]
    public void TheTriangleIsThatOfMathNet()
    {
        double[,] matrix =
        {
            { 1, -0.36, 0.86, 0.1 },
            { -0.36, 1, -0.65, 0.2 },
            { 0.86, -0.65, 1, 0 },
            { 0.1, 0.2, 0, 1 },
        };
        MathNet.Numerics.LinearAlgebra.Matrix<double> expected = MathNet
            .Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfArray(matrix)
            .Cholesky()
            .Factor;
        double[,] factor = UncertainSet.Decompose(matrix);
        for (int i = 0; i < 4; i++)
        {
            for (int j = 0; j < 4; j++)
            {
                Assert.Equal(expected[i, j], factor[i, j], 1e-14);
            }
        }
    }
}
