using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Loads on the belt at a phase of the step, with both feet riding back with the belt.</summary>
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
    internal static (T Pull, T SharedPull) AtPlace<T>(in StrideNumbers<T> stride, T piece, T place)
        where T : struct, IReal<T>
    {
        (T from, T to) = Piece(in stride, piece);
        return At(in stride, from + ((to - from) * place));
    }

    /// <summary>Sum of the loads, and sum of the loads times their shares of the loop, at a phase of the step.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static (T Pull, T SharedPull) At<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T>
    {
        T first = T.IfLess(phase, 1, Foot(in stride, phase), 0);
        T pull = stride.Drag + first;
        T shared = (0.5 * stride.Drag) + (first * Share(in stride, phase));
        T before = phase + stride.StepPhase;
        if (T.AnyLess(before, 1))
        {
            T second = T.IfLess(before, 1, Foot(in stride, before), 0);
            pull += second;
            shared += second * Share(in stride, before);
        }

        return (pull, shared);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Foot<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T> => Normal(in stride, phase) + ForeAft(in stride, phase);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Normal<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T> => stride.NormalLoad * GaitLaws.NormalShape(phase, stride.ThirdHarmonic);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T ForeAft<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T> => stride.Braking * GaitLaws.ForeAftShape(phase, stride.BrakingShare);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Share<T>(in StrideNumbers<T> stride, T phase)
        where T : struct, IReal<T> => stride.StrikeShare + (stride.RideShare * phase);
}
