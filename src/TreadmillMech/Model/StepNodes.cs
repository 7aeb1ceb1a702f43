using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Loads of the feet and their slopes at even places of each piece of a step, both ends of a piece included.</summary>
/// <remarks>
/// The sines at the nodes of a piece follow from those of its first node and of one interval by the rule for sums of
/// angles. A piece is empty where no foot overlaps: its slopes, counted for an interval, are then zero.
/// </remarks>
[SkipLocalsInit]
internal struct StepNodes<T>
    where T : struct, IReal<T>
{
    /// <summary>Intervals of a piece.</summary>
    internal const int Intervals = 6;

    private const int NodesAPiece = Intervals + 1;

    private Buffer nodes;

    /// <summary>First piece that has a length in any of the cases: none is before the braking foot when running.</summary>
    internal int FirstPiece { get; private set; }

    /// <summary>Loads at a node of a piece.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal readonly NodeLoads<T> At(int piece, int node) => nodes[(piece * NodesAPiece) + node];

    /// <summary>Loads and slopes of a step.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Fill(in StrideNumbers<T> s, ref StepNodes<T> to)
    {
        Turn<T> wave = new(0, 1);
        Turn<T> lobe = wave;
        to.FirstPiece = 1;
        if (T.AnyLess(0, s.Overlap))
        {
            to.FirstPiece = 0;
            T both = s.Overlap * (1.0 / Intervals);
            T none = 0;
            to.Ahead(in s, 0, in none, in both, in s.Braking, in s.BrakingRate, ref wave, ref lobe);
            to.Behind(in s, in both);
        }

        T braking = (s.BrakingShare - s.Overlap) * (1.0 / Intervals);
        to.Ahead(in s, 1, in s.Overlap, in braking, in s.Braking, in s.BrakingRate, ref wave, ref lobe);
        lobe = new(0, 1);
        T push = (s.Window - s.BrakingShare) * (1.0 / Intervals);
        to.Ahead(in s, 2, in s.BrakingShare, in push, in s.Push, in s.PushRate, ref wave, ref lobe);
    }

    /// <summary>The foot that struck last, over a piece; leaves the waves at the end of the piece.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Ahead(
        in StrideNumbers<T> s,
        int piece,
        in T from,
        in T interval,
        in T peak,
        in T rate,
        ref Turn<T> waveAtEnds,
        ref Turn<T> lobeAtEnds
    )
    {
        Turn<T> waveStep = Turn<T>.Of(interval);
        Turn<T> lobeStep = Turn<T>.Of(rate * interval);

        // Local copies stay in registers, since no call comes after them.
        Turn<T> wave = waveAtEnds;
        Turn<T> lobe = lobeAtEnds;
        T share = T.MultiplyAdd(s.RideShare, from, s.StrikeShare);
        T ride = s.RideShare * interval;
        int first = piece * NodesAPiece;
        for (int i = first; ; i++)
        {
            (T load, T slope) = StanceLaws.Foot(s.NormalLoad, s.ThirdHarmonic, peak, rate, wave.Pair, lobe.Pair);
            slope *= interval;
            nodes[i] = new(
                load + s.Drag,
                slope,
                T.MultiplyAdd(load, share, 0.5 * s.Drag),
                T.MultiplyAdd(slope, share, load * ride)
            );
            if (i == first + Intervals)
            {
                waveAtEnds = wave;
                lobeAtEnds = lobe;
                break;
            }

            wave = wave.Plus(in waveStep);
            lobe = lobe.Plus(in lobeStep);
            share += ride;
        }
    }

    /// <summary>The foot that struck before, over the first piece, counted back from its toe-off.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Behind(in StrideNumbers<T> s, in T interval)
    {
        Turn<T> waveStep = Turn<T>.Of(interval);
        Turn<T> lobeStep = Turn<T>.Of(s.PushRate * interval);
        Turn<T> wave = new(0, 1);
        Turn<T> lobe = wave;
        T share = s.StrikeShare + s.RideShare;
        T ride = s.RideShare * interval;
        for (int i = Intervals; ; i--)
        {
            (T load, T slope) = StanceLaws.Foot(
                s.NormalLoad,
                s.ThirdHarmonic,
                s.Push,
                s.PushRate,
                wave.Pair,
                lobe.Pair
            );
            slope *= -interval;
            NodeLoads<T> n = nodes[i];
            nodes[i] = new(
                n.Pull + load,
                n.PullSlope + slope,
                T.MultiplyAdd(load, share, n.Shared),
                n.SharedSlope + T.MultiplyAdd(slope, share, load * ride)
            );
            if (i == 0)
            {
                break;
            }

            wave = wave.Plus(in waveStep);
            lobe = lobe.Plus(in lobeStep);
            share -= ride;
        }
    }

    [InlineArray(Stride.Pieces * NodesAPiece)]
    private struct Buffer
    {
        private NodeLoads<T> first;
    }
}
