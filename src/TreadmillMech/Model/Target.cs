using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>A load whose top is looked for: a sum of pull and shared pull.</summary>
/// <param name="OnPull">Factor of the pull [1].</param>
/// <param name="OnShared">Factor of the pull times its share [1].</param>
internal readonly record struct Target<T>(T OnPull, T OnShared)
    where T : struct, IReal<T>
{
    /// <summary>Height of the target at a node, and its slope for one interval [N].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal (T Height, T Rise) Of(in NodeLoads<T> node) =>
        (
            T.MultiplyAdd(OnShared, node.Shared, OnPull * node.Pull),
            T.MultiplyAdd(OnShared, node.SharedSlope, OnPull * node.PullSlope)
        );
}
