using MathNet.Numerics.LinearAlgebra;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>The search on rows made by hand.</summary>
public sealed class JointFitTests
{
    private static readonly VisitUnknown Plain = new("x", Logarithmic: false, 0, 1, 1);
    private static readonly VisitUnknown Logarithm = new("y", Logarithmic: true, 0, 1, 1);

    // Prior 0 +- 1 and reading 3 +- 0.5: mean 3/(1 + 0.25), variance 0.25/1.25.
    [Fact]
    public void AStraightRowAndItsPriorAreWeighedByTheirVariances()
    {
        JointSolution found = new JointFit([Plain], [new Row(3, 0.5, x => x)]).Solve()!;
        Close.To(3 / 1.25, found.Point[0], 1e-12);
        Close.To(0.25 / 1.25, found.Covariance[0, 0], 1e-12);
        Close.To(9 / 1.25, found.ChiSquare, 1e-12);

        // All others, here the prior alone, foretell 0 with a variance of 1 + 0.25.
        Close.To(3 / Math.Sqrt(1.25), Assert.Single(found.Misfits()).Distance, 1e-12);
    }

    // A probit on a standard normal x alone: mean phi(0)/Phi(0) / sqrt 2, variance 1 - (2/pi)/2.
    [Fact]
    public void OneOutcomeHasTheMomentsOfTheCutNormal()
    {
        JointSolution found = new JointFit([Plain], [new Row(0, 1, x => x, passFail: true)]).Solve()!;
        Close.To(Math.Sqrt(2 / Math.PI) / Math.Sqrt(2), found.Point[0], 1e-9);
        Close.To(1 - (1 / Math.PI), found.Covariance[0, 0], 1e-9);
    }

    // A standard normal x weighed by Phi(x) has the law of the greater of two standard normals: below t with Phi(t) squared.
    // Its 95 % lie between -1.0022 and 2.2386 (Phi(t) of 0.158114 and 0.987421); 1.96 deviations about its mean would go from
    // -1.054 to 2.182.
    [Fact]
    public void TheIntervalOfOneOutcomeIsThatOfTheCutNormal()
    {
        (double lower, double upper) = Ends(new Row(0, 1, Dual<Lanes>.Log, passFail: true));
        Assert.Equal(-1.0022, lower, 0.03);
        Assert.Equal(2.2386, upper, 0.03);
    }

    // x = 1 read as 1 +- 0.5: mean 1/1.25, variance 0.25/1.25. An outcome that was sure, fifty deviations off, adds nothing.
    [Fact]
    public void TheIntervalOfAStraightRowIsStraight()
    {
        (double lower, double upper) = Ends(
            new Row(1, 0.5, Dual<Lanes>.Log),
            new Row(0, 1, x => x + 50, passFail: true)
        );
        Close.To(0.8 - (1.959964 * Math.Sqrt(0.2)), lower, 1e-6);
        Close.To(0.8 + (1.959964 * Math.Sqrt(0.2)), upper, 1e-6);
    }

    private static (double Lower, double Upper) Ends(params Row[] rows)
    {
        JointSolution found = new JointFit([Logarithm], rows).Solve()!;
        double value = Math.Exp(found.Point[0]);
        Assert.NotNull(found.Sample);
        (double below, double above) = found.Sample.Reach(
            DerivedRow.Of(0),
            Vector<double>.Build.Dense(1, 1),
            new(value, value * Math.Sqrt(found.Covariance[0, 0])),
            1.959964
        );
        return (found.Point[0] - below, found.Point[0] + above);
    }

    // e^x = 20 read at 1 % beside a prior of 0 +- 1: x is ln 20 but for one part in ten thousand of it.
    [Fact]
    public void ALogarithmGoesALongWay() =>
        Close.To(Math.Log(20), new JointFit([Logarithm], [new Row(20, 0.2, x => x)]).Solve()!.Point[0], 2e-4);

    [Fact]
    public void WhatIsNoNumberSettlesNowhere()
    {
        JointFit fit = new([Plain], [new Row(1, 1, x => x / 0.0 * 0)]);
        Assert.Null(fit.Solve());
    }

    private sealed class Row(
        double measured,
        double uncertainty,
        Func<Dual<Lanes>, Dual<Lanes>> law,
        bool passFail = false
    ) : VisitRow(0, "row", "1", measured, 0)
    {
        internal override bool PassFail => passFail;

        internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) => law(at[0]);

        internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) => uncertainty;
    }
}
