using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>
/// Search for the phases of a step at which the running belt's grip is used most, the pull is largest, and the pull is
/// least. Each is found from six phases a piece and a safeguarded Newton search with exact derivatives.
/// </summary>
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

    private const int MostSteps = 8;
    private const double Settled = 1e-6;
    private const double Edge = 1e-12;
    private const double LongestStep = 0.35;

    public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IReal<T>
    {
        StrideNumbers<T> stride = Unsafe.As<T, StrideNumbers<T>>(ref Unsafe.AsRef(in arguments[0]));
        StrideNumbers<Dual<Dual<T>>> twice = stride.Twice();
        Candidates<T> belt = Candidates<T>.None;
        Candidates<T> most = Candidates<T>.None;
        Candidates<T> least = Candidates<T>.None;
        for (int piece = T.AnyLess(0, stride.Overlap) ? 0 : 1; piece < 3; piece++)
        {
            Scan(in stride, piece, ref belt, ref most, ref least);
        }

        T ratio = stride.TensionRatio;
        T onPull = T.IfLess(belt.FirstOverruns, 0.5, ratio, -1);
        T onPullSecond = T.IfLess(belt.SecondOverruns, 0.5, ratio, -1);
        Found<T> top = Better(in stride, in twice, in belt, onPull, onPullSecond, 1 - ratio);
        results[BeltPiece] = top.Piece;
        results[BeltPlace] = top.Place;
        results[BeltCurvature] = top.Curvature;
        results[BeltOverruns] = T.IfLess(0.5, top.Second, belt.SecondOverruns, belt.FirstOverruns);
        top = Better(in stride, in twice, in most, 1, 1, 0);
        results[MostPiece] = top.Piece;
        results[MostPlace] = top.Place;
        top = Better(in stride, in twice, in least, -1, -1, 0);
        results[LeastPiece] = top.Piece;
        results[LeastPlace] = top.Place;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Scan<T>(
        in StrideNumbers<T> stride,
        int piece,
        ref Candidates<T> belt,
        ref Candidates<T> most,
        ref Candidates<T> least
    )
        where T : struct, IReal<T>
    {
        T demand = -1e300;
        T demandPlace = 0.5;
        T overruns = 0;
        T up = -1e300;
        T upPlace = 0.5;
        T down = -1e300;
        T downPlace = 0.5;
        foreach (double node in Stride.Nodes)
        {
            (T pull, T shared) = Stride.AtPlace<T>(in stride, piece, node);
            T slip = TractionLaws.SlipDemand(pull, shared, stride.TensionRatio);
            T overrun = TractionLaws.OverrunDemand(pull, shared, stride.TensionRatio);
            T now = T.Max(slip, overrun);
            overruns = T.IfLess(demand, now, T.IfLess(slip, overrun, 1, 0), overruns);
            demandPlace = T.IfLess(demand, now, node, demandPlace);
            demand = T.Max(demand, now);
            upPlace = T.IfLess(up, pull, node, upPlace);
            up = T.Max(up, pull);
            downPlace = T.IfLess(down, -pull, node, downPlace);
            down = T.Max(down, -pull);
        }

        // A lane without an overlap has no first piece, whatever its neighbours do.
        T there = piece == 0 ? T.IfLess(0, stride.Overlap, 0, 1e300) : 0;
        belt.Add(piece, demandPlace, demand - there, overruns);
        most.Add(piece, upPlace, up - there, 0);
        least.Add(piece, downPlace, down - there, 0);
    }

    /// <summary>
    /// The top of the best piece, or of the second best where its sample comes within a fifth: a sample may miss its
    /// own top by a tenth.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Found<T> Better<T>(
        in StrideNumbers<T> stride,
        in StrideNumbers<Dual<Dual<T>>> twice,
        in Candidates<T> from,
        T onPull,
        T onPullSecond,
        T onShared
    )
        where T : struct, IReal<T>
    {
        Found<T> one = Refine(in stride, in twice, onPull, onShared, from.FirstPiece, from.FirstPlace);
        T near = from.First - (0.2 * T.Abs(from.First));
        if (!T.AnyLess(near, from.Second))
        {
            return one;
        }

        Found<T> two = Refine(in stride, in twice, onPullSecond, onShared, from.SecondPiece, from.SecondPlace);
        T second = T.IfLess(near, from.Second, T.IfLess(one.Value, two.Value, 1, 0), 0);
        return new(
            T.IfLess(0.5, second, two.Piece, one.Piece),
            T.IfLess(0.5, second, two.Place, one.Place),
            T.IfLess(0.5, second, two.Value, one.Value),
            T.IfLess(0.5, second, two.Curvature, one.Curvature),
            second
        );
    }

    /// <summary>Climbs to the top of onPull * pull + onShared * shared from a place near it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Found<T> Refine<T>(
        in StrideNumbers<T> plain,
        in StrideNumbers<Dual<Dual<T>>> stride,
        T onPull,
        T onShared,
        T piece,
        T place
    )
        where T : struct, IReal<T>
    {
        T moving = 1;
        T curvature = 0;
        for (int i = 0; i < MostSteps; i++)
        {
            Dual<Dual<T>> variable = new(new(place, 1), new(1, 0));
            (Dual<Dual<T>> pull, Dual<Dual<T>> shared) = Stride.AtPlace(
                in stride,
                new Dual<Dual<T>>(new(piece, 0), 0),
                variable
            );
            T slope = (onPull * pull.Value.Slope) + (onShared * shared.Value.Slope);
            T bend = (onPull * pull.Slope.Slope) + (onShared * shared.Slope.Slope);
            T step = T.IfLess(bend, 0, -slope / bend, T.IfLess(0, slope, LongestStep, -LongestStep));
            T nextPiece = piece;
            T nextPlace = place;
            Move(in stride, place + T.Max(-LongestStep, T.Min(LongestStep, step)), ref nextPiece, ref nextPlace);

            // A Newton step below 1e-6 leaves an error near 1e-12. A lane that has settled waits for its neighbours.
            T moved = T.Abs(nextPiece + nextPlace - piece - place);
            piece = T.IfLess(0.5, moving, nextPiece, piece);
            place = T.IfLess(0.5, moving, nextPlace, place);
            curvature = T.IfLess(0.5, moving, bend, curvature);
            moving = T.IfLess(Settled, moved, moving, 0);
            if (!T.AnyLess(0.5, moving))
            {
                break;
            }
        }

        (T atPull, T atShared) = Stride.AtPlace(in plain, piece, place);
        return new(piece, place, (onPull * atPull) + (onShared * atShared), curvature, 0);
    }

    /// <summary>
    /// Goes to the next place, but not past the end of a piece in one step; from the end, on into the neighbour. When
    /// walking, the end of the last piece is the beginning of the first.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Move<T>(in StrideNumbers<Dual<Dual<T>>> stride, T next, ref T piece, ref T place)
        where T : struct, IReal<T>
    {
        T firstPiece = T.IfLess(0, stride.Overlap.Value.Value, 0, 1);
        T wraps = 1 - firstPiece;
        T up = T.IfLess(1 - (2 * Edge), place, T.IfLess(1 - Edge, next, 1, 0), 0);
        T down = T.IfLess(place, 2 * Edge, T.IfLess(next, Edge, 1, 0), 0);
        T above = T.IfLess(piece, 1.5, piece + 1, T.IfLess(0.5, wraps, 0, piece));
        T below = T.IfLess(firstPiece + 0.5, piece, piece - 1, T.IfLess(0.5, wraps, 2, piece));
        T inside = T.Max(Edge, T.Min(1 - Edge, next));
        T movedUp = T.IfLess(0.5, up, above, piece);
        T moved = T.IfLess(0.5, down, below, movedUp);
        T changed = T.Abs(moved - piece);
        place = T.IfLess(0.5, changed, T.IfLess(0.5, up, Edge, 1 - Edge), inside);
        piece = moved;
    }

    private readonly record struct Found<T>(T Piece, T Place, T Value, T Curvature, T Second)
        where T : struct, IReal<T>;

    /// <summary>The best samples of the two best pieces.</summary>
    private struct Candidates<T>
        where T : struct, IReal<T>
    {
        internal T First;
        internal T FirstPiece;
        internal T FirstPlace;
        internal T FirstOverruns;
        internal T Second;
        internal T SecondPiece;
        internal T SecondPlace;
        internal T SecondOverruns;

        internal static Candidates<T> None =>
            new()
            {
                First = -1e300,
                FirstPiece = 1,
                FirstPlace = 0.5,
                FirstOverruns = 0,
                Second = -1e300,
                SecondPiece = 1,
                SecondPlace = 0.5,
                SecondOverruns = 0,
            };

        [MethodImpl(MethodImplOptions.NoInlining)]
        internal void Add(T piece, T place, T value, T overruns)
        {
            T first = First;
            T second = Second;
            SecondPiece = T.IfLess(first, value, FirstPiece, T.IfLess(second, value, piece, SecondPiece));
            SecondPlace = T.IfLess(first, value, FirstPlace, T.IfLess(second, value, place, SecondPlace));
            SecondOverruns = T.IfLess(first, value, FirstOverruns, T.IfLess(second, value, overruns, SecondOverruns));
            Second = T.IfLess(first, value, first, T.Max(second, value));
            FirstPiece = T.IfLess(first, value, piece, FirstPiece);
            FirstPlace = T.IfLess(first, value, place, FirstPlace);
            FirstOverruns = T.IfLess(first, value, overruns, FirstOverruns);
            First = T.Max(first, value);
        }
    }
}
