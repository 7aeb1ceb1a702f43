using TreadmillMech.Service.Estimation.Joint;

namespace TreadmillMech.Service.Review;

/// <summary>Quantities of the joint estimate in words.</summary>
internal static class QuantityWords
{
    internal static string Of(VisitQuantity quantity) =>
        quantity switch
        {
            VisitQuantity.RestTensionAsFound => "the running belt's tension as found",
            VisitQuantity.RestTensionNow => "the running belt's tension now",
            VisitQuantity.RelaxedForcePerWidth => "the running belt's stiffness",
            VisitQuantity.DeckFrictionAsFound => "deck friction as found",
            VisitQuantity.DeckFrictionNow => "deck friction now",
            VisitQuantity.DriveRollerFrictionAsFound => "friction of belt on drive roller as found",
            VisitQuantity.DriveRollerFrictionNow => "friction of belt on drive roller now",
            VisitQuantity.DriveBeltTensionAsFound => "the drive belt's tension as found",
            VisitQuantity.DriveBeltTensionNow => "the drive belt's tension now",
            VisitQuantity.BeltDragAsFound => "drag of the empty belt as found, the motor left out",
            VisitQuantity.BeltDragNow => "drag of the empty belt now, the motor left out",
            VisitQuantity.MotorFrictionTorque => "torque lost inside the motor",
            VisitQuantity.NoLoadPull => "no-load loss",
            VisitQuantity.MotorConstant => "motor constant",
            VisitQuantity.ArmatureResistance => "resistance of the armature",
            VisitQuantity.BeltMargin => "the running belt's margin",
            VisitQuantity.DriveBeltMargin => "the drive belt's margin",
            _ => "another quantity",
        };

    /// <summary>
    /// What the readings do not tell, each thing once: where as found and now are the same, now is enough.
    /// </summary>
    internal static IEnumerable<string> NotTold(VisitFacts facts)
    {
        if (!facts.Joint.Estimate.Is(out VisitEstimate? estimate))
        {
            return ["everything that only all readings together would tell: their fit does not settle"];
        }

        HashSet<VisitQuantity> missing = [.. estimate.NotObserved];
        (VisitQuantity Found, VisitQuantity Now)[] pairs =
        [
            (VisitQuantity.RestTensionAsFound, VisitQuantity.RestTensionNow),
            (VisitQuantity.DeckFrictionAsFound, VisitQuantity.DeckFrictionNow),
            (VisitQuantity.DriveRollerFrictionAsFound, VisitQuantity.DriveRollerFrictionNow),
            (VisitQuantity.DriveBeltTensionAsFound, VisitQuantity.DriveBeltTensionNow),
            (VisitQuantity.BeltDragAsFound, VisitQuantity.BeltDragNow),
        ];
        foreach ((VisitQuantity found, VisitQuantity now) in pairs)
        {
            if (missing.Contains(now))
            {
                missing.Remove(found);
            }
        }

        return missing.Order().Select(Of).Concat(CoastDown(facts));
    }

    /// <summary>A coast-down has nothing to be held against where no earlier visit left one.</summary>
    private static IEnumerable<string> CoastDown(VisitFacts facts) =>
        facts.Used<Events.CoastDownReading>().Any() && facts.Visit.Earlier.All(static e => e.Slowing is null)
            ?
            [
                "the time a coast-down should take: motor and flywheel turn with the belt, and their moment of inertia stands on no plate; today's slowing is the reference of the next visit",
            ]
            : [];
}
