using System.Runtime.Intrinsics;

namespace TreadmillMech.Tests.Numbers;

/// <summary>Eight directions at once against one direction after the other.</summary>
public sealed class GradientTests
{
    private static readonly double[] Left = [0.3, -0.7, 1.4, 0, -2.1, 0.01, 5, -0.4];
    private static readonly double[] Right = [1.1, 0.2, -0.6, 0.9, 0, -3, 0.5, 2];

    public static TheoryData<string> Operations =>
        [
            "+",
            "-",
            "*",
            "/",
            "negative",
            "sqrt",
            "exp",
            "log",
            "sin",
            "cos",
            "sin pi",
            "asin",
            "atan2",
            "tanh",
            "pow",
            "pow 0",
            "abs",
            "min",
            "max",
            "less",
            "hold",
        ];

    private static T Do<T>(string operation, T a, T b)
        where T : struct, IReal<T> =>
        operation switch
        {
            "+" => a + b,
            "-" => a - b,
            "*" => a * b,
            "/" => a / b,
            "negative" => -a,
            "sqrt" => T.Sqrt(a * a + 1),
            "exp" => T.Exp(a),
            "log" => T.Log(b * b + 0.1),
            "sin" => T.SinCos(a).Sin,
            "cos" => T.SinCos(b).Cos,
            "sin pi" => T.SinCosPi(a).Sin * T.SinCosPi(b).Cos,
            "asin" => T.Asin(0.4 * a),
            "atan2" => T.Atan2(a, b),
            "tanh" => T.Tanh(a),
            "pow" => T.Pow(a * a + 0.2, 1.7),
            "pow 0" => T.Pow(a, 0),
            "abs" => T.Abs(a),
            "min" => T.Min(a, b),
            "max" => T.Max(a, b),
            "less" => T.IfLess(a, b, a * a, b),
            "hold" => T.Hold(a) * b,
            _ => throw new ArgumentOutOfRangeException(nameof(operation)),
        };

    [Theory]
    [MemberData(nameof(Operations))]
    public void EveryDirectionIsThatOfADual(string operation)
    {
        foreach (double a in (double[])[-1.7, -0.6, 0.3, 1.2, 2.2])
        {
            foreach (double b in (double[])[-2.3, -0.5, 0.4, 1.9])
            {
                Gradient row = Do(
                    operation,
                    new Gradient(a, Vector512.Create<double>(Left)),
                    new Gradient(b, Vector512.Create<double>(Right))
                );
                for (int i = 0; i < Left.Length; i++)
                {
                    Dual<Real> one = Do(operation, new Dual<Real>(a, Left[i]), new Dual<Real>(b, Right[i]));
                    Assert.Equal(one.Value.Value, row.Value);
                    double expected = one.Slope;
                    Assert.True(
                        Math.Abs(expected - row.Slopes[i]) <= 1e-14 * (1 + Math.Abs(expected)),
                        $"{operation} of {a}, {b}, direction {i}: {expected:R}, {row.Slopes[i]:R}"
                    );
                }
            }
        }
    }

    // An infinite outer derivative leaves a constant a constant.
    [Fact]
    public void AConstantAtTheEdgeStaysConstant()
    {
        Gradient root = Gradient.Sqrt(new Gradient(0, Vector512.Create(0d, 1, 0, 0, 0, 0, 0, 0)));
        Assert.Equal(0, root.Slopes[0]);
        Assert.Equal(double.PositiveInfinity, root.Slopes[1]);
        Assert.Equal(0, root.Slopes[2]);
    }
}
