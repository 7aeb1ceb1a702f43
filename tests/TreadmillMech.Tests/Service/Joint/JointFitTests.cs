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
