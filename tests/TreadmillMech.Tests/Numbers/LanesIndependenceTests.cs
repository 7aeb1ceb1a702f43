namespace TreadmillMech.Tests.Numbers;

/// <summary>What one lane answers does not depend on what its neighbours hold.</summary>
public sealed class LanesIndependenceTests
{
    // One neighbour of every size at which a vector algorithm may change its path for all lanes at once.
    private static readonly double[] Neighbours =
    [
        0,
        1e-310,
        1e-10,
        1e-4,
        0.5,
        1,
        -3,
        700,
        709,
        -709,
        1e5,
        4e6,
        5e6,
        1e9,
        1e300,
        double.NaN,
        double.PositiveInfinity,
        double.NegativeInfinity,
    ];

    [Fact]
    public void Exp() => Independent(Lanes.Exp);

    [Fact]
    public void Log() => Independent(Lanes.Log);

    [Fact]
    public void Sin() => Independent(x => Lanes.SinCos(x).Sin);

    [Fact]
    public void Cos() => Independent(x => Lanes.SinCos(x).Cos);

    [Fact]
    public void SinPi() => Independent(x => Lanes.SinCosPi(x).Sin);

    [Fact]
    public void CosPi() => Independent(x => Lanes.SinCosPi(x).Cos);

    private static void Independent(Func<Lanes, Lanes> function)
    {
        double[] inputs =
        [
            .. Sweep.Special,
            Math.PI / 4,
            Math.BitIncrement(Math.PI / 4),
            1.0 / 8192,
            Math.BitDecrement(1.0 / 8192),
            Math.BitDecrement(5e6),
            5e6,
            .. Sweep.Log(1e-6, 1e-3, 4_001),
            .. Sweep.Even(-1, 1, 8_001),
            .. Sweep.Even(-708, 708, 4_001),
            .. Sweep.Log(1e3, 6e6, 4_001),
        ];
        foreach (double x in inputs)
        {
            double alone = function(x)[0];
            foreach (double neighbour in Neighbours)
            {
                double beside = function(new([x, neighbour, x, x, x, x, x, x]))[0];
                double far = function(new([x, x, x, x, x, x, neighbour, x]))[0];
                Assert.True(Sweep.Same(alone, beside), $"{x:R} beside {neighbour:R}: {alone:R}, {beside:R}");
                Assert.True(Sweep.Same(alone, far), $"{x:R} far from {neighbour:R}: {alone:R}, {far:R}");
            }
        }
    }
}
