using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>Options whose priors say next to nothing, so that the readings alone decide.</summary>
internal static class OpenPriors
{
    private const double Wide = 50;

    /// <summary>All priors open but that of the belt's stiffness, which a lift test has as well.</summary>
    internal static VisitOptions ButStiffness { get; } =
        VisitOptions.Default with
        {
            PriorTensionSpread = Open(VisitOptions.Default.PriorTensionSpread),
            PriorDeckFrictionSpread = Open(VisitOptions.Default.PriorDeckFrictionSpread),
            PriorBeltDragSpread = Open(VisitOptions.Default.PriorBeltDragSpread),
            PriorRollerFrictionSpread = Open(VisitOptions.Default.PriorRollerFrictionSpread),
            PriorDriveBeltTensionSpread = Open(VisitOptions.Default.PriorDriveBeltTensionSpread),
            PriorMotorFrictionSpread = Open(VisitOptions.Default.PriorMotorFrictionSpread),
            PriorMotorConstantSpread = Open(VisitOptions.Default.PriorMotorConstantSpread),
            BrushDropSpread = VisitOptions.Default.BrushDropSpread with { Value = 1000 },
        };

    private static Threshold Open(Threshold spread) => spread with { Value = Wide };
}
