using UnitsNet;

namespace TreadmillMech.Service.Estimation;

/// <summary>What lift tests tell of the running belt.</summary>
public sealed partial record TensionEstimate
{
    /// <summary>Strand tension at rest, at the bolt position before the turns.</summary>
    public required Estimate<Force> RestTension { get; init; }

    /// <summary>Relaxed force per width at 1 %, as estimated; equal to the prior band where the lifts do not tell.</summary>
    public required Estimate<ForcePerLength> RelaxedForcePerWidth { get; init; }

    /// <summary>Covariance of tension and logarithm of stiffness: lifts that leave one open leave both.</summary>
    internal Force Covariance { get; init; }

    /// <summary>
    /// Whether the lifts tell the stiffness: its spread came out at less than half of the prior's. Lifts at one height and
    /// one bolt position never do; two heights, or a full turn between lifts, do; both together do best. Errors of the
    /// heights are taken as independent: a bar that reads the same wrong height each time is not covered.
    /// </summary>
    public required bool StiffnessObserved { get; init; }

    /// <summary>Root mean square of the residuals over their uncertainty; well above 2, the lifts contradict each other.</summary>
    public required double Misfit { get; init; }
}
