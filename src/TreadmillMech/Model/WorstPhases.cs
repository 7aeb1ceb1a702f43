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
    internal const int Results = 7;
    internal const int BeltPiece = 0;
    internal const int BeltPlace = 1;
    internal const int BeltOverruns = 2;
    internal const int MostPiece = 3;
    internal const int MostPlace = 4;
    internal const int LeastPiece = 5;
    internal const int LeastPlace = 6;

    private const int MostSteps = 8;
    private const double Settled = 1e-6;
    private const double Edge = 1e-12;
    private const double LongestStep = 0.35;

    public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IReal<T>
    {
        StrideNumbers<T> stride = Unsafe.As<T, StrideNumbers<T>>(ref Unsafe.AsRef(in arguments[0]));
        Scan(in stride, results);
        StrideNumbers<Dual<Dual<T>>> twice = stride.Twice();
        T ratio = stride.TensionRatio;
        T onPull = T.IfLess(results[BeltOverruns], 0.5, ratio, -1);
        Refine(in twice, onPull, 1 - ratio, ref results[BeltPiece], ref results[BeltPlace]);
        Refine(in twice, 1, 0, ref results[MostPiece], ref results[MostPlace]);
        Refine(in twice, -1, 0, ref results[LeastPiece], ref results[LeastPlace]);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Scan<T>(in StrideNumbers<T> stride, Span<T> results)
        where T : struct, IReal<T>
    {
        T worst = -1e300;
        T most = -1e300;
        T least = 1e300;
        for (int piece = T.AnyLess(0, stride.Overlap) ? 0 : 1; piece < 3; piece++)
        {
            foreach (double node in Stride.Nodes)
            {
                (T pull, T shared) = Stride.AtPlace<T>(in stride, piece, node);
                T slip = TractionLaws.SlipDemand(pull, shared, stride.TensionRatio);
                T overrun = TractionLaws.OverrunDemand(pull, shared, stride.TensionRatio);
                T demand = T.Max(slip, overrun);
                results[BeltPiece] = T.IfLess(worst, demand, piece, results[BeltPiece]);
                results[BeltPlace] = T.IfLess(worst, demand, node, results[BeltPlace]);
                results[BeltOverruns] = T.IfLess(worst, demand, T.IfLess(slip, overrun, 1, 0), results[BeltOverruns]);
                worst = T.Max(worst, demand);
                results[MostPiece] = T.IfLess(most, pull, piece, results[MostPiece]);
                results[MostPlace] = T.IfLess(most, pull, node, results[MostPlace]);
                most = T.Max(most, pull);
                results[LeastPiece] = T.IfLess(pull, least, piece, results[LeastPiece]);
                results[LeastPlace] = T.IfLess(pull, least, node, results[LeastPlace]);
                least = T.Min(least, pull);
            }
        }
    }

    /// <summary>Climbs to the top of onPull * pull + onShared * shared from a place near it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Refine<T>(
        in StrideNumbers<Dual<Dual<T>>> stride,
        T onPull,
        T onShared,
        ref T piece,
        ref T place
    )
        where T : struct, IReal<T>
    {
        for (int i = 0; i < MostSteps; i++)
        {
            Dual<Dual<T>> variable = new(new(place, 1), new(1, 0));
            (Dual<Dual<T>> pull, Dual<Dual<T>> shared) = Stride.AtPlace(
                in stride,
                new Dual<Dual<T>>(new(piece, 0), 0),
                variable
            );
            T slope = (onPull * pull.Value.Slope) + (onShared * shared.Value.Slope);
            T curvature = (onPull * pull.Slope.Slope) + (onShared * shared.Slope.Slope);
            T step = T.IfLess(curvature, 0, -slope / curvature, T.IfLess(0, slope, LongestStep, -LongestStep));
            T next = place + T.Max(-LongestStep, T.Min(LongestStep, step));
            T before = piece + place;
            Move(in stride, next, ref piece, ref place);

            // A Newton step below 1e-6 leaves an error near 1e-12.
            if (!T.AnyLess(Settled, T.Abs(piece + place - before)))
            {
                break;
            }
        }
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
}
