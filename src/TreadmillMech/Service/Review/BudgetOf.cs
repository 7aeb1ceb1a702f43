using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>How far the running belt may still be tightened at this visit: the first of all limits that are known.</summary>
internal static class BudgetOf
{
    internal static TensionBudget Facts(VisitFacts facts)
    {
        Threshold most = facts.Options.MostTurns;
        double? thread = facts.Bolts.ThreadTurnsAsFound is { } found
            ? Math.Max(0, found - Math.Max(facts.Bolts.LeftTurns, facts.Bolts.RightTurns))
            : null;
        double? gain = Gain(facts);
        double hard = facts.Bolts.TurnHard ? 0 : double.PositiveInfinity;
        (double Turns, TurnLimit Limit, string By)[] limits =
        [
            (most.Value - facts.Bolts.Turns, TurnLimit.TurnsOfAVisit, most.Name),
            (thread ?? double.PositiveInfinity, TurnLimit.Thread, "the thread left on the bolts"),
            (ByStrain(facts, gain) ?? double.PositiveInfinity, TurnLimit.Elongation, facts.Options.MostStrain.Name),
            (
                ByReference(facts, gain) ?? double.PositiveInfinity,
                TurnLimit.EarlierTension,
                facts.Options.MostOverReference.Name
            ),
            (hard, TurnLimit.HardBolt, "a bolt that turns hard"),
        ];

        // Of several that are used up, the one that is mended first: a hard bolt hides all others, but one whose thread was
        // measured to its end is hard for that.
        double left = Math.Max(0, limits.Min(l => l.Turns));
        (_, TurnLimit limit, string by) = limits
            .OrderByDescending(l => facts.Bolts.ThreadAtItsEnd && facts.Bolts.TurnHard && l.Limit == TurnLimit.Thread)
            .ThenBy(l => Math.Max(0, l.Turns))
            .ThenByDescending(l => l.Limit)
            .First();
        return new()
        {
            TurnsThisVisit = facts.Bolts.Turns,
            EarlierTurns = facts.Bolts.TurnsBefore,
            MostTurns = most,
            TurnsLeft = left,
            ThreadTurnsLeft = thread,
            StrainAdded = new(
                "elongation added",
                100 * QuarterTurns.Strain(facts.Visit.Machine, facts.Bolts.Turns),
                "%"
            ),
            Tension = facts.TensionNow,
            Limit = limit,
            LimitedBy = by,
        };
    }

    /// <summary>Turns up to the upper edge of the strain band; null where tension or stiffness is not known.</summary>
    private static double? ByStrain(VisitFacts facts, double? gain)
    {
        if (facts.Machine.Belt.RelaxedForcePerWidth is null || !facts.TensionNow.Is(out Figure? tension))
        {
            return null;
        }

        double stiffness = new LoopGeometry(facts.Machine).Numbers.BeltStiffness.Value;
        double strain = tension.Value / stiffness;
        return (facts.Options.MostStrain.Value - strain) * stiffness / gain;
    }

    /// <summary>Turns up to the tension left at the earlier visit, and some more; null where either is not known.</summary>
    private static double? ByReference(VisitFacts facts, double? gain) =>
        facts.Visit.Earlier.LastOrDefault(static e => e.RestTension is not null)?.RestTension is { } reference
        && facts.TensionNow.Is(out Figure? tension)
            ? ((facts.Options.MostOverReference.Value * Si.Force.ToSi(reference)) - tension.Value) / gain
            : null;

    /// <summary>Tension that one turn of the bolts adds [N]; null where it is not known.</summary>
    private static double? Gain(VisitFacts facts) =>
        Tension(facts, 1) is { } more && Tension(facts, 0) is { } now && more > now ? more - now : null;

    private static double? Tension(VisitFacts facts, double turns) =>
        facts
            .MachineAt(facts.Bolts.LeftTurns + turns, facts.Bolts.RightTurns + turns)
            ?.At(facts.Visit.TestDemand)
            .RestTension.Is(out Force tension) == true
            ? Si.Force.ToSi(tension)
            : null;
}
