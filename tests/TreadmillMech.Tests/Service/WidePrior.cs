using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service;

/// <summary>Options that leave the word to the readings.</summary>
internal static class WidePrior
{
    /// <summary>A prior of the stiffness so wide that it says nothing.</summary>
    internal static VisitOptions None { get; } =
        VisitOptions.Default with
        {
            PriorBeltStiffnessSpread = new("spread of the prior stiffness", 50, "", "none, for a test"),
        };
}
