namespace TreadmillMech.Tests.Numbers;

/// <summary>Values of every function, the same bits as System.Math, over the whole range of a double.</summary>
/// <typeparam name="T">The number type.</typeparam>
internal abstract class ValueRules<T>
    where T : struct, IReal<T>
{
    public static void Conversion() => Exact(x => x, x => x);

    public static void ConstantFillsEveryLane()
    {
        foreach (double x in Sweep.Whole)
        {
            T constant = x;
            for (int k = 0; k < T.Width; k++)
            {
                AssertSame(x, Plain.Unpack(constant, k), x);
            }
        }
    }

    public static void Sum() => Exact((a, b) => a + b, (a, b) => a + b);

    public static void Difference() => Exact((a, b) => a - b, (a, b) => a - b);

    public static void Product() => Exact((a, b) => a * b, (a, b) => a * b);

    public static void Quotient() => Exact((a, b) => a / b, (a, b) => a / b);

    public static void Negation() => Exact(x => -x, x => -x);

    public static void Sqrt() => Exact(T.Sqrt, Math.Sqrt);

    public static void Atan2() => Exact(T.Atan2, Math.Atan2);

    public static void Tanh()
    {
        Exact(T.Tanh, Math.Tanh);
        Exact(T.Tanh, Math.Tanh, [.. Sweep.Even(-25, 25, 20_001)]);
    }

    // Everything but negative zero, which has a test of its own.
    public static void Abs() => Exact(T.Abs, Math.Abs, [.. Sweep.Whole.Where(x => x != 0 || double.IsPositive(x))]);

    // The rule is written out here: the comparison operators of double, not Math.Min, which answers NaN.
    public static void Min() => Exact(T.Min, (a, b) => a < b ? a : b);

    public static void Max() => Exact(T.Max, (a, b) => a < b ? b : a);

    public static void IfLess() => Exact((a, b) => T.IfLess(a, b, 3, 4), (a, b) => a < b ? 3 : 4);

    public static void IfLessPassesOnTheChosenBranch() =>
        Exact((a, b) => T.IfLess(a, b, b, a), (a, b) => a < b ? b : a);

    public static void Hold() => Exact(T.Hold, x => x);

    public static void AnyLessIsTrueWhereTheComparisonIs()
    {
        foreach ((double a, double b) in Sweep.Pairs)
        {
            T left = a;
            T right = b;
            Assert.Equal(a < b, T.AnyLess(left, right));
        }
    }

    protected static void Exact(Func<T, T> function, Func<double, double> reference, double[]? inputs = null)
    {
        inputs ??= Sweep.Whole;
        double[] results = Plain.Map(function, inputs);
        for (int i = 0; i < inputs.Length; i++)
        {
            AssertSame(reference(inputs[i]), results[i], inputs[i]);
        }
    }

    private static void Exact(Func<T, T, T> function, Func<double, double, double> reference)
    {
        double[] results = Plain.Map(function, Sweep.Pairs);
        for (int i = 0; i < results.Length; i++)
        {
            (double a, double b) = Sweep.Pairs[i];
            AssertSame(reference(a, b), results[i], (a, b));
        }
    }

    private static void AssertSame(double expected, double actual, object input) =>
        Assert.True(Sweep.Same(expected, actual), $"at {input}: expected {expected:R}, got {actual:R}");
}
