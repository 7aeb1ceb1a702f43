using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>A top of a load within a step: its piece, its place in the piece, and its height [N].</summary>
/// <param name="Piece">The piece, 0 to 2.</param>
/// <param name="Place">The place in it, 0 to 1.</param>
/// <param name="Low">Lower end of the interval that holds the top; the place itself at the end of a piece.</param>
/// <param name="Height">Its height [N].</param>
internal readonly record struct Top<T>(T Piece, T Place, T Low, T Height)
    where T : struct, IReal<T>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Top<T> Where(T chosen, in Top<T> yes, in Top<T> no) => IfLess(0.5, chosen, in yes, in no);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Top<T> Higher(in Top<T> first, in Top<T> second) =>
        IfLess(first.Height, second.Height, in second, in first);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Top<T> Lower(in Top<T> first, in Top<T> second) =>
        IfLess(first.Height, second.Height, in first, in second);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Top<T> IfLess(T left, T right, in Top<T> yes, in Top<T> no) =>
        new(
            T.IfLess(left, right, yes.Piece, no.Piece),
            T.IfLess(left, right, yes.Place, no.Place),
            T.IfLess(left, right, yes.Low, no.Low),
            T.IfLess(left, right, yes.Height, no.Height)
        );
}
