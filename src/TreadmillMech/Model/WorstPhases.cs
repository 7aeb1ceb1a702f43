using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>
/// Search for the phases of a step at which the running belt's grip is used most, the pull is largest, and the pull is
/// least.
/// </summary>
/// <remarks>
/// <para>
/// A top lies where the slope turns from plus to minus: between two nodes of a piece, or at the end of a piece. The cubic
/// through heights and slopes of both nodes gives its height within a bound and its place to a thousandth; one step of the
/// fourth order on the exact derivatives gives the place to 1e-11. Only the highest top is climbed, and a second one
/// whose cubic comes within the bound of it. Both bounds are derived in docs/articles/batch-and-speed.md.
/// </para>
/// <para>A case that has settled stays where it is while others beside it go on: its answer depends on itself alone.</para>
/// </remarks>
[SkipLocalsInit]
internal readonly struct WorstPhases : IPlainSearch
{
    internal const int Results = 8;
    internal const int BeltPiece = 0;
    internal const int BeltPlace = 1;
    internal const int BeltOverruns = 2;
    internal const int MostPiece = 3;
    internal const int MostPlace = 4;
    internal const int LeastPiece = 5;
    internal const int LeastPlace = 6;
    internal const int BeltCurvature = 7;

    /// <summary>Distance from the end of a piece that counts as the end.</summary>
    internal const double Edge = 1e-12;

    private const int MostSteps = 16;
    private const double Interval = 1.0 / StepNodes<Real>.Intervals;
    private const double Nowhere = -1e300;

    public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IReal<T>
    {
        ref StrideNumbers<T> stride = ref Unsafe.As<T, StrideNumbers<T>>(ref MemoryMarshal.GetReference(arguments));
        ref StepNodes<T> nodes = ref Aligned.In<StepNodes<T>>(stackalloc byte[Aligned.Size<StepNodes<T>>()]);
        StepNodes<T>.Fill(in stride, ref nodes);
        Doubts<T> doubts = Doubts<T>.Of(in stride);

        // The demand on the grip is a sum of pull and shared pull, either way: its factors are the demands of each alone.
        T ratio = stride.TensionRatio;
        Target<T> slips = new(TractionLaws.SlipDemand(1, 0, ratio), TractionLaws.SlipDemand(0, 1, ratio));
        Find(in stride, in nodes, in slips, in doubts, out Top<T> belt, out T curvature);
        Target<T> overruns = new(TractionLaws.OverrunDemand(1, 0, ratio), TractionLaws.OverrunDemand(0, 1, ratio));
        T worth = doubts.Worth(in nodes, in overruns, in belt);
        results[BeltOverruns] = 0;
        if (T.AnyLess(0.5, worth))
        {
            Find(in stride, in nodes, in overruns, in doubts, out Top<T> overrun, out T backwards);
            worth = T.IfLess(belt.Height, overrun.Height, worth, 0);
            belt = Top<T>.Where(worth, in overrun, in belt);
            curvature = T.IfLess(0.5, worth, backwards, curvature);
            results[BeltOverruns] = worth;
        }

        results[BeltPiece] = belt.Piece;
        results[BeltPlace] = belt.Place;
        results[BeltCurvature] = curvature;
        Target<T> pull = new(1, 0);
        Find(in stride, in nodes, in pull, in doubts, out Top<T> most, out _);
        results[MostPiece] = most.Piece;
        results[MostPlace] = most.Place;
        pull = new(-1, 0);
        Find(in stride, in nodes, in pull, in doubts, out Top<T> least, out _);
        results[LeastPiece] = least.Piece;
        results[LeastPlace] = least.Place;
    }

    /// <summary>Highest top of a target, climbed.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Find<T>(
        in StrideNumbers<T> stride,
        in StepNodes<T> nodes,
        in Target<T> target,
        in Doubts<T> doubts,
        out Top<T> best,
        out T curvature
    )
        where T : struct, IReal<T>
    {
        Scan(in nodes, in target, out best, out Top<T> second);
        T rivals = T.IfLess(best.Height, second.Height + doubts.OfCubics(in target), 1, 0);
        T climbing = 1;
        curvature = 0;
        Climb(in stride, in target, ref climbing, ref best, ref curvature);
        if (T.AnyLess(0.5, rivals))
        {
            climbing = rivals;
            T other = 0;
            Climb(in stride, in target, ref climbing, ref second, ref other);
            rivals = T.IfLess(best.Height, second.Height, rivals, 0);
            best = Top<T>.Where(rivals, in second, in best);
            curvature = T.IfLess(0.5, rivals, other, curvature);
        }
    }

    /// <summary>Highest and second highest top by the cubics between the nodes.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Scan<T>(in StepNodes<T> nodes, in Target<T> target, out Top<T> best, out Top<T> second)
        where T : struct, IReal<T>
    {
        // Local copies stay in registers.
        Top<T> highest = new(1, Edge, Edge, target.Of(nodes.At(1, 0)).Height);
        Top<T> next = new(1, Edge, Edge, Nowhere);
        for (int piece = nodes.FirstPiece; piece < Stride.Pieces; piece++)
        {
            (T from, T rise) = target.Of(nodes.At(piece, 0));
            for (int i = 0; i < StepNodes<T>.Intervals; i++)
            {
                (T to, T riseThere) = target.Of(nodes.At(piece, i + 1));

                // Up at this node and not up at the next.
                T turns = T.IfLess(0, rise, riseThere, 1);
                if (T.AnyLess(turns, double.Epsilon))
                {
                    Take(Between(piece, i, from, rise, to, riseThere, turns), ref highest, ref next);
                }

                (from, rise) = (to, riseThere);
            }

            if (T.AnyLess(0, rise))
            {
                Take(new(piece, 1 - Edge, 1 - Edge, T.IfLess(0, rise, from, Nowhere)), ref highest, ref next);
            }
        }

        best = highest;
        second = next;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Take<T>(in Top<T> here, ref Top<T> best, ref Top<T> second)
        where T : struct, IReal<T>
    {
        Top<T> beaten = Top<T>.Lower(in best, in here);
        best = Top<T>.Higher(in best, in here);
        second = Top<T>.Higher(in second, in beaten);
    }

    /// <summary>Top of the cubic with the heights and slopes of two nodes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Top<T> Between<T>(int piece, int interval, T from, T rise, T to, T riseThere, T turns)
        where T : struct, IReal<T>
    {
        T chord = to - from;
        T square = (3 * chord) - (2 * rise) - riseThere;
        T cube = rise + riseThere - (2 * chord);
        T root = T.Sqrt(T.MultiplyAdd(square, square, -3 * cube * rise));
        T way = T.Max(0, T.Min(1, rise / (root - square)));
        T height = T.MultiplyAdd(way, T.MultiplyAdd(way, T.MultiplyAdd(way, cube, square), rise), from);
        T low = interval * Interval;
        return new(piece, T.MultiplyAdd(way, Interval, low), low, T.IfLess(turns, double.Epsilon, height, Nowhere));
    }

    /// <summary>Climbs from a place near a top to the top, within its interval.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Climb<T>(
        in StrideNumbers<T> stride,
        in Target<T> target,
        ref T climbing,
        ref Top<T> top,
        ref T curvature
    )
        where T : struct, IReal<T>
    {
        for (int i = 0; i < MostSteps && T.AnyLess(0.5, climbing); i++)
        {
            Stride.Derivatives(in stride, in top, in target, out FootJet<T> jet);
            Top<T> next = Ascent.Step(in jet, in top, out T bend, out T settled);
            top = Top<T>.Where(climbing, in next, in top);
            curvature = T.IfLess(0.5, climbing, bend, curvature);
            climbing = T.IfLess(0.5, settled, 0, climbing);
        }
    }
}
