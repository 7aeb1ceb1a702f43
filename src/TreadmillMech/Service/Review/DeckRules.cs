using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Deck friction: clean and lubricate, or belt and deck worn.</summary>
internal static class DeckRules
{
    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        if (!facts.FrictionNow.Is(out FrictionFact? now))
        {
            if (Overdue(facts) is { } overdue)
            {
                yield return overdue;
            }

            yield break;
        }

        double high = facts.Options.HighFriction.Value;
        if (now.Friction.Value <= high)
        {
            yield return new()
            {
                Subject = Subject.Deck,
                Severity = Severity.Note,
                Statement = facts.Friction.Serviced
                    ? "Deck friction is in order after the service."
                    : "Deck friction is in order; the deck needs no lubricant now.",
                Number = now.Figure,
                Limit = facts.Options.HighFriction,
                For = [$"From {now.Method}."],
            };
            yield break;
        }

        yield return Complete(facts) ? AfterService(facts, now) : BeforeService(facts, now);
    }

    /// <summary>A deck past its common interval whose friction nobody read; null where it is not so.</summary>
    private static Finding? Overdue(VisitFacts facts)
    {
        if (
            facts.Friction.Serviced
            || facts.Visit.Day is not { } today
            || facts.Visit.Earlier.LastOrDefault(static e => e.Serviced) is not { } served
            || today.DayNumber - served.Day.DayNumber <= facts.Options.LongestInterval.Value
        )
        {
            return null;
        }

        return new()
        {
            Subject = Subject.Deck,
            Severity = Severity.Attend,
            Statement = "The deck is past its common interval, and its friction was not read.",
            Number = new("days since the last service", today.DayNumber - served.Day.DayNumber, "d"),
            Limit = facts.Options.LongestInterval,
            ForOwner = "The board under the belt is past its usual interval and is due to be looked at.",
            Next = new()
            {
                Action =
                    "Draw a dry white cloth along the underside of the belt, unplugged. Where it comes off dry or dusty: clean deck and underside of the belt. "
                    + Dose(facts),
                Expect = "A film under the belt, and less current or power under a user than before.",
                StopAt = "Add nothing to a deck that is still wet.",
                EffortMinutes = 20,
                Cautions = [Cautions.Unplug, Cautions.StandStill, Cautions.Clear],
            },
        };
    }

    /// <summary>
    /// Whether the deck is served before a bolt is turned: a belt may slip for a deck that drags, and turns would only hide it.
    /// </summary>
    internal static bool ServesFirst(VisitFacts facts) =>
        facts.Slip.ShowsNow
        && !Complete(facts)
        && facts.FrictionNow.Is(out FrictionFact? now)
        && now.Friction.Value > facts.Options.HighFriction.Value;

    /// <summary>
    /// Whether only the friction speaks of wear, and service is still to come: what it lowers tells wear from dirt, and parts
    /// are not for a maybe.
    /// </summary>
    internal static bool TriedByService(VisitFacts facts) =>
        facts.FrictionNow.Is(out FrictionFact? now)
        && now.Friction.Value > facts.Options.HighFriction.Value
        && !Complete(facts)
        && !facts.Used<GrooveReading>().Any(g => 1000 * Si.Length.ToSi(g.Depth) >= facts.Options.DeepGroove.Value)
        && !facts
            .Used<SymptomReading>()
            .Any(static s => s is { Symptom: Symptom.WornDeck or Symptom.GlazedUnderside, Present: true });

    /// <summary>A deck that was only cleaned is not judged worn before it had its lubricant.</summary>
    private static bool Complete(VisitFacts facts) =>
        facts.Friction.Serviced
        && (facts.Traces.Lubricant > 0 || facts.Visit.Machine.Deck.PreWaxed || facts.Traces.OilUnderneath);

    private static Finding BeforeService(VisitFacts facts, FrictionFact now) =>
        new()
        {
            Subject = Subject.Deck,
            Severity = Severity.Attend,
            Statement = "Deck friction is high: the deck is dry, dirty or worn.",
            Number = now.Figure,
            Limit = facts.Options.HighFriction,
            AlsoBy =
            [
                facts.Options.FrictionAfterService,
                facts.Options.WornIfFallBelow.InPercent(),
                .. facts.Visit.Machine.Plate?.LubricantDose is null
                    ? [facts.Options.LubricantFilm]
                    : Array.Empty<Threshold>(),
            ],
            For = [$"From {now.Method}."],
            Against =
            [
                .. now.Friction.Value - (2 * now.Friction.StandardUncertainty) < facts.Options.HighFriction.Value
                    ? ["Within its uncertainty the friction may be in order."]
                    : Array.Empty<string>(),
                .. ReadingRules.Contradict(facts)
                    ? ["The readings contradict each other: read them again first."]
                    : Array.Empty<string>(),
            ],
            Next = new()
            {
                Action =
                    "Clean deck and underside of the belt. "
                    + Dose(facts)
                    + (
                        facts.Slip.ShowsNow
                            ? $" Turn no bolt before that: a deck that drags makes a belt slip. Then repeat the slip test under {facts.Say.TestDemand}."
                            : ""
                    ),
                Expect =
                    $"Deck friction about {facts.Options.FrictionAfterService}; the current or power added by the user falls to {Words.Percent(facts.Options.FrictionAfterService.Value / now.Friction.Value)} of what it was.",
                StopAt =
                    $"If it falls by less than {Words.Percent(facts.Options.WornIfFallBelow.Value)}, belt and deck are worn: more lubricant does not help.",
                EffortMinutes = 20,
                Cautions =
                [
                    Cautions.StandStill,
                    Cautions.Clear,
                    .. facts.Slip.ShowsNow ? [Cautions.TestUser] : Array.Empty<string>(),
                ],
            },
        };

    private static Finding AfterService(VisitFacts facts, FrictionFact now)
    {
        (FrictionFact? before, FrictionFact after) = Pair(facts) ?? (null, now);
        bool compared = before is not null;
        double fall = compared ? 1 - (after.Friction.Value / before!.Friction.Value) : 0;
        bool worn = compared && fall < facts.Options.WornIfFallBelow.Value;
        return new()
        {
            Subject = Subject.Deck,
            Severity = Severity.Attend,
            Statement = worn
                ? "Cleaning and lubricating hardly lowered the friction: belt and deck are worn."
                : "Deck friction is still high after the service.",
            Number = worn ? new("fall of friction", 100 * fall, "%") : now.Figure,
            Limit = worn ? facts.Options.WornIfFallBelow.InPercent() : facts.Options.HighFriction,
            For = compared
                ? [$"As found {before!.Figure}, as left {after.Figure}, from {after.Method}."]
                : [$"From {now.Method}."],
            AlsoBy =
            [
                facts.Options.HighFriction,
                .. compared ? [facts.Options.WornIfFallBelow.InPercent()] : Array.Empty<Threshold>(),
            ],
            Next = new()
            {
                Action =
                    "Look at the underside of the belt and at the deck's foot zone together; replace belt and deck as a pair where they are glazed or worn through. Add no more lubricant.",
                Expect = $"Deck friction about {facts.Options.FrictionAfterService} with both new.",
                StopAt = "Do not run on with a motor that grows hot or a fuse that trips; raise no limit.",
                EffortMinutes = 90,
                Cautions = [Cautions.Unplug],
            },
        };
    }

    /// <summary>
    /// Friction before and after: of one method, which errs alike both times; otherwise of all readings together.
    /// </summary>
    private static (FrictionFact? Before, FrictionFact After)? Pair(VisitFacts facts) =>
        facts.Friction.AsFound.Is(out FrictionFact? found)
        && facts.Friction.AsLeft.Is(out FrictionFact? left)
        && found.Method == left.Method
            ? (found, left)
        : facts.FrictionAsFound.Is(out FrictionFact? before)
        && facts.FrictionAsLeft.Is(out FrictionFact? after)
        && before.Method == after.Method
            ? (before, after)
        : null;

    private static string Dose(VisitFacts facts)
    {
        Answer<LubricantDose> dose = LubricantDose.Of(
            facts.Visit.Machine,
            Si.Volume.FromSi(facts.Traces.Lubricant),
            facts.Options
        );
        if (dose.Missing.Why == Reason.NotOnThisMachine)
        {
            return "Add no lubricant: this deck comes waxed.";
        }

        if (facts.Traces.OilUnderneath || facts.Traces.OilOnRoller || facts.Traces.OilOnTop)
        {
            return "Then measure again before any lubricant: there is oil already, and more would seep through.";
        }

        return dose.Is(out LubricantDose? volume)
                ? $"Then lubricate the foot zone with {new Figure("", Si.Volume.ToSi(volume.Volume) * 1e6, "mL")} ({volume.Basis}), of the kind the maker names, and spread it at a walk of about 4.7 km/h (2.9 mph) over some fifty passes, the deck dry before."
            : dose.Missing.Why == Reason.NotInRange ? "Add no lubricant: it has had its dose."
            : "Then lubricate by the maker's manual: neither the plate's dose nor the foot zone is known here.";
    }
}
