using System.Numerics;

namespace TreadmillMech.Studies;

/// <summary>Random numbers by xoshiro256++ (Blackman and Vigna 2021), with streams that never meet.</summary>
/// <remarks>
/// A block of draws takes the stream of its number: whichever thread runs it, and when, its numbers are the same. Streams
/// lie 2 to the power of 128 numbers apart.
/// </remarks>
internal struct RandomStream
{
    // Blackman and Vigna, Scrambled linear pseudorandom number generators, ACM TOMS 47 (2021); constants from memory,
    // the test computes them another way.
    private static readonly ulong[] JumpPolynomial =
    [
        0x180ec6d33cfd0aba,
        0xd5a61266f0c9392c,
        0xa9582618e03fc9aa,
        0x39abdc4529b1661c,
    ];

    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;
    private double spare;
    private bool hasSpare;

    internal RandomStream(ulong s0, ulong s1, ulong s2, ulong s3) =>
        (this.s0, this.s1, this.s2, this.s3) = (s0, s1, s2, s3);

    internal readonly (ulong S0, ulong S1, ulong S2, ulong S3) State => (s0, s1, s2, s3);

    /// <summary>The first streams of a seed.</summary>
    internal static RandomStream[] Of(ulong seed, int count)
    {
        RandomStream stream = new(Mix(ref seed), Mix(ref seed), Mix(ref seed), Mix(ref seed));
        RandomStream[] streams = new RandomStream[count];
        for (int i = 0; i < count; i++)
        {
            streams[i] = stream;
            stream.Jump();
        }

        return streams;
    }

    internal ulong Next()
    {
        ulong result = BitOperations.RotateLeft(s0 + s3, 23) + s0;
        ulong shifted = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= shifted;
        s3 = BitOperations.RotateLeft(s3, 45);
        return result;
    }

    /// <summary>Between 0 and 1, neither of them.</summary>
    internal double Uniform() => ((Next() >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>Standard normal, by Marsaglia's polar method.</summary>
    internal double Normal()
    {
        if (hasSpare)
        {
            hasSpare = false;
            return spare;
        }

        double x;
        double y;
        double square;
        do
        {
            x = (2 * Uniform()) - 1;
            y = (2 * Uniform()) - 1;
            square = (x * x) + (y * y);
        } while (square >= 1 || square == 0);

        double stretch = Math.Sqrt(-2 * Math.Log(square) / square);
        (spare, hasSpare) = (y * stretch, true);
        return x * stretch;
    }

    /// <summary>Chi-squared over its degrees of freedom, 1 or more; Marsaglia and Tsang 2000.</summary>
    internal double MeanSquare(double freedom)
    {
        // A gamma variable of shape below one is one of shape one more, times a power of a uniform number.
        double shape = 0.5 * freedom;
        double boost = shape < 1 ? Math.Pow(Uniform(), 1 / shape) : 1;
        double d = (shape < 1 ? shape + 1 : shape) - (1.0 / 3);
        double c = 1 / Math.Sqrt(9 * d);
        while (true)
        {
            double x = Normal();
            double v = 1 + (c * x);
            v = v * v * v;
            if (v > 0 && Math.Log(Uniform()) < (0.5 * x * x) + (d * (1 - v + Math.Log(v))))
            {
                return boost * d * v / shape;
            }
        }
    }

    /// <summary>2 to the power of 128 numbers ahead.</summary>
    internal void Jump()
    {
        RandomStream sum = default;
        foreach (ulong word in JumpPolynomial)
        {
            for (int bit = 0; bit < 64; bit++)
            {
                if ((word & (1UL << bit)) != 0)
                {
                    sum.s0 ^= s0;
                    sum.s1 ^= s1;
                    sum.s2 ^= s2;
                    sum.s3 ^= s3;
                }

                Next();
            }
        }

        this = sum;
    }

    // SplitMix64: fills a state from a seed.
    private static ulong Mix(ref ulong seed)
    {
        ulong z = seed += 0x9e3779b97f4a7c15;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9;
        z = (z ^ (z >> 27)) * 0x94d049bb133111eb;
        return z ^ (z >> 31);
    }
}
