using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>
/// The loads of one step and their values at the Gauss nodes of each piece: the means are summed over these values, and
/// the search for the worst phases starts from them, so that they are computed once.
/// </summary>
[StructLayout(LayoutKind.Sequential)]
internal struct StepNumbers<T>
    where T : struct, IReal<T>
{
    internal StrideNumbers<T> Stride;
    internal AtNodes Pull;
    internal AtNodes SharedPull;

    /// <summary>First piece that has a length in any of the cases: none is before the braking foot when running.</summary>
    internal readonly int FirstPiece => T.AnyLess(0, Stride.Overlap) ? 0 : 1;

    /// <summary>One value a node, piece after piece.</summary>
    [InlineArray(Model.Stride.Pieces * Model.Stride.NodesAPiece)]
    internal struct AtNodes
    {
        private T first;

        /// <summary>Value at a node of a piece that may differ from lane to lane.</summary>
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal readonly T InPiece(T piece, int node) =>
            T.IfLess(
                piece,
                0.5,
                this[node],
                T.IfLess(piece, 1.5, this[Model.Stride.NodesAPiece + node], this[(2 * Model.Stride.NodesAPiece) + node])
            );
    }
}
