using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Readings that contradict each other, beyond those refused one by one.</summary>
internal static class ReadingRules
{
    private static Finding Impossible(VisitFacts facts, FrictionFact fact) =>
        new()
        {
            Subject = Subject.Readings,
            Severity = Severity.Attend,
            Statement = $"The deck friction read from {fact.Method} is one that no deck has; it is not used.",
            Number = fact.Figure,
            Limit =
                fact.Friction.Value > Deck.MostFriction
                    ? new(
                        "largest deck friction",
                        Deck.MostFriction,
                        "",
                        "range of a deck here, far beyond dry and worn"
                    )
                    : new("least deck friction", Deck.LeastFriction, "", "range of a deck here, far below waxed"),
            Next = new()
            {
                Action = $"Repeat the reading of {fact.Method}, unloaded and loaded, hands off the rails.",
                Expect = $"A deck friction between that of a waxed deck and {facts.Options.HighFriction}.",
                StopAt = "Do not clean, lubricate or replace by this reading.",
                EffortMinutes = 5,
                Cautions = [Cautions.Clear, Cautions.Key, Cautions.TestUser, Cautions.Electrical],
            },
        };

    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        if (facts.Lifts.Count > 0 && facts.Tension.Missing is { Why: not Reason.Found } missing)
        {
            yield return new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Attend,
                Statement = missing.Why switch
                {
                    Reason.SlackBelt =>
                        "By the lift tests the belt is slack, or they were misread: the bar carries too little.",
                    Reason.NotInRange =>
                        "The lift tests tell of a belt that no machine has: height, force or rollers were misread.",
                    _ => "The lift tests contradict each other: no one tension fits them.",
                },
                Number = missing.Why == Reason.ReadingsContradict ? new("misfit", missing.Available, "sigma") : null,
                Next = new()
                {
                    Action =
                        "Repeat the lift tests: full-width bar at mid-span, rollers free, height from the belt's own line, bar's weight taken off.",
                    Expect = "Lifts at one bolt position that agree on the tension within a tenth.",
                    StopAt = "Do not turn bolts by these readings.",
                    EffortMinutes = 4,
                    Cautions = [Cautions.StandStill],
                },
            };
        }

        foreach (FrictionFact impossible in facts.Friction.Impossible)
        {
            yield return Impossible(facts, impossible);
        }

        if (!facts.Used<Reading>().Any())
        {
            yield return new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Note,
                Statement =
                    facts.Refused.Count == 0
                        ? "Nothing was read at this visit: the sheet tells nothing of the machine."
                        : "Nothing that was read could be used: the sheet tells nothing of the machine.",
            };
        }

        if (facts.SlipNow.Is(out SlipLocation? located) && facts.SlippedLast == false && VisitFacts.Shows(located))
        {
            yield return new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Attend,
                Statement = "The speeds tell of slip, while the last slip test held; one of them is to be read again.",
                Limit = facts.Options.Slip.InPercent(),
                Next = new()
                {
                    Action =
                        $"Read the speeds again, unloaded and under {facts.Say.TestDemand}, and repeat the slip test.",
                    Expect = "Speeds and slip test that agree.",
                    StopAt = "Stop if the belt gives way: then it slips, whatever the speeds say.",
                    EffortMinutes = 6,
                    Cautions = [Cautions.Clear, Cautions.Key, Cautions.TestUser],
                },
            };
        }
    }
}
