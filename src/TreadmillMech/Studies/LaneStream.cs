using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Studies;

/// <summary>Eight random streams side by side, and a ninth for what cannot be drawn so (xoshiro256++, streams that never meet).</summary>
internal struct LaneStream
{
    /// <summary>Streams side by side.</summary>
    internal const int Count = 8;

    private RandomStream lone;
    private Four low;
    private Four high;

    /// <summary>The first streams of a seed.</summary>
    internal static LaneStream[] Of(ulong seed, int count)
    {
        RandomStream[] streams = RandomStream.Of(seed, (Count + 1) * count);
        LaneStream[] sets = new LaneStream[count];
        for (int i = 0; i < count; i++)
        {
            ReadOnlySpan<RandomStream> mine = streams.AsSpan(i * (Count + 1), Count + 1);
            sets[i].low = new(mine[..4]);
            sets[i].high = new(mine[4..8]);
            sets[i].lone = mine[Count];
        }

        return sets;
    }

    /// <summary>The next number of the first four streams, and of the others.</summary>
    internal (Vector256<ulong> Low, Vector256<ulong> High) Next() => (low.Next(), high.Next());

    /// <summary>Between 0 and 1, neither of them: odd multiples of 2 to the power of -53.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal unsafe void Uniform(double* to)
    {
        Vector256.Store(Between(low.Next()), to);
        Vector256.Store(Between(high.Next()), to + 4);
    }

    /// <summary>Chi-squared over its degrees of freedom.</summary>
    internal unsafe void MeanSquare(double freedom, double* to)
    {
        for (int k = 0; k < Count; k++)
        {
            to[k] = lone.MeanSquare(freedom);
        }
    }

    // Fifty-two bits behind a one make a number from 1 to 2.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Between(Vector256<ulong> bits) =>
        ((bits >>> 12) | Vector256.Create(0x3FF0000000000000UL)).AsDouble() - Vector256.Create(1 - (1.0 / (1UL << 53)));

    private struct Four
    {
        private Vector256<ulong> s0;
        private Vector256<ulong> s1;
        private Vector256<ulong> s2;
        private Vector256<ulong> s3;

        internal Four(ReadOnlySpan<RandomStream> streams)
        {
            for (int k = 0; k < streams.Length; k++)
            {
                (ulong a, ulong b, ulong c, ulong d) = streams[k].State;
                s0 = s0.WithElement(k, a);
                s1 = s1.WithElement(k, b);
                s2 = s2.WithElement(k, c);
                s3 = s3.WithElement(k, d);
            }
        }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal Vector256<ulong> Next()
        {
            Vector256<ulong> sum = s0 + s3;
            Vector256<ulong> result = ((sum << 23) | (sum >>> 41)) + s0;
            Vector256<ulong> shifted = s1 << 17;
            s2 ^= s0;
            s3 ^= s1;
            s1 ^= s2;
            s0 ^= s3;
            s2 ^= shifted;
            s3 = (s3 << 45) | (s3 >>> 19);
            return result;
        }
    }
}
