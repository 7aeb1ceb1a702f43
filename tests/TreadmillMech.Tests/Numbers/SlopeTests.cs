using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics;

namespace TreadmillMech.Tests.Numbers;

/// <summary>Slopes of every function against the derivative in closed form, in plain doubles.</summary>
public sealed class SlopeTests
{
    /// <summary>A handful of roundings in the slope and as many in the closed form, each half of 2.2e-16.</summary>
    private const double Relative = 1e-15;

    public static TheoryData<double> Exponents => [2, 3, -1, -2, 0.5, 1.0 / 3, 0.8, 1.5, -0.5, -2.5];

    [Fact]
    public void Sqrt() => Agrees(Dual<Real>.Sqrt, x => 0.5 * Math.Pow(x, -0.5), Sweep.Log(1e-300, 1e300, 2_001));

    [Fact]
    public void Exp() => Agrees(Dual<Real>.Exp, Math.Exp, Sweep.Even(-700, 700, 2_001));

    [Fact]
    public void Log() => Agrees(Dual<Real>.Log, x => 1 / x, Sweep.Log(1e-300, 1e300, 2_001));

    [Fact]
    public void SinCos()
    {
        Agrees(x => Dual<Real>.SinCos(x).Sin, Math.Cos, Sweep.Even(-30, 30, 2_001));
        Agrees(x => Dual<Real>.SinCos(x).Cos, x => -Math.Sin(x), Sweep.Even(-30, 30, 2_001));
    }

    // 1 - x^2 in one rounding, so that the closed form keeps its digits beside 1.
    [Fact]
    public void Asin() =>
        Agrees(
            Dual<Real>.Asin,
            x => 1 / Math.Sqrt(Math.FusedMultiplyAdd(-x, x, 1)),
            [.. Sweep.Even(-0.9999, 0.9999, 2_001), 1 - 1e-12, -1 + 1e-12, double.BitDecrement(1)]
        );

    // sech^2 (Trig.Sech of MathNet.Numerics). The slope is formed from tanh itself, so beside 1 its error is absolute:
    // one unit of tanh, 1.1e-16, doubled by the square, and the roundings of slope and reference; 3.3e-16 measured.
    [Fact]
    public void Tanh()
    {
        foreach (double x in Sweep.Even(-40, 40, 4_001))
        {
            double expected = Math.Pow(Trig.Sech(x), 2);
            double slope = Dual<Real>.Tanh(Dual<Real>.Variable(x)).Slope;
            Assert.InRange(slope - expected, -Math.Pow(2, -51), Math.Pow(2, -51));
        }
    }

    // The slope takes the power exponent - 1, whose own rounding (half of 1.1e-16 at most for these exponents below 1,
    // none for the others) is multiplied by the logarithm of the base.
    [Theory]
    [MemberData(nameof(Exponents))]
    public void Pow(double exponent)
    {
        foreach (double x in Sweep.Log(1e-60, 1e60, 2_001))
        {
            double expected = exponent * Math.Pow(x, exponent) / x;
            double actual = Dual<Real>.Pow(Dual<Real>.Variable(x), exponent).Slope;
            double bound = Relative + (Math.Pow(2, -54) * Math.Abs(Math.Log(x)));
            Assert.True(Math.Abs((actual / expected) - 1) <= bound, $"at {x:R}: expected {expected:R}, got {actual:R}");
        }
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(-1)]
    public void PowOfNegatives(double exponent) =>
        Agrees(
            x => Dual<Real>.Pow(x, exponent),
            x => exponent * Math.Pow(x, exponent) / x,
            Sweep.Log(1e-60, 1e60, 501).Select(x => -x)
        );

    // d/dy = x / (x^2 + y^2), d/dx = -y / (x^2 + y^2); the squares stay inside the range of a double.
    [Fact]
    public void Atan2()
    {
        double[] sizes = [.. Sweep.Log(1e-120, 1e120, 61), .. Sweep.Log(0.01, 100, 41)];
        double[] values = [.. sizes, .. sizes.Select(x => -x)];
        foreach (double y in values)
        {
            foreach (double x in values)
            {
                double square = double.Hypot(x, y);
                double byY = Dual<Real>.Atan2(Dual<Real>.Variable(y), x).Slope;
                double byX = Dual<Real>.Atan2(y, Dual<Real>.Variable(x)).Slope;
                Close(x / square / square, byY, (y, x));
                Close(-y / square / square, byX, (y, x));
            }
        }
    }

    [Fact]
    public void Abs() => Agrees(Dual<Real>.Abs, x => Math.Sign(x), [.. Sweep.Even(-3, 3, 6), 1e-310, -1e-310]);

    [Fact]
    public void AbsAtZeroHasTheSlopeFromTheRight() => Assert.Equal(1, Dual<Real>.Abs(Dual<Real>.Variable(0)).Slope);

    [Fact]
    public void MinAndMaxCarryTheSlopeOfTheChosen()
    {
        Dual<Real> one = new(1, 10);
        Dual<Real> two = new(2, 20);
        Assert.Equal(one, Dual<Real>.Min(one, two));
        Assert.Equal(one, Dual<Real>.Min(two, one));
        Assert.Equal(two, Dual<Real>.Max(one, two));
        Assert.Equal(two, Dual<Real>.Max(two, one));
    }

    [Fact]
    public void MinOfEqualsIsTheSecondAndMaxTheFirst()
    {
        Dual<Real> first = new(1, 10);
        Dual<Real> second = new(1, 20);
        Assert.Equal(second, Dual<Real>.Min(first, second));
        Assert.Equal(first, Dual<Real>.Max(first, second));
    }

