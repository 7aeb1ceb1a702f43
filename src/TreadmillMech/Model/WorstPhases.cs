using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>
/// Search for the phases of a step at which the running belt's grip is used most, the pull is largest, and the pull is
/// least. The loads at the Gauss nodes of each piece tell the piece; the polynomial through them tells the place to
/// about a hundredth; a safeguarded secant search on the exact slope tells it to about 1e-12.
/// </summary>
/// <remarks>
/// A slope costs a third more than a load, a second derivative four times as much: hence the secant. Where two pieces
/// come near each other, all are climbed. A case that has settled stays where it is while others beside it go on, so
/// that its answer does not depend on them.
/// </remarks>
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

    private const int MostSteps = 16;
    private const int PolynomialSteps = 3;
    private const double Settled = 1e-13;
    private const double Edge = 1e-12;
    private const double LongestStep = 0.35;

    // Most that a top stands above the best node, over the range of all nodes.
    private const double Rise = 0.2;

    // Most that a top stands above that of the polynomial, over the same range.
    private const double Doubt = 0.02;

    // Distances of the nodes from the middle of a piece, in halves of its length.
    private const double Inner = 0.238619186083197;
    private const double Middle = 0.6612093864662645;
    private const double Outer = 0.932469514203152;

    public static void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IReal<T>
    {
        StepNumbers<T> step = Unsafe.As<T, StepNumbers<T>>(ref MemoryMarshal.GetReference(arguments));
        StrideNumbers<Dual<T>> stride = step.Stride.Once();

        // The demand on the grip is a sum of pull and shared pull, either way: its factors are the demands of each alone.
        T ratio = step.Stride.TensionRatio;
        Top<T> slip = Find(
            in step,
            in stride,
            TractionLaws.SlipDemand(1, 0, ratio),
            TractionLaws.SlipDemand(0, 1, ratio),
            double.NegativeInfinity
        );
        Top<T> overrun = Find(
            in step,
            in stride,
            TractionLaws.OverrunDemand(1, 0, ratio),
            TractionLaws.OverrunDemand(0, 1, ratio),
            slip.Height
        );
        results[BeltOverruns] = T.IfLess(slip.Height, overrun.Height, 1, 0);
        Top<T> belt = Top<T>.Higher(in slip, in overrun);
        (results[BeltPiece], results[BeltPlace]) = (belt.Piece, belt.Place);
        T onPull = T.IfLess(results[BeltOverruns], 0.5, ratio, -1);
        results[BeltCurvature] = Curvature(step.Stride.Twice(), in belt, onPull, 1 - ratio);
        Top<T> most = Find(in step, in stride, 1, 0, double.NegativeInfinity);
        (results[MostPiece], results[MostPlace]) = (most.Piece, most.Place);
        Top<T> least = Find(in step, in stride, -1, 0, double.NegativeInfinity);
        (results[LeastPiece], results[LeastPlace]) = (least.Piece, least.Place);
    }

    /// <summary>Top of onPull * pull + onShared * shared; the best node where no top can come above the floor.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Top<T> Find<T>(
        in StepNumbers<T> step,
        in StrideNumbers<Dual<T>> stride,
        T onPull,
        T onShared,
        T floor
    )
        where T : struct, IReal<T>
    {
        Top<T> best = new(1, 0, -1e300);
        Top<T> second = best;
        Top<T> third = best;
        T lowest = 1e300;
        for (int piece = step.FirstPiece; piece < Stride.Pieces; piece++)
        {
            // A lane without an overlap has no first piece, whatever its neighbours do.
            T there = piece == 0 ? T.IfLess(0, step.Stride.Overlap, 0, 1e300) : 0;
            Top<T> here = new(piece, 0, -1e300);
            for (int i = 0; i < Stride.NodesAPiece; i++)
            {
                int node = (piece * Stride.NodesAPiece) + i;
                T height = (onPull * step.Pull[node]) + (onShared * step.SharedPull[node]);
                here = new(
                    piece,
                    T.IfLess(here.Height, height, Stride.Nodes[i], here.Place),
                    T.Max(here.Height, height)
                );
                lowest = T.Min(lowest, height + there);
            }

            here = new(here.Piece, here.Place, here.Height - there);
            Top<T> beaten = Top<T>.Lower(in best, in here);
            best = Top<T>.Higher(in best, in here);
            third = Top<T>.Higher(in third, Top<T>.Lower(in second, in beaten));
            second = Top<T>.Higher(in second, in beaten);
        }

        T range = best.Height - lowest;
        T worth = T.IfLess(floor, best.Height + (Rise * range), 1, 0);
        if (T.AnyLess(0.5, worth))
        {
            Top<T> summit = Approach(in step, onPull, onShared, in best, out T curvature);
            Climb(in stride, onPull, onShared, curvature, worth, ref summit);
            best = Top<T>.Where(worth, in summit, in best);
        }

        // The climbs from two neighbours may lead to one top, with the highest across a kink in the third.
        Rival(in step, in stride, onPull, onShared, in second, worth, range, ref best);
        Rival(in step, in stride, onPull, onShared, in third, worth, range, ref best);
        return best;
    }

    /// <summary>Climbs from a node beside the best one, where its top may stand above the best found.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Rival<T>(
        in StepNumbers<T> step,
        in StrideNumbers<Dual<T>> stride,
        T onPull,
        T onShared,
        in Top<T> node,
        T worth,
        T range,
        ref Top<T> best
    )
        where T : struct, IReal<T>
    {
        T near = T.IfLess(best.Height, node.Height + (Rise * range), worth, 0);
        if (!T.AnyLess(0.5, near))
        {
            return;
        }

        Top<T> summit = Approach(in step, onPull, onShared, in node, out T curvature);
        near = T.IfLess(best.Height, summit.Height + (Doubt * range), near, 0);
        if (T.AnyLess(0.5, near))
        {
            Climb(in stride, onPull, onShared, curvature, near, ref summit);
            summit = Top<T>.Where(near, in summit, in best);
            best = Top<T>.Higher(in best, in summit);
        }
    }

    /// <summary>Climbs to the top of onPull * pull + onShared * shared from a place near it.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Climb<T>(
        in StrideNumbers<Dual<T>> stride,
        T onPull,
        T onShared,
        T curvature,
        T climbing,
        ref Top<T> top
    )
        where T : struct, IReal<T>
    {
        (T piece, T place, T height) = top;
        T lastMove = 0.01;
        T origin = -1;
        T pieceBefore = -1;
        T placeBefore = 0;
        T slopeBefore = 0;
        for (int i = 0; i < MostSteps && T.AnyLess(0.5, climbing); i++)
        {
            (Dual<T> pull, Dual<T> shared) = Stride.AtPlace(in stride, new(piece, 0), new(place, 1));
            height = T.IfLess(0.5, climbing, (onPull * pull.Value) + (onShared * shared.Value), height);
            T slope = (onPull * pull.Slope) + (onShared * shared.Slope);
            T secant = (slope - slopeBefore) / (place - placeBefore);
            curvature = T.IfLess(T.Abs(piece - pieceBefore), 0.5, secant, curvature);
            (pieceBefore, placeBefore, slopeBefore) = (piece, place, slope);
            Move(in stride, place + Step(slope, curvature), climbing, ref piece, ref place);

            // Across a kink the way up leads back and forth over the edge: there is the top. Elsewhere a secant step
            // leaves an error near the product of the last two.
            T here = (2 * piece) + place;
            T before = (2 * pieceBefore) + placeBefore;
            T move = T.Abs(here - before);
            T away = T.Abs(here - origin);
            climbing = T.IfLess(Settled, T.Min(move * lastMove, away), climbing, 0);
            lastMove = move;
            origin = before;
        }

        top = new(piece, place, height);
    }

    /// <summary>Exact second derivative of onPull * pull + onShared * shared by the place.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Curvature<T>(in StrideNumbers<Dual<Dual<T>>> stride, in Top<T> top, T onPull, T onShared)
        where T : struct, IReal<T>
    {
        (Dual<Dual<T>> pull, Dual<Dual<T>> shared) = Stride.AtPlace(
            in stride,
            new Dual<Dual<T>>(new(top.Piece, 0), 0),
            new Dual<Dual<T>>(new(top.Place, 1), new(1, 0))
        );
        return (onPull * pull.Slope.Slope) + (onShared * shared.Slope.Slope);
    }

    /// <summary>Polynomial through the nodes of a piece, in t = -1 to 1.</summary>
    /// <remarks>The nodes lie in pairs: the even and the odd part are each a parabola in t squared.</remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Fit<T>(in StepNumbers<T> step, T onPull, T onShared, T piece, out Quintic<T> through)
        where T : struct, IReal<T>
    {
        (T outerEven, T outerOdd) = Pair(in step, onPull, onShared, piece, 0);
        (T middleEven, T middleOdd) = Pair(in step, onPull, onShared, piece, 1);
        (T innerEven, T innerOdd) = Pair(in step, onPull, onShared, piece, 2);
        (through.C0, through.C2, through.C4) = Parabola(innerEven, middleEven, outerEven);
        (through.C1, through.C3, through.C5) = Parabola(
            innerOdd * (1 / Inner),
            middleOdd * (1 / Middle),
            outerOdd * (1 / Outer)
        );
    }

    /// <summary>From the best node to the top of the polynomial, with its curvature there.</summary>
    private static Top<T> Approach<T>(in StepNumbers<T> step, T onPull, T onShared, in Top<T> node, out T curvature)
        where T : struct, IReal<T>
    {
        Fit(in step, onPull, onShared, node.Piece, out Quintic<T> through);
        T place = node.Place;
        for (int i = 0; i < PolynomialSteps; i++)
        {
            place = Ascend(in through, place);
        }

        return new(node.Piece, place, Height(in through, place, out curvature));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Ascend<T>(in Quintic<T> p, T place)
        where T : struct, IReal<T>
    {
        T t = (2 * place) - 1;
        T slope = p.C1 + (t * ((2 * p.C2) + (t * ((3 * p.C3) + (t * ((4 * p.C4) + (t * (5 * p.C5))))))));
        return T.Max(Edge, T.Min(1 - Edge, place + Step(2 * slope, Curvature(in p, t))));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Height<T>(in Quintic<T> p, T place, out T curvature)
        where T : struct, IReal<T>
    {
        T t = (2 * place) - 1;
        curvature = Curvature(in p, t);
        return p.C0 + (t * (p.C1 + (t * (p.C2 + (t * (p.C3 + (t * (p.C4 + (t * p.C5)))))))));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Curvature<T>(in Quintic<T> p, T t)
        where T : struct, IReal<T> => 4 * ((2 * p.C2) + (t * ((6 * p.C3) + (t * ((12 * p.C4) + (t * (20 * p.C5)))))));

    /// <summary>Even and odd part of the target at a pair of nodes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T Even, T Odd) Pair<T>(in StepNumbers<T> step, T onPull, T onShared, T piece, int node)
        where T : struct, IReal<T>
    {
        int mirrored = Stride.NodesAPiece - 1 - node;
        T left = (onPull * step.Pull.InPiece(piece, node)) + (onShared * step.SharedPull.InPiece(piece, node));
        T right = (onPull * step.Pull.InPiece(piece, mirrored)) + (onShared * step.SharedPull.InPiece(piece, mirrored));
        return (0.5 * (right + left), 0.5 * (right - left));
    }

    /// <summary>Coefficients of the parabola in t squared through the values at the three distances of the nodes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T Constant, T Linear, T Square) Parabola<T>(T inner, T middle, T outer)
        where T : struct, IReal<T>
    {
        const double I = Inner * Inner;
        const double M = Middle * Middle;
        const double O = Outer * Outer;
        T first = (middle - inner) * (1 / (M - I));
        T square = (((outer - middle) * (1 / (O - M))) - first) * (1 / (O - I));
        T linear = first - ((I + M) * square);
        return (inner - (I * (linear + (I * square))), linear, square);
    }

    /// <summary>Newton's step to where the slope vanishes; a long one uphill where the curve bends the wrong way.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Step<T>(T slope, T curvature)
        where T : struct, IReal<T>
    {
        T step = T.IfLess(curvature, 0, -slope / curvature, T.IfLess(0, slope, LongestStep, -LongestStep));
        return T.Max(-LongestStep, T.Min(LongestStep, step));
    }

    /// <summary>
    /// Goes to the next place, but not past the end of a piece in one step; from the end, on into the neighbour. When
    /// walking, the end of the last piece is the beginning of the first.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Move<T>(in StrideNumbers<Dual<T>> stride, T next, T climbing, ref T piece, ref T place)
        where T : struct, IReal<T>
    {
        T firstPiece = T.IfLess(0, stride.Overlap.Value, 0, 1);
        T wraps = 1 - firstPiece;
        T up = T.IfLess(1 - (2 * Edge), place, T.IfLess(1 - Edge, next, 1, 0), 0);
        T down = T.IfLess(place, 2 * Edge, T.IfLess(next, Edge, 1, 0), 0);
        T above = T.IfLess(piece, 1.5, piece + 1, T.IfLess(0.5, wraps, 0, piece));
        T below = T.IfLess(firstPiece + 0.5, piece, piece - 1, T.IfLess(0.5, wraps, 2, piece));
        T inside = T.Max(Edge, T.Min(1 - Edge, next));
        T movedUp = T.IfLess(0.5, up, above, piece);
        T moved = T.IfLess(0.5, down, below, movedUp);
        T changed = T.Abs(moved - piece);
        T there = T.IfLess(0.5, changed, T.IfLess(0.5, up, Edge, 1 - Edge), inside);
        place = T.IfLess(0.5, climbing, there, place);
        piece = T.IfLess(0.5, climbing, moved, piece);
    }

    /// <summary>Coefficients of a polynomial of the fifth degree.</summary>
    private struct Quintic<T>
        where T : struct, IReal<T>
    {
        internal T C0;
        internal T C1;
        internal T C2;
        internal T C3;
        internal T C4;
        internal T C5;
    }

    /// <summary>A place and the height there.</summary>
    private readonly record struct Top<T>(T Piece, T Place, T Height)
        where T : struct, IReal<T>
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal static Top<T> Where(T chosen, in Top<T> yes, in Top<T> no) =>
            new(
                T.IfLess(0.5, chosen, yes.Piece, no.Piece),
                T.IfLess(0.5, chosen, yes.Place, no.Place),
                T.IfLess(0.5, chosen, yes.Height, no.Height)
            );

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal static Top<T> Higher(in Top<T> first, in Top<T> second) =>
            new(
                T.IfLess(first.Height, second.Height, second.Piece, first.Piece),
                T.IfLess(first.Height, second.Height, second.Place, first.Place),
                T.Max(first.Height, second.Height)
            );

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal static Top<T> Lower(in Top<T> first, in Top<T> second) =>
            new(
                T.IfLess(first.Height, second.Height, first.Piece, second.Piece),
                T.IfLess(first.Height, second.Height, first.Place, second.Place),
                T.Min(first.Height, second.Height)
            );
    }
}
