using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>Uncertainty of a machine's outputs, its edges, and its named refusals.</summary>
public sealed class UncertaintyTests
{
    private static readonly UncertainInput[] Unsure =
    [
        UncertainInput.Normal(Inputs.DeckFriction, 0.2, 0.02),
        UncertainInput.Lognormal(Inputs.DriveRollerFriction, 0.3, 0.05),
        UncertainInput.Rectangular(Inputs.RestTension, Force.FromNewtons(1000), Force.FromNewtons(80)),
        UncertainInput.Triangular(Inputs.StrikePosition, Length.FromMeters(0.35), Length.FromMeters(0.1)),
    ];

    private static Study Study => Study.Of(Example.Machine, Example.Runner);

    // F = mu m g + F0, by hand: the product of two normal variables has the exact variance below.
    [Fact]
    public void TheMeanPullsUncertaintyIsThatOfItsFormula()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal(Inputs.DeckFriction, 0.2, 0.02),
            UncertainInput.Normal(Inputs.PersonMass, Mass.FromKilograms(90), Mass.FromKilograms(3)),
        ];
        const double G = 9.80665;
        UncertaintyOptions tied = new()
        {
            Correlations = [Correlation.Between(Inputs.DeckFriction, Inputs.PersonMass, 0.5)],
        };
        PropagatedUncertainty alone = Study.Propagate(Outputs.MeanPull, inputs).Value;
        PropagatedUncertainty together = Study.Propagate(Outputs.MeanPull, inputs, tied).Value;
        double a = 90 * G * 0.02;
        double b = 0.2 * G * 3;
        Assert.Equal(Math.Sqrt((a * a) + (b * b)), alone.StandardUncertainty.As<Force>().Newtons, 1e-10);
        Assert.Equal(Math.Sqrt((a * a) + (b * b) + (a * b)), together.StandardUncertainty.Si, 1e-10);
        Assert.Equal(a * a / ((a * a) + (b * b)), alone.Budget[0].Share.DecimalFractions, 1e-12);
        Assert.Equal(Inputs.DeckFriction, alone.Budget[0].Input.Input);
        Assert.Equal(double.PositiveInfinity, alone.EffectiveDegreesOfFreedom);
        Assert.Equal(1.959964, alone.CoverageFactor, 5e-7);

        SampledUncertainty drawn = Study.Sample(Outputs.MeanPull, inputs, 11, new() { Draws = 400_000 }).Value;
        double c = G * 0.02 * 3;
        double exact = Math.Sqrt((a * a) + (b * b) + (c * c));
        Assert.Equal(exact, drawn.StandardUncertainty.Si, 0.006 * exact);
        Assert.Equal((0.2 * 90 * G) + 20, drawn.Mean.Si, 5 * exact / Math.Sqrt(400_000));
        Assert.Equal(exact / Math.Sqrt(400_000), drawn.Convergence.OfMean.Si, 0.6 * exact / Math.Sqrt(400_000));
        Assert.Equal(0, drawn.WithoutAnswer);
    }

    [Fact]
    public void DegreesOfFreedomOfCorrelatedInputsAreOnlyAGuide()
    {
        UncertainInput[] inputs =
        [
            UncertainInput.Normal("a", 0, 1) with
            {
                DegreesOfFreedom = 4,
            },
            UncertainInput.Normal("b", 0, 1),
        ];
        PropagatedUncertainty alone = Uncertainty.Propagate(new Sum(), inputs).Value;
        Assert.False(alone.DegreesOfFreedomAreAGuide);

        // Two equal parts, one of 4 degrees of freedom: (2 u^2)^2 / (u^4 / 4) = 16.
        Assert.Equal(16, alone.EffectiveDegreesOfFreedom, 1e-12);
        UncertaintyOptions tied = new() { Correlations = [new("a", "b", 0.1)] };
        Assert.True(Uncertainty.Propagate(new Sum(), inputs, tied).Value.DegreesOfFreedomAreAGuide);
    }

    // One normal input whose friction reaches zero at 2.25 standard deviations: below, the part is not permitted.
    [Fact]
    public void DrawsThatLeaveTheRangeOfAnInputAreCounted()
    {
        UncertainInput wide = UncertainInput.Normal(Inputs.DeckFriction, 0.2, 0.08);
        ComparedUncertainty pull = Study.Compare(Outputs.MeanPull, [wide], 3, new() { Draws = 200_000 }).Value;
        double share = MathNet.Numerics.Distributions.Normal.CDF(0, 1, (0.02 - 0.2) / 0.08);
        Assert.Equal(share, (double)pull.Sampled.WithoutAnswer / pull.Sampled.Draws, 0.001);
        Assert.Equal(Agreement.Differ, pull.Agreement);
    }

    [Fact]
    public void TheBudgetOfTheMarginFollowsItsDerivatives()
    {
        PropagatedUncertainty margin = Study.Propagate(Outputs.BeltMargin, Unsure).Value;
        Sensitivity slopes = Study.Sensitivity(Outputs.BeltMargin).Value;
        Assert.All(
            margin.Budget,
            row =>
                Assert.Equal(
                    Math.Abs(slopes[row.Input.Input!].Derivative.Value.Si) * row.Input.StandardUncertainty.Si,
                    row.Contribution.Si,
                    1e-10
                )
        );
        double[] shares = [.. margin.Budget.Select(row => row.Share.DecimalFractions)];
        Assert.Equal(shares.OrderDescending(), shares);
        Assert.Equal(1, shares.Sum(), 1e-12);
    }

    [Fact]
    public void AnUnknownInputAnswersAsTheOperatingPointDoes()
    {
        Study bare = Study.Of(Example.Bare, Example.Runner);
        Assert.Equal(bare.Point.BeltMargin.Missing, bare.Propagate(Outputs.BeltMargin, [Unsure[3]]).Missing);
        Assert.Equal(bare.Point.BeltMargin.Missing, bare.Sample(Outputs.BeltMargin, [Unsure[3]], 1).Missing);
        Assert.Equal(bare.Point.BeltMargin.Missing, bare.Compare(Outputs.BeltMargin, [Unsure[3]], 1).Missing);
    }

    [Fact]
    public void AFunctionWithoutANumberAnswersNotInRange()
    {
        UncertainInput[] zero = [UncertainInput.Normal("x", 0, 1)];
        Assert.Equal(new(Reason.NotInRange, "reciprocal"), Uncertainty.Propagate(new Reciprocal(), zero).Missing);
        Assert.Equal(new(Reason.NotInRange, "reciprocal"), Uncertainty.Sample(new Reciprocal(), zero, 1).Missing);
    }

    [Fact]
    public void WhatTheFunctionThrowsReachesTheCaller() =>
        Assert.Throws<NotSupportedException>(() =>
            Uncertainty.Sample(new Throwing(), [UncertainInput.Normal("x", 0, 1)], 1)
        );

    [Fact]
    public void ProgressRisesToTheEndAndACancelledDrawingStops()
    {
        Told told = new();
        Study.Sample(Outputs.BeltMargin, Unsure, 1, new() { Draws = 20_000, Progress = told });
        Assert.Equal(told.Shares.Order(), told.Shares);
        Assert.Equal(1, told.Shares[^1]);
        using CancellationTokenSource stop = new();
        Told stopping = new(_ => stop.Cancel());
        UncertaintyOptions long_ = new() { Draws = 1_000_000, Progress = stopping };
        Assert.ThrowsAny<OperationCanceledException>(() =>
            Study.Sample(Outputs.BeltMargin, Unsure, 1, long_, stop.Token)
        );
        Assert.True(stopping.Shares[^1] < 0.1);
    }

    // A thousand draws know the ends to a few per cent: too few for the second digit, enough to see a gross difference.
    [Fact]
    public void TooFewDrawsLeaveItOpen()
    {
        UncertainInput[] normal = [UncertainInput.Normal("x", 0, 3)];
        Assert.Equal(
            Agreement.Undecided,
            Uncertainty.Compare(new Sum(), normal, 1, new() { Draws = 1000 }).Value.Agreement
        );
        Assert.Equal(Agreement.Agree, Uncertainty.Compare(new Sum(), normal, 1).Value.Agreement);
        UncertainInput[] rectangular = [UncertainInput.Rectangular("x", 0, 3)];
        Assert.Equal(
            Agreement.Differ,
            Uncertainty.Compare(new Sum(), rectangular, 1, new() { Draws = 1000 }).Value.Agreement
        );
    }

    [Theory]
    [InlineData(31.71, 2, 0.5)]
    [InlineData(0.0754, 2, 0.0005)]
    [InlineData(2, 2, 0.05)]
    [InlineData(2, 1, 0.5)]
    [InlineData(0.996, 2, 0.05)]
    [InlineData(0, 2, 0)]
    public void TheToleranceIsHalfAUnitOfTheLastDigitThatMatters(double uncertainty, int digits, double expected) =>
        Assert.Equal(expected, Sampling.Tolerance(uncertainty, digits), 1e-15);

    [Fact]
    public void WrongInputsAreNamed()
    {
        UncertainInput x = UncertainInput.Normal("x", 0, 1);
        UncertainInput y = UncertainInput.Normal("y", 0, 1);
        UncertainInput z = UncertainInput.Normal("z", 0, 1);
        Assert.Throws<ArgumentException>(() => Uncertainty.Propagate(new Sum(), []));
        Assert.Throws<ArgumentException>(() => Uncertainty.Propagate(new Sum(), [x, x]));
        Assert.Throws<ArgumentException>(() => Study.Propagate(Outputs.MeanPull, [x]));
        Assert.Throws<ArgumentException>(() =>
            UncertainInput.Normal(Inputs.BeltDrag, Force.FromNewtons(1), Length.FromMeters(1))
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            UncertainInput.Normal(Inputs.BeltDrag, Force.FromNewtons(-1), Force.FromNewtons(1))
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => UncertainInput.Normal("x", 0, -1));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => UncertainInput.Lognormal("x", 0, 1));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => x with { DegreesOfFreedom = 0.5 });
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => new UncertaintyOptions { Coverage = 1 });
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => new UncertaintyOptions { Draws = 10 });
        Refuses(Of("x", "w", 0.5));
        Refuses(Of("x", "x", 0.5));
        Refuses(Of("x", "y", 1.5));
        Refuses(Of("x", "y", 0.5), Of("y", "x", 0.5));

        // Both close to x but far from each other: no three quantities are so.
        Refuses(Of("x", "y", 0.9), Of("x", "z", 0.9), Of("y", "z", -0.9));
        Refuses(Of("x", "y", 1), Of("x", "z", 1), Of("y", "z", 0.5));

        static Correlation Of(string first, string second, double r) => new(first, second, r);

        void Refuses(params Correlation[] correlations) =>
            Assert.ThrowsAny<ArgumentException>(() =>
                Uncertainty.Propagate(new Sum(), [x, y, z], new() { Correlations = correlations })
            );
    }

    private sealed class Reciprocal : IMeasurement
    {
        public string Name => "reciprocal";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => 1 / x[0];
    }

    private sealed class Throwing : IMeasurement
    {
        public string Name => "nothing";

        public string Unit => "1";

        public T Evaluate<T>(ReadOnlySpan<T> x)
            where T : struct, IReal<T> => typeof(T) == typeof(Real) ? x[0] : throw new NotSupportedException();
    }
}
