using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Sum of the loads and of the loads times their shares at a phase, with their slopes [N].</summary>
internal readonly record struct NodeLoads<T>(T Pull, T PullSlope, T Shared, T SharedSlope)
    where T : struct, IReal<T>;
