using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Readings that contradict each other, or that nothing could give. Chances: common practice, no source.</summary>
internal static class ReadingEvidence
{
    private static readonly Chance Contradicted = new(0.01, (Cause.WrongReading, 0.9));

    /// <summary>Of many readings one lies three standard deviations off now and then, and no model is quite right.</summary>
    private static readonly Chance FarOff = new(0.08, (Cause.WrongReading, 0.8));

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        int all = facts.Visit.Events.OfType<Events.Reading>().Count();
        bool contradicted =
            facts.CannotBeRight.Any()
            || facts.Friction.Impossible.Count > 0
            || (facts.Lifts.Count > 0 && facts.Tension.Missing.Why is Reason.ReadingsContradict or Reason.NotInRange)
            || Far(facts).Any()
            || SpeedRules.PulleysContradict(facts)
            || SpeedRules.RollerContradicts(facts)
            || SpeedRules.RunsAhead(facts)
            || SpeedRules.DisplaysContradict(facts)
            || (SpeedRules.DisplayError(facts) is { } error && SpeedRules.IsGross(facts, error));
        if (all > 0)
        {
            yield return Contradicted.Seen(
                contradicted,
                "A reading cannot be right, or contradicts another.",
                "The readings agree with each other.",
                facts.Options.MisfitBeyondDoubt
            );
        }

        if (!contradicted && facts.Joint.Estimate.Is(out VisitEstimate? estimate) && !estimate.Contradicting.IsEmpty)
        {
            yield return FarOff.Seen(
                there: true,
                "A reading lies far from what all others foretell.",
                "No reading lies far from what all others foretell."
            );
        }
    }

    /// <summary>Whether a reading of a kind is among those that contradict others beyond any roughness of the model.</summary>
    internal static bool FarOffAmong<TReading>(VisitFacts facts)
        where TReading : Events.Reading => Far(facts).Any(m => m.Event >= 0 && facts.Visit.Events[m.Event] is TReading);

    private static IEnumerable<ReadingMisfit> Far(VisitFacts facts) =>
        facts.Joint.Estimate.Is(out VisitEstimate? fitted)
            ? fitted.Contradicting.Where(m => Math.Abs(m.Distance) > facts.Options.MisfitBeyondDoubt.Value)
            : [];
}
