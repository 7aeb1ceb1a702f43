namespace TreadmillMech.Tests.Numbers;

/// <summary>Sine and cosine of pi times a number against the base library's sine and cosine, and against algebra.</summary>
public sealed class HalfTurnsTests
{
    // The base library's own error is below one unit in the last place, and so is ours.
    private const double Ulps = 2;
    private const double PiRest = 1.2246467991473532e-16;

    [Fact]
    public void TheyAreThoseOfTheBaseLibraryOnTheWholeDomain()
    {
        double[] inputs =
        [
            .. Sweep.Even(-2.5, 2.5, 400_001),
            .. Sweep.Even(-1000, 1000, 100_003),
            .. Sweep.Log(1e-300, 1e16, 100_000),
            .. Sweep.Log(1e-300, 1e16, 100_000).Select(x => -x),
            .. Enumerable.Range(-40, 80).SelectMany(n => Near(0.25 * n)),
        ];
        double worst = 0;
        foreach (double x in inputs)
        {
            (double sin, double cos) = HalfTurns.SinCos(x);
            (double expectedSin, double expectedCos) = Expected(x);
            worst = Math.Max(worst, Math.Max(Error(sin, expectedSin), Error(cos, expectedCos)));
            Assert.True(worst <= Ulps, $"{x:R}: {sin:R}, {cos:R} against {expectedSin:R}, {expectedCos:R}");
        }
    }

    [Fact]
    public void EightGiveTheBitsOfOne()
    {
        double[] inputs =
        [
            .. Sweep.Whole,
            .. Sweep.Even(-2.5, 2.5, 40_000),
            .. Sweep.Log(1e-300, 1e300, 8_000),
            double.NaN,
            double.PositiveInfinity,
        ];
        for (int i = 0; i + Lanes.Count <= inputs.Length; i++)
        {
            (Lanes sin, Lanes cos) = Lanes.SinCosPi(new(inputs.AsSpan(i, Lanes.Count)));
            (double s, double c) = HalfTurns.SinCos(inputs[i]);
            Assert.Equal(s, sin[0]);
            Assert.Equal(c, cos[0]);
        }
    }

    [Fact]
    public void HalvesAreExact()
    {
        for (int n = -9; n <= 9; n++)
        {
            (double sin, double cos) = HalfTurns.SinCos(0.5 * n);
            Assert.Equal(
                (n & 1) == 0 ? 0
                    : (n & 2) == 0 ? 1
                    : -1,
                sin
            );
            Assert.Equal(
                (n & 1) == 1 ? 0
                    : (n & 2) == 0 ? 1
                    : -1,
                cos
            );
        }
    }

    [Fact]
    public void TheSlopesAreThoseOfCalculus()
    {
        foreach (double x in Sweep.Even(-2, 2, 401))
        {
            (Dual<Real> sin, Dual<Real> cos) = Dual<Real>.SinCosPi(Dual<Real>.Variable(x));
            Assert.Equal(Math.PI * Math.Cos(Math.PI * x), sin.Slope.Value, 1e-14);
            Assert.Equal(-Math.PI * Math.Sin(Math.PI * x), cos.Slope.Value, 1e-14);
        }
    }

    // The quarter turns are taken out exactly, and what the product with pi loses is put back by the rule for small angles.
    private static (double Sin, double Cos) Expected(double x)
    {
        double rest = Math.IEEERemainder(x, 0.5);
        double angle = Math.PI * rest;
        double lost = Math.FusedMultiplyAdd(Math.PI, rest, -angle) + (PiRest * rest);
        (double sin, double cos) = Math.SinCos(angle);
        (sin, cos) = (sin + (lost * cos), cos - (lost * sin));
        return (Math.IEEERemainder((x - rest) / 0.5, 4)) switch
        {
            0 => (sin, cos),
            1 => (cos, -sin),
            -1 => (-cos, sin),
            _ => (-sin, -cos),
        };
    }

    private static IEnumerable<double> Near(double x) => [Math.BitDecrement(x), x, Math.BitIncrement(x)];

    // Near its zeros a sine is as small as the number itself: relative to its own last place all the same.
    private static double Error(double found, double expected) =>
        found.Equals(expected)
            ? 0
            : Math.Abs(found - expected) / (Math.BitIncrement(Math.Abs(expected)) - Math.Abs(expected));
}
