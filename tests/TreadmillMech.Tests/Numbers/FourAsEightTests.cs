namespace TreadmillMech.Tests.Numbers;

/// <summary>Four lanes give the bits of eight, function by function, whatever the others hold.</summary>
public sealed class FourAsEightTests
{
    [Fact]
    public void EveryFunction()
    {
        double[] inputs =
        [
            .. Sweep.Whole,
            .. Sweep.Even(-3, 3, 4_000).Zip(Sweep.Log(1e-5, 6e6, 4_000)).SelectMany(x => new[] { x.First, x.Second }),
            .. Sweep.Even(-720, 720, 8_000),
        ];
        for (int i = 0; i + Lanes.Count < inputs.Length; i += 3)
        {
            ReadOnlySpan<double> first = inputs.AsSpan(i, Lanes.Count);
            ReadOnlySpan<double> second = inputs.AsSpan(inputs.Length - i - Lanes.Count, Lanes.Count);
            Lanes[] eight = Evaluate(new Lanes(first), new Lanes(second));
            FourLanes[] low = Evaluate(new FourLanes(first[..4]), new FourLanes(second[..4]));
            FourLanes[] high = Evaluate(new FourLanes(first[4..]), new FourLanes(second[4..]));
            for (int function = 0; function < eight.Length; function++)
            {
                for (int k = 0; k < Lanes.Count; k++)
                {
                    double four = k < 4 ? low[function][k] : high[function][k - 4];
                    Assert.True(
                        Sweep.Same(eight[function][k], four),
                        $"function {function} of {first[k]:R}, {second[k]:R}: {eight[function][k]:R} and {four:R}"
                    );
                }
            }
        }
    }

    private static T[] Evaluate<T>(T x, T y)
        where T : struct, IReal<T>
    {
        (T sin, T cos) = T.SinCos(x);
        (T sinPi, T cosPi) = T.SinCosPi(x);
        return
        [
            x + y,
            x - y,
            x * y,
            x / y,
            -x,
            T.Sqrt(x),
            T.Exp(x),
            T.Log(x),
            sin,
            cos,
            sinPi,
            cosPi,
            T.Asin(x),
            T.Atan2(x, y),
            T.Tanh(x),
            T.Pow(x, 0.8),
            T.Pow(x, 3),
            T.Abs(x),
            T.Min(x, y),
            T.Max(x, y),
            T.IfLess(x, y, y, 1),
            T.MultiplyAdd(x, y, sin),
        ];
    }
}
