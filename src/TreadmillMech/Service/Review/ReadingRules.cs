using System.Globalization;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Readings that contradict each other, beyond those refused one by one.</summary>
internal static class ReadingRules
{
    private const int MostNamed = 3;

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

    private static bool LiftsContradict(VisitFacts facts) => facts.Lifts.Count > 0 && !facts.Tension.Found;

    /// <summary>Whether single readings lie far from what all others foretell.</summary>
    internal static bool Contradict(VisitFacts facts) =>
        facts.Joint.Agreed is null
        && facts.Joint.Estimate.Is(out VisitEstimate? estimate)
        && !estimate.Contradicting.IsEmpty;

    /// <summary>Readings that no one state of the machine explains; null where there are none.</summary>
    private static Finding? Contradicted(VisitFacts facts)
    {
        if (
            !facts.Used<Reading>().Any()
            || facts.Joint.Agreed is not null
            || !facts.Joint.Estimate.Is(out VisitEstimate? estimate)
        )
        {
            return null;
        }

        ReadingMisfit[] worst =
        [
            .. estimate.Contradicting.OrderByDescending(static m => Math.Abs(m.Distance)).Take(MostNamed),
        ];
        return worst.Length == 0
            ? new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Note,
                Statement =
                    "The readings together fit worse than their uncertainties allow; values of single readings are shown.",
                Number = new("probability of the misfit", 100 * estimate.FitProbability, "%"),
                Limit = facts.Options.LeastFitProbability.InPercent(),
            }
            : new()
            {
                Subject = Subject.Readings,
                Severity = Severity.Attend,
                Statement =
                    "Readings contradict each other: no one state of the machine explains all of them. Values of single readings are shown.",
                Number = new("distance from all others", Math.Abs(worst[0].Distance), ""),
                Limit = facts.Options.MisfitOfContradiction,
                For = [.. worst.Select(Told)],
                Next = new()
                {
                    Action = $"Read again: {string.Join("; ", worst.Select(Named).Distinct(StringComparer.Ordinal))}.",
                    Expect =
                        "Readings that agree within their uncertainties; which of them was wrong, they cannot say.",
                    StopAt = "Do not turn, clean or replace by a reading that stands alone.",
                    EffortMinutes = 5,
                    Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
                },
            };
    }

    private static Finding NotUsable(VisitFacts facts) =>
        new()
        {
            Subject = Subject.Readings,
            Severity = Severity.Attend,
            Statement =
                facts.Refused.Count == 1
                    ? "A reading cannot be right or told nothing, and is not used."
                    : "Some readings cannot be right or told nothing, and are not used.",
            AlsoBy = [facts.Options.SameSpeed.InPercent()],
            For =
            [
                .. facts
                    .Refused.Take(MostNamed)
                    .Select(static r =>
                        string.Create(CultureInfo.InvariantCulture, $"Event {r.Event + 1}, {r.Name}: {r.Why}")
                    ),
            ],
            Next = new()
            {
                Action =
                    $"Read again, as said beside it: {string.Join(", ", facts.Refused.Select(static r => r.Name).Distinct(StringComparer.Ordinal))}.",
                Expect = "Readings that can be right, and go with each other.",
                StopAt = "Do not turn, clean or replace by a reading that is not used.",
                EffortMinutes = 5,
                Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser, Cautions.Electrical],
            },
        };

    private static string Named(ReadingMisfit misfit) =>
        misfit.Event < 0
            ? "the tension that the machine was described with"
            : string.Create(CultureInfo.InvariantCulture, $"{misfit.Name} (event {misfit.Event + 1})");

    private static string Told(ReadingMisfit misfit)
    {
        string name = Named(misfit);
        string sentence =
            misfit.Measured.Is(out Figure? measured) && misfit.Expected.Is(out Figure? expected)
                ? $"{name}: {measured} read, {expected} by all together; {new Figure("", Math.Abs(misfit.Distance), "")} standard deviations from what all others foretell."
                : $"{name}: the other outcome was to be expected.";
        return char.ToUpperInvariant(sentence[0]) + sentence[1..];
    }

    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        if (LiftsContradict(facts))
        {
            Shortfall missing = facts.Tension.Missing;
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
                Number = missing.Why == Reason.ReadingsContradict ? new("misfit", missing.Available, "") : null,
                Limit = facts.Options.MisfitOfContradiction,
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

        if (facts.Refused.Count > 0)
        {
            yield return NotUsable(facts);
        }

        if (facts.Friction.Impossible.Count == 0 && !LiftsContradict(facts) && Contradicted(facts) is { } contradicted)
        {
            yield return contradicted;
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

        if (
            facts.Slip.Now.Is(out SlipLocation? located)
            && facts.Slip.SlippedLast == false
            && located.BeyondDoubt(facts.Options)
        )
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
