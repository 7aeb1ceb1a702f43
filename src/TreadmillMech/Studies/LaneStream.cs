using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>Eight random streams side by side, and a ninth for what cannot be drawn so (xoshiro256++, streams that never meet).</summary>
internal struct LaneStream
{
    private RandomStream lone;
    private Vector512<ulong> s0;
    private Vector512<ulong> s1;
    private Vector512<ulong> s2;
    private Vector512<ulong> s3;

    /// <summary>The first streams of a seed.</summary>
    internal static LaneStream[] Of(ulong seed, int count)
    {
        RandomStream[] streams = RandomStream.Of(seed, (Lanes.Count + 1) * count);
        LaneStream[] sets = new LaneStream[count];
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<RandomStream> mine = streams.AsSpan(i * (Lanes.Count + 1), Lanes.Count + 1);
            for (int k = 0; k < Lanes.Count; k++)
            {
                (ulong a, ulong b, ulong c, ulong d) = mine[k].State;
                sets[i].s0 = sets[i].s0.WithElement(k, a);
                sets[i].s1 = sets[i].s1.WithElement(k, b);
                sets[i].s2 = sets[i].s2.WithElement(k, c);
                sets[i].s3 = sets[i].s3.WithElement(k, d);
            }

            sets[i].lone = mine[Lanes.Count];
        }

        return sets;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Vector512<ulong> Next()
    {
        Vector512<ulong> sum = s0 + s3;
        Vector512<ulong> result = ((sum << 23) | (sum >>> 41)) + s0;
        Vector512<ulong> shifted = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= shifted;
        s3 = (s3 << 45) | (s3 >>> 19);
        return result;
    }

    /// <summary>Between 0 and 1, neither of them: odd multiples of 2 to the power of -53.</summary>
    internal Lanes Uniform()
    {
        // Fifty-two bits behind a one make a number from 1 to 2.
        Vector512<ulong> bits = (Next() >>> 12) | Vector512.Create(0x3FF0000000000000UL);
        return new(bits.AsDouble() - Vector512.Create(1 - (1.0 / (1UL << 53))));
    }

    /// <summary>Standard normal, by the inverse of its distribution.</summary>
    internal Lanes Normal() => NormalQuantile.Of(Uniform());

    /// <summary>Chi-squared over its degrees of freedom.</summary>
    internal Lanes MeanSquare(double freedom)
    {
        Span<double> values = stackalloc double[Lanes.Count];
        for (int k = 0; k < Lanes.Count; k++)
        {
            values[k] = lone.MeanSquare(freedom);
        }

        return new(values);
    }
}