    [Fact]
    public void ConstantHasNoSlopeAndVariableSlopeOne()
    {
        Dual<Real> constant = 3;
        Assert.Equal(0, constant.Slope.Value);
        Assert.Equal(1, Dual<Real>.Variable(3).Slope.Value);
    }

    [Fact]
    public void HoldDropsTheSlope()
    {
        Assert.Equal(new Dual<Real>(3, 0), Dual<Real>.Hold(new(3, 5)));
        Assert.Equal(new Dual<Dual<Real>>(new(3, 0), new(0, 0)), Dual<Dual<Real>>.Hold(new(new(3, 5), new(6, 7))));
    }

    [Fact]
    public void SlopesOfEightLanesAgreeWithThoseOfOne()
    {
        double[] inputs = [0.1, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 0.99];
        Dual<Lanes> wide = All(Dual<Lanes>.Variable(new Lanes(inputs)));
        for (int k = 0; k < inputs.Length; k++)
        {
            Dual<Real> one = All(Dual<Real>.Variable(inputs[k]));

            // Last digits of the vector forms, summed over eleven terms.
            Assert.Equal(1, wide.Slope[k] / one.Slope, 1e-14);
        }
    }

    // Sum, product and quotient rules with a slope on either side, in closed form; bit by bit, since each rule is
    // the textbook expression. Negated: IEEE 754 sums are the same either way round.
    [Property]
    public bool SumRule(NormalFloat a, NormalFloat da, NormalFloat b, NormalFloat db) =>
        Sweep.Same(da.Get + db.Get, (Make(a, da) + Make(b, db)).Slope)
        && Sweep.Same(da.Get - db.Get, (Make(a, da) - Make(b, db)).Slope)
        && Sweep.Same(-da.Get, (-Make(a, da)).Slope);

    [Property]
    public bool ProductRule(NormalFloat a, NormalFloat da, NormalFloat b, NormalFloat db) =>
        Sweep.Same((b.Get * da.Get) + (db.Get * a.Get), (Make(a, da) * Make(b, db)).Slope);

    // (a' b - a b') / b^2; the error is measured against the size of the terms, which may cancel.
    [Property]
    public Property QuotientRule(NormalFloat a, NormalFloat da, NormalFloat b, NormalFloat db)
    {
        double slope = (Make(a, da) / Make(b, db)).Slope;
        double square = b.Get * b.Get;
        double expected = ((da.Get * b.Get) - (a.Get * db.Get)) / square;
        double size = (Math.Abs(da.Get * b.Get) + Math.Abs(a.Get * db.Get)) / square;
        return (!(Math.Abs(slope - expected) > Relative * size)).When(Tame(a) && Tame(da) && Tame(b) && Tame(db));
    }

    // d/dx exp(sin(x^2)) = exp(sin(x^2)) cos(x^2) 2 x.
    [Property]
    public Property ChainRule(NormalFloat x)
    {
        double v = x.Get;
        Dual<Real> variable = Dual<Real>.Variable(v);
        double slope = Dual<Real>.Exp(Dual<Real>.SinCos(variable * variable).Sin).Slope;
        double expected = Math.Exp(Math.Sin(v * v)) * Math.Cos(v * v) * 2 * v;
        return (Math.Abs(slope - expected) <= Relative * Math.Abs(expected)).When(Math.Abs(v) < 1e100);
    }

    // The slope of the inverse is the inverse of the slope: exp and log, square and root.
    [Property]
    public Property InversePairsHaveSlopeOne(NormalFloat x)
    {
        double v = Math.Abs(x.Get);
        Dual<Real> variable = Dual<Real>.Variable(v);
        double log = Dual<Real>.Exp(Dual<Real>.Log(variable)).Slope;
        double root = Dual<Real>.Sqrt(variable * variable).Slope;

        // exp(log x) loses as many digits as the size of log x costs: below 700 units of 1.1e-16.
        return (Math.Abs(log - 1) <= 1e-13 && Math.Abs(root - 1) <= Relative).When(v is > 1e-100 and < 1e100);
    }

    private static T All<T>(T x)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCos(x);
        return T.Sqrt(x)
            + T.Exp(x)
            + T.Log(2 + x)
            + (sin * cos)
            + T.Asin(x)
            + T.Atan2(x, 2)
            + T.Tanh(x)
            + T.Pow(x, 1.5)
            + T.Abs(x)
            + T.Max(x, 0.5)
            + (1 / (1 + x));
    }

    private static Dual<Real> Make(NormalFloat value, NormalFloat slope) => new(value.Get, slope.Get);

    private static bool Tame(NormalFloat x) => Math.Abs(x.Get) is > 1e-60 and < 1e60;

    private static void Agrees(
        Func<Dual<Real>, Dual<Real>> function,
        Func<double, double> derivative,
        IEnumerable<double> inputs
    )
    {
        foreach (double x in inputs)
        {
            Close(derivative(x), function(Dual<Real>.Variable(x)).Slope, x);

            // A power of two scales a derivative without rounding: the inner slope enters as a factor.
            Close(-8 * derivative(x), function(new(x, -8)).Slope, x);
        }
    }

    private static void Close(double expected, double actual, object input) =>
        Assert.True(
            Math.Abs(actual - expected) <= Relative * Math.Abs(expected),
            $"at {input}: expected {expected:R}, got {actual:R}"
        );
}
