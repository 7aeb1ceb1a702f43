using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Readings that contradict each other, or that nothing could give. Chances: common practice, no source.</summary>
internal static class ReadingEvidence
{
    private static readonly Chance Contradicted = new(0.01, (Cause.WrongReading, 0.9));

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        int all = facts.Visit.Events.OfType<Events.Reading>().Count();
        bool contradicted =
            facts.Refused.Count > 0
            || facts.Friction.Impossible.Count > 0
            || (facts.Lifts.Count > 0 && facts.Tension.Missing.Why is Reason.ReadingsContradict or Reason.NotInRange)
            || SpeedRules.PulleysContradict(facts);
        if (all > 0)
        {
            yield return Contradicted.Seen(
                contradicted,
                "A reading cannot be right, or contradicts another.",
                "The readings agree with each other."
            );
        }
    }
}
