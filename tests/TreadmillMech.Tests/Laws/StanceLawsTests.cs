using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>
/// A foot's load written out: its derivatives against those that the number types carry through the published shapes, its
/// integrals against quadratures of them.
/// </summary>
public sealed class StanceLawsTests
{
    private const int Parts = 400;

    // Two-point Gauss rule on many parts: its error goes with the fourth power of their length.
    private static readonly double Node = 0.5 - (0.5 / Math.Sqrt(3));

    [Fact]
    public void TheDerivativesAreThoseOfTheNumberTypes() =>
        Each(
            (load, random) =>
            {
                double u = random.NextDouble();
                bool pushes = u >= load.Share;
                double rate = pushes ? 1 / (1 - load.Share) : 1 / load.Share;
                double peak = pushes ? StanceLaws.PushPeak<Real>(load.Peak, load.Share) : load.Peak;
                (Real, Real) wave = Real.SinCosPi(u);
                (Real, Real) lobe = Real.SinCosPi(rate * (pushes ? u - load.Share : u));
                FootJet<Real> jet = StanceLaws.Jet<Real>(load.Normal, load.Third, peak, rate, wave, lobe);
                (Real value, Real slope) = StanceLaws.Foot<Real>(load.Normal, load.Third, peak, rate, wave, lobe);
                Dual<Dual<Dual<Dual<Real>>>> x = new(
                    new(new(new(u, 1), new(1, 0)), new(new(1, 0), 0)),
                    new(new(new(1, 0), 0), 0)
                );
                Dual<Dual<Dual<Dual<Real>>>> f = load.At(x);
                Near(f.Value.Value.Value.Value, jet.F0, load.Scale);
                Near(f.Slope.Value.Value.Value, jet.F1, 4 * load.Scale);
                Near(f.Slope.Slope.Value.Value, jet.F2, 1e2 * load.Scale);
                Near(f.Slope.Slope.Slope.Value, jet.F3, 1e3 * load.Scale);
                Near(f.Slope.Slope.Slope.Slope, jet.F4, 1e4 * load.Scale);
                Near(jet.F0, value, load.Scale);
                Near(jet.F1, slope, 4 * load.Scale);
                Near(jet.F0, StanceLaws.Load<Real>(load.Normal, load.Third, wave.Item1, peak * lobe.Item1), load.Scale);
                double bound = StanceLaws.Bound<Real>(load.Normal, load.Third, 81, Math.Abs(peak) * Math.Pow(rate, 4));
                Assert.True(Math.Abs(jet.F4) <= Math.Pow(Math.PI, 4) * bound);
            }
        );

    [Fact]
    public void TheIntegralsAreThoseOfQuadratures() =>
        Each(
            (load, random) =>
            {
                Near(
                    load.Sum(0, 1, u => load.At<Real>(u)),
                    StanceLaws.Sum<Real>(load.Normal, load.Third),
                    1e3 * load.Scale
                );
                Near(
                    load.Sum(0, 1, u => u * load.At<Real>(u)),
                    StanceLaws.FirstMoment<Real>(load.Normal, load.Third, load.Peak, load.Share),
                    1e3 * load.Scale
                );
                Near(
                    load.Sum(0, 1, u => load.At<Real>(u) * load.At<Real>(u)),
                    StanceLaws.SquareSum<Real>(load.Normal, load.Third, load.Peak, load.Share),
                    1e3 * load.Scale * load.Scale
                );
            }
        );

    [Fact]
    public void TheProductOfBothFeetIsThatOfAQuadrature() =>
        Each(
            (load, random) =>
            {
                double overlap = load.Share * random.NextDouble();
                double push = StanceLaws.PushPeak<Real>(load.Peak, load.Share);

                // The foot behind still pushes while both are down.
                if (1 - overlap < load.Share)
                {
                    return;
                }

                Near(
                    load.Sum(0, overlap, u => load.At<Real>(u) * load.At<Real>(u + 1 - overlap)),
                    StanceLaws.ProductSum<Real>(
                        load.Normal,
                        load.Third,
                        load.Peak,
                        1 / load.Share,
                        push,
                        1 / (1 - load.Share),
                        overlap
                    ),
                    1e3 * load.Scale * load.Scale
                );
            }
        );

    private static void Each(Action<Load, Random> check)
    {
        Random random = new(4);
        for (int i = 0; i < 600; i++)
        {
            // A third, a half and two thirds are where rates of the waves meet.
            double share = (i % 10) switch
            {
                0 => 1.0 / 3,
                1 => 0.5,
                2 => 2.0 / 3,
                3 => (1.0 / 3) + 1e-7,
                4 => 0.5 - 1e-7,
                _ => 0.3 + (0.4 * random.NextDouble()),
            };
            check(
                new(
                    (600 * random.NextDouble()) - 200,
                    (1.3 * random.NextDouble()) - 0.3,
                    500 * random.NextDouble(),
                    share
                ),
                random
            );
        }
    }

    private static void Near(double expected, double found, double scale) =>
        Assert.True(Math.Abs(expected - found) <= 1e-12 * scale, $"{found:R} against {expected:R}, scale {scale}");

    private sealed record Load(double Normal, double Third, double Peak, double Share)
    {
        internal double Scale => 10 * (Math.Abs(Normal) + Peak + 1);

        internal T At<T>(T u)
            where T : struct, IReal<T> =>
            (Normal * GaitLaws.NormalShape<T>(u, Third)) + (Peak * GaitLaws.ForeAftShape<T>(u, Share));

        internal double Sum(double from, double to, Func<double, double> of)
        {
            double sum = 0;
            double[] ends = [from, Math.Clamp(Share, from, to), to];
            for (int piece = 0; piece < 2; piece++)
            {
                double length = (ends[piece + 1] - ends[piece]) / Parts;
                for (int i = 0; i < Parts; i++)
                {
                    double start = ends[piece] + (i * length);
                    sum += 0.5 * length * (of(start + (Node * length)) + of(start + ((1 - Node) * length)));
                }
            }

            return sum;
        }
    }
}
