using TreadmillMech.Service.Estimation;

namespace TreadmillMech.Service.Review;

/// <summary>Readings that contradict each other, beyond those refused one by one.</summary>
internal static class ReadingRules
{
    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        if (
            facts.Lifts.Count > 0
            && facts.Tension.Missing
                is { Why: Reason.ReadingsContradict or Reason.SlackBelt or Reason.NotObservable } missing
        )
        {
            yield return new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Attend,
                Statement = "The lift tests contradict each other: no one tension fits them.",
                Number = missing.Why == Reason.ReadingsContradict ? new("misfit", missing.Available, "sigma") : null,
                Next = new()
                {
                    Action =
                        "Repeat the lift tests: full-width bar at mid-span, rollers free, height from the belt's own line, bar's weight taken off.",
                    Expect = "Lifts at one bolt position that agree on the tension within a tenth.",
                    StopAt = "Do not turn bolts by these readings.",
                    Cautions = [Cautions.StandStill],
                },
            };
        }

        if (
            facts.SlipNow.Is(out SlipLocation? located)
            && facts.SlippedLast == false
            && located.Place != SlipPlace.Nowhere
        )
        {
            yield return new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Note,
                Statement = "The speeds tell of slip, while the last slip test held; one of them is to be read again.",
            };
        }
    }
}
