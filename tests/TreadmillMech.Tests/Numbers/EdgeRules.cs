namespace TreadmillMech.Tests.Numbers;

/// <summary>The edges of the domains, as the remarks of <see cref="IReal{T}"/> define them.</summary>
/// <typeparam name="T">The number type that a dual number is built on.</typeparam>
internal abstract class EdgeRules<T>
    where T : struct, IReal<T>
{
    private const double Infinity = double.PositiveInfinity;

    public static void AsinAtOne()
    {
        Check(Math.PI / 2, Infinity, Dual<T>.Asin(Moving(1)));
        Check(-Math.PI / 2, Infinity, Dual<T>.Asin(Moving(-1)));
        Check(Math.PI / 2, -Infinity, Dual<T>.Asin(new(1, -2)));
        Check(Math.PI / 2, 0, Dual<T>.Asin(1));
        Check(-Math.PI / 2, 0, Dual<T>.Asin(-1));
    }

    public static void AsinOutside()
    {
        Check(double.NaN, double.NaN, Dual<T>.Asin(Moving(double.BitIncrement(1))));
        Check(double.NaN, double.NaN, Dual<T>.Asin(Moving(-2)));
    }

    public static void SqrtAtZeroAndBelow()
    {
        Check(0, Infinity, Dual<T>.Sqrt(Moving(0)));
        Check(0, -Infinity, Dual<T>.Sqrt(new(0, -1)));
        Check(0, 0, Dual<T>.Sqrt(0));
        Check(double.NaN, double.NaN, Dual<T>.Sqrt(Moving(-double.Epsilon)));
    }

    // The smallest slope is not zero: only an exact zero is a constant.
    public static void SmallestSlopeCounts() => Check(0, Infinity, Dual<T>.Sqrt(new(0, double.Epsilon)));

    public static void LogAtZeroAndBelow()
    {
        Check(-Infinity, Infinity, Dual<T>.Log(Moving(0)));
        Check(-Infinity, 0, Dual<T>.Log(0));
        Assert.True(double.IsNaN(Plain.Unpack(Dual<T>.Log(Moving(-1)).Value)));
    }

    public static void PowAtZero()
    {
        PowAtZero(0.5, 0, Infinity);
        PowAtZero(0.8, 0, Infinity);
        PowAtZero(-1, Infinity, -Infinity);
        PowAtZero(-0.5, Infinity, -Infinity);
        PowAtZero(1, 0, 1);
        PowAtZero(1.5, 0, 0);
        PowAtZero(2, 0, 0);
    }

    private static void PowAtZero(double exponent, double value, double slope)
    {
        Check(value, slope, Dual<T>.Pow(Moving(0), exponent));
        Check(value, 0, Dual<T>.Pow(0, exponent));
    }

    public static void FractionalPowBelowZero() => Check(double.NaN, double.NaN, Dual<T>.Pow(Moving(-1), 0.5));

    public static void DivisionByZero()
    {
        Dual<T> zero = 0;
        Assert.Equal(Infinity, Plain.Unpack((Moving(1) / zero).Value));
        Assert.Equal(-Infinity, Plain.Unpack((Moving(-1) / zero).Value));
        Assert.Equal(-Infinity, Plain.Unpack((Moving(1) / -zero).Value));
        Assert.True(double.IsNaN(Plain.Unpack((zero / zero).Value)));

        // d/dx 1/x = -1/x^2.
        Check(Infinity, -Infinity, 1 / Moving(0));
    }

    public static void ComparisonWithNaNAnswersNo()
    {
        Dual<T> nan = double.NaN;
        Dual<T> yes = new(1, 2);
        Dual<T> no = new(3, 4);
        Check(3, 4, Dual<T>.IfLess(nan, 0, yes, no));
        Check(3, 4, Dual<T>.IfLess(0, nan, yes, no));
        Check(3, 4, Dual<T>.IfLess(nan, nan, yes, no));
        Check(3, 4, Dual<T>.IfLess(0, 0, yes, no));
        Check(1, 2, Dual<T>.IfLess(0, 1, yes, no));
    }

    public static void BranchNotChosenDoesNoHarm()
    {
        BranchNotChosenDoesNoHarm(double.NaN);
        BranchNotChosenDoesNoHarm(Infinity);
        BranchNotChosenDoesNoHarm(-Infinity);
    }

    private static void BranchNotChosenDoesNoHarm(double bad)
    {
        Dual<T> harmful = new(bad, bad);
        Dual<T> good = new(1, 2);
        Check(1, 2, Dual<T>.IfLess(0, 1, good, harmful));
        Check(1, 2, Dual<T>.IfLess(1, 0, harmful, good));
    }

    // Min gives the second where one is NaN, Max the first.
    public static void MinAndMaxWithNaN()
    {
        Dual<T> nan = new(double.NaN, 5);
        Dual<T> one = new(1, 2);
        Check(1, 2, Dual<T>.Min(nan, one));
        Check(double.NaN, 5, Dual<T>.Min(one, nan));
        Check(double.NaN, 5, Dual<T>.Max(nan, one));
        Check(1, 2, Dual<T>.Max(one, nan));
    }

    public static void AbsAtZeroHasTheSlopeFromTheRight()
    {
        Check(0, 1, Dual<T>.Abs(Moving(0)));
        Check(0, -3, Dual<T>.Abs(new(0, -3)));
        Check(double.Epsilon, -1, Dual<T>.Abs(Moving(-double.Epsilon)));
    }

    public static void HoldDropsTheSlope()
    {
        Check(3, 0, Dual<T>.Hold(new(3, 7)));
        Check(Infinity, 0, Dual<T>.Hold(new(Infinity, double.NaN)));
    }

    private static Dual<T> Moving(double value) => Dual<T>.Variable(value);

    private static void Check(double value, double slope, Dual<T> actual)
    {
        for (int k = 0; k < T.Width; k++)
        {
            Assert.Equal(value, Plain.Unpack(actual.Value, k));
            Assert.Equal(slope, Plain.Unpack(actual.Slope, k));
        }
    }
}
