using N = TreadmillMech.Numbers.Dual<TreadmillMech.Numbers.Dual<TreadmillMech.Numbers.Real>>;

namespace TreadmillMech.Tests.Numbers;

/// <summary>Second derivatives by nesting, against closed forms in plain doubles.</summary>
public sealed class NestedSlopeTests
{
    private const double Relative = 1e-14;

    // Every closed form is textbook calculus; inputs stay where it has no cancellation of its own.
    private static readonly Dictionary<string, Case> Cases = new(StringComparer.Ordinal)
    {
        ["sqrt"] = new(N.Sqrt, Dual<Real>.Sqrt, x => -0.25 * Math.Pow(x, -1.5)),
        ["exp"] = new(N.Exp, Dual<Real>.Exp, Math.Exp),
        ["log"] = new(N.Log, Dual<Real>.Log, x => -1 / (x * x)),
        ["sin"] = new(x => N.SinCos(x).Sin, x => Dual<Real>.SinCos(x).Sin, x => -Math.Sin(x)),
        ["cos"] = new(x => N.SinCos(x).Cos, x => Dual<Real>.SinCos(x).Cos, x => -Math.Cos(x)),
        ["asin"] = new(N.Asin, Dual<Real>.Asin, x => x / Math.Pow(1 - (x * x), 1.5)),
        ["tanh"] = new(N.Tanh, Dual<Real>.Tanh, x => -2 * Math.Tanh(x) / Math.Pow(Math.Cosh(x), 2)),
        ["pow 2"] = new(x => N.Pow(x, 2), x => Dual<Real>.Pow(x, 2), _ => 2),
        ["pow 3"] = new(x => N.Pow(x, 3), x => Dual<Real>.Pow(x, 3), x => 6 * x),
        ["pow 0.8"] = new(x => N.Pow(x, 0.8), x => Dual<Real>.Pow(x, 0.8), x => 0.8 * -0.2 * Math.Pow(x, -1.2)),
        ["pow -2.5"] = new(x => N.Pow(x, -2.5), x => Dual<Real>.Pow(x, -2.5), x => 8.75 * Math.Pow(x, -4.5)),
        ["square"] = new(x => x * x, x => x * x, _ => 2),
        ["inverse"] = new(x => 1 / x, x => 1 / x, x => 2 / (x * x * x)),
        ["sum"] = new(x => (x * x) + x, x => (x * x) + x, _ => 2),
        ["difference"] = new(x => x - (x * x), x => x - (x * x), _ => -2),
        ["minus"] = new(x => -(x * x), x => -(x * x), _ => -2),
        ["atan2 by y"] = new(x => N.Atan2(x, 2), x => Dual<Real>.Atan2(x, 2), x => -4 * x / Math.Pow((x * x) + 4, 2)),
        ["atan2 by x"] = new(x => N.Atan2(2, x), x => Dual<Real>.Atan2(2, x), x => 4 * x / Math.Pow((x * x) + 4, 2)),
        ["abs"] = new(x => N.Abs(-(x * x)), x => Dual<Real>.Abs(-(x * x)), _ => 2),
        ["min"] = new(x => N.Min(x * x, 9), x => Dual<Real>.Min(x * x, 9), _ => 2),
        ["max"] = new(x => N.Max(x * x, -9), x => Dual<Real>.Max(x * x, -9), _ => 2),
        ["if less"] = new(x => N.IfLess(x, 9, x * x, 0), x => Dual<Real>.IfLess(x, 9, x * x, 0), _ => 2),
        ["hold"] = new(x => N.Hold(x) * x * x, x => Dual<Real>.Hold(x) * x * x, x => 2 * x),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void SecondDerivative(string name)
    {
        Case c = Cases[name];
        foreach (double x in Sweep.Even(0.01, 0.97, 193))
        {
            double expected = c.Second(x);
            double actual = c.Nested(Variable(x)).Slope.Slope;
            Assert.True(
                Math.Abs(actual - expected) <= Relative * Math.Abs(expected),
                $"at {x:R}: expected {expected:R}, got {actual:R}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void FirstDerivativeIsThatOfOneDual(string name)
    {
        Case c = Cases[name];
        foreach (double x in Sweep.Even(0.01, 0.97, 193))
        {
            N nested = c.Nested(Variable(x));
            Dual<Real> one = c.Single(Dual<Real>.Variable(x));
            Assert.Equal(one, nested.Value);
            Assert.Equal(one.Slope, nested.Slope.Value);
        }
    }

    // d2/dxdy of x^2 exp(y) by two different variables: 2 x exp(y).
    [Fact]
    public void MixedDerivative()
    {
        N x = new(new(1.5, 1), new(0, 0));
        N y = new(new(0.25, 0), new(1, 0));
        Assert.Equal(2 * 1.5 * Math.Exp(0.25), (x * x * N.Exp(y)).Slope.Slope, 1e-14);
    }

    private static N Variable(double x) => new(new(x, 1), new(1, 0));

    private sealed record Case(Func<N, N> Nested, Func<Dual<Real>, Dual<Real>> Single, Func<double, double> Second);
}
