namespace TreadmillMech.Tests.Numbers;

/// <summary>Values and slopes at points where the general rule would meet zero times infinity.</summary>
public sealed class ConstantsStayConstantTests
{
    [Fact]
    public void ExpOfAHugeConstant() => Assert.Equal(0, Dual<Real>.Exp(1000).Slope.Value);

    [Fact]
    public void ExpOverflowingHasInfiniteSlope() =>
        Assert.Equal(double.PositiveInfinity, Dual<Real>.Exp(Dual<Real>.Variable(1000)).Slope.Value);

    // x^0 is 1 everywhere, also at 0 (Math.Pow), so its derivative is 0.
    [Fact]
    public void PowerZeroAtZero() => Assert.Equal(new Dual<Real>(1, 0), Dual<Real>.Pow(Dual<Real>.Variable(0), 0));

    // x^1 is x, so its second derivative is 0, also at 0.
    [Fact]
    public void SecondDerivativeOfPowerOneAtZero()
    {
        Dual<Dual<Real>> power = Dual<Dual<Real>>.Pow(new(new(0, 1), new(1, 0)), 1);
        Assert.Equal(new Dual<Dual<Real>>(new(0, 1), new(1, 0)), power);
    }

    // Math.Abs(-0.0) is +0.
    [Fact]
    public void AbsOfNegativeZeroIsPositive()
    {
        Assert.True(double.IsPositive(Real.Abs(-0.0)));
        Assert.True(double.IsPositive(Dual<Real>.Abs(-0.0).Value));
        Assert.True(double.IsPositive(Dual<Dual<Real>>.Abs(-0.0).Value.Value));
        Assert.True(double.IsPositive(Lanes.Abs(-0.0)[7]));
        Assert.True(double.IsPositive(Dual<Lanes>.Abs(-0.0).Value[7]));
    }
}
