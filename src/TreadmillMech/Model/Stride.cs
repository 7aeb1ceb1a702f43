using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Loads on the belt at a phase of the step, with both feet riding back with the belt.</summary>
[SkipLocalsInit]
internal static class Stride
{
    /// <summary>Pieces of the window.</summary>
    internal const int Pieces = 3;

    /// <summary>Gauss nodes in each.</summary>
    internal const int NodesAPiece = 6;

    /// <summary>Gauss-Legendre nodes on 0 to 1, six of them: squares of the loads integrate to 1e-5.</summary>
    internal static ReadOnlySpan<double> Nodes =>
        [
            0.033765242898423986,
            0.16939530676686775,
            0.38069040695840155,
            0.6193095930415985,
            0.8306046932331322,
            0.966234757101576,
        ];

    /// <summary>Their weights, with sum 1.</summary>
    internal static ReadOnlySpan<double> Weights =>
        [
            0.08566224618958517,
            0.1803807865240693,
            0.23395696728634552,
            0.23395696728634552,
            0.1803807865240693,
            0.08566224618958517,
        ];

    /// <summary>Both ends of a piece; pieces are numbered 0, 1, 2 and may differ from lane to lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T From, T To) Piece<T>(in StrideNumbers<T> stride, T piece)
        where T : struct, IReal<T>
    {
        T from = T.IfLess(piece, 0.5, 0, T.IfLess(piece, 1.5, stride.Overlap, stride.BrakingShare));
        T to = T.IfLess(piece, 0.5, stride.Overlap, T.IfLess(piece, 1.5, stride.BrakingShare, stride.Window));
        return (from, to);
    }

    /// <summary>Loads at a place in a piece.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static (T Pull, T SharedPull) AtPlace<T>(in StrideNumbers<T> stride, in T piece, in T place)
        where T : struct, IReal<T>
    {
        (T from, T to) = Piece(in stride, piece);
        return At(in stride, T.MultiplyAdd(to - from, place, from));
    }

    /// <summary>Sum of the loads, and sum of the loads times their shares of the loop, at a phase of the step.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static (T Pull, T SharedPull) At<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T>
    {
        T first = T.IfLess(phase, 1, Foot(in stride, phase), 0);
        T pull = stride.Drag + first;
        T shared = T.MultiplyAdd(first, Share(in stride, phase), 0.5 * stride.Drag);
        T before = phase + stride.StepPhase;
        if (T.AnyLess(before, 1))
        {
            T second = T.IfLess(before, 1, Foot(in stride, before), 0);
            pull += second;
            shared = T.MultiplyAdd(second, Share(in stride, before), shared);
        }

        return (pull, shared);
    }

    /// <summary>Loads at a place in a piece, and their derivatives by the place [N].</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static NodeLoads<T> WithSlopes<T>(in StrideNumbers<T> stride, in T piece, in T place)
        where T : struct, IReal<T>
    {
        (T from, T to) = Piece(in stride, piece);
        T length = to - from;
        T phase = T.MultiplyAdd(length, place, from);
        (T load, T slope) = SlopeAhead(in stride, in piece, phase);
        T share = Share(in stride, phase);
        NodeLoads<T> loads = new(
            load + stride.Drag,
            length * slope,
            T.MultiplyAdd(load, share, 0.5 * stride.Drag),
            length * T.MultiplyAdd(slope, share, load * stride.RideShare)
        );
        return T.AnyLess(T.IfLess(0, stride.Overlap, piece, 1), 0.5)
            ? WithBehind(in stride, in loads, in piece, phase)
            : loads;
    }

    /// <summary>Derivatives of the target by the place, at the place of a top [N].</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Derivatives<T>(
        in StrideNumbers<T> stride,
        in Top<T> top,
        in Target<T> target,
        out FootJet<T> jet
    )
        where T : struct, IReal<T>
    {
        T piece = top.Piece;
        (T onPull, T onShared) = target;
        (T from, T to) = Piece(in stride, piece);
        T length = to - from;
        T phase = T.MultiplyAdd(length, top.Place, from);
        T rides = onShared * stride.RideShare;
        FootJet<T> ahead = JetAhead(in stride, in top, phase);
        FootJet<T> sum = Weighed(in ahead, T.MultiplyAdd(onShared, Share(in stride, phase), onPull), rides);
        if (T.AnyLess(T.IfLess(0, stride.Overlap, piece, 1), 0.5))
        {
            T weight = T.MultiplyAdd(onShared, Share(in stride, phase + stride.StepPhase), onPull);
            FootJet<T> behind = JetBehind(in stride, phase);
            behind = Weighed(in behind, weight, rides);
            sum.F0 += T.IfLess(piece, 0.5, behind.F0, 0);
            sum.F1 += T.IfLess(piece, 0.5, behind.F1, 0);
            sum.F2 += T.IfLess(piece, 0.5, behind.F2, 0);
            sum.F3 += T.IfLess(piece, 0.5, behind.F3, 0);
            sum.F4 += T.IfLess(piece, 0.5, behind.F4, 0);
        }

        T square = length * length;
        jet.F0 = sum.F0 + (stride.Drag * T.MultiplyAdd(onShared, 0.5, onPull));
        jet.F1 = sum.F1 * length;
        jet.F2 = sum.F2 * square;
        jet.F3 = sum.F3 * (square * length);
        jet.F4 = sum.F4 * (square * square);
    }

    /// <summary>Derivatives of a load times its weight, which is linear in the phase.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static FootJet<T> Weighed<T>(in FootJet<T> load, T weight, T slope)
        where T : struct, IReal<T>
    {
        FootJet<T> jet;
        jet.F0 = load.F0 * weight;
        jet.F1 = T.MultiplyAdd(load.F1, weight, load.F0 * slope);
        jet.F2 = T.MultiplyAdd(load.F2, weight, 2 * load.F1 * slope);
        jet.F3 = T.MultiplyAdd(load.F3, weight, 3 * load.F2 * slope);
        jet.F4 = T.MultiplyAdd(load.F4, weight, 4 * load.F3 * slope);
        return jet;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static FootJet<T> JetAhead<T>(in StrideNumbers<T> s, in Top<T> top, T phase)
        where T : struct, IReal<T>
    {
        T piece = top.Piece;
        T rate = T.IfLess(piece, 1.5, s.BrakingRate, s.PushRate);
        T since = T.IfLess(piece, 1.5, phase, phase - s.BrakingShare);
        T peak = T.IfLess(piece, 1.5, s.Braking, s.Push);
        return StanceLaws.Jet(s.NormalLoad, s.ThirdHarmonic, peak, rate, T.SinCosPi(phase), T.SinCosPi(rate * since));
    }

    // Counted back from its toe-off the foot behind has the sines of a foot that lands.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static FootJet<T> JetBehind<T>(in StrideNumbers<T> s, T phase)
        where T : struct, IReal<T>
    {
        T left = s.Overlap - phase;
        FootJet<T> jet = StanceLaws.Jet(
            s.NormalLoad,
            s.ThirdHarmonic,
            s.Push,
            s.PushRate,
            T.SinCosPi(left),
            T.SinCosPi(s.PushRate * left)
        );
        jet.F1 = -jet.F1;
        jet.F3 = -jet.F3;
        return jet;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (T Load, T Slope) SlopeAhead<T>(in StrideNumbers<T> s, in T piece, T phase)
        where T : struct, IReal<T>
    {
        T rate = T.IfLess(piece, 1.5, s.BrakingRate, s.PushRate);
        T since = T.IfLess(piece, 1.5, phase, phase - s.BrakingShare);
        T peak = T.IfLess(piece, 1.5, s.Braking, s.Push);
        return StanceLaws.Foot(s.NormalLoad, s.ThirdHarmonic, peak, rate, T.SinCosPi(phase), T.SinCosPi(rate * since));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static NodeLoads<T> WithBehind<T>(in StrideNumbers<T> s, in NodeLoads<T> ahead, in T piece, T phase)
        where T : struct, IReal<T>
    {
        T left = s.Overlap - phase;
        (T load, T slope) = StanceLaws.Foot(
            s.NormalLoad,
            s.ThirdHarmonic,
            s.Push,
            s.PushRate,
            T.SinCosPi(left),
            T.SinCosPi(s.PushRate * left)
        );
        T share = Share(in s, phase + s.StepPhase);
        slope = T.IfLess(piece, 0.5, -(s.Overlap * slope), 0);
        load = T.IfLess(piece, 0.5, load, 0);
        return new(
            ahead.Pull + load,
            ahead.PullSlope + slope,
            T.MultiplyAdd(load, share, ahead.Shared),
            ahead.SharedSlope + T.MultiplyAdd(slope, share, s.Overlap * load * s.RideShare)
        );
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Foot<T>(in StrideNumbers<T> s, T phase)
        where T : struct, IReal<T>
    {
        T rate = T.IfLess(phase, s.BrakingShare, s.BrakingRate, s.PushRate);
        T since = T.IfLess(phase, s.BrakingShare, phase, phase - s.BrakingShare);
        T peak = T.IfLess(phase, s.BrakingShare, s.Braking, s.Push);
        return StanceLaws
            .Foot(s.NormalLoad, s.ThirdHarmonic, peak, rate, T.SinCosPi(phase), T.SinCosPi(rate * since))
            .Load;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Share<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T> => T.MultiplyAdd(stride.RideShare, phase, stride.StrikeShare);
}
