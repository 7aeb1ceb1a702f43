using System.Collections.Immutable;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Which belt slips, and what to do: quarter turns, the drive belt, or the reading that must come first.</summary>
internal static class SlipRules
{
    internal static IEnumerable<Finding> Of(VisitFacts facts, TensionBudget budget, IReadOnlyList<RankedCause> causes)
    {
        if (!facts.Slip.ShowsNow)
        {
            return Holding(facts, budget);
        }

        bool driveBelt =
            facts.Slip.LocatedAt(SlipPlace.DriveBelt)
            || facts.Slip.LocatedAt(SlipPlace.Both)
            || (TurnsSpent(facts) && !(facts.Slip.Now.Found && facts.Slip.LocatedAt(SlipPlace.RunningBelt)));
        return facts.Traces.OilOnRoller ? []
            : facts.Slip.RetestDue ? [NotRetested(facts)]
            : driveBelt ? [DriveBeltSlips(facts, causes)]
            : [RunningBeltSlips(facts, budget, causes)];
    }

    /// <summary>Whether less than one step is left of the turns of a visit.</summary>
    private static bool TurnsSpent(VisitFacts facts) =>
        facts.Options.MostTurns.Value - facts.Bolts.Turns < facts.Options.TurnStep.Value - 1e-9;

    private static Finding NotRetested(VisitFacts facts) =>
        new()
        {
            Subject = facts.Slip.LocatedAt(SlipPlace.DriveBelt) ? Subject.DriveBelt : Subject.RunningBelt,
            Severity = Severity.Restrict,
            Statement = "It slipped under the test demand, and was not tested since the last work on belts or rollers.",
            For = Evidence(facts, located: false),
            Next = ReadFirstStep(
                facts,
                $"Repeat the slip test under {facts.Say.TestDemand}: there was work since the last one."
            ),
        };

    private static Finding RunningBeltSlips(VisitFacts facts, TensionBudget budget, IReadOnlyList<RankedCause> causes)
    {
        bool turnsLeft = budget.TurnsLeft >= facts.Options.TurnStep.Value - 1e-9;
        string? first = ReadFirst(facts) ?? (turnsLeft ? NotByTurns(facts, causes) : null);
        bool located = facts.Slip.LocatedAt(SlipPlace.RunningBelt);
        return new()
        {
            Subject = Subject.RunningBelt,
            Severity = Severity.Restrict,
            Statement = located
                ? "The running belt slips on its drive roller under the test demand."
                : "The belt under the feet gives way under the test demand; which belt slips is not settled.",
            Number = SlipFigure(facts),
            Limit = facts.Options.Slip.InPercent(),
            For = Evidence(facts, located),
            Against = DriveBeltJudged(facts)
                ? []
                : [$"No speeds of motor and roller under load: the {facts.Say.Drive} is not ruled out."],
            Next =
                first is not null ? ReadFirstStep(facts, first)
                : DeckRules.ServesFirst(facts) ? null
                : turnsLeft && facts.ThreadEndsFirst ? NoMoreTurns.ThreadTooShort(facts)
                : turnsLeft ? QuarterTurn(facts)
                : NoMoreTurns.Of(facts, budget),
            AlsoBy = first is not null || DeckRules.ServesFirst(facts) ? [] : LimitsOfATurn(facts, budget),
        };
    }

    private static bool DriveBeltJudged(VisitFacts facts) =>
        facts.Slip.DriveBeltRead || facts.Machine.DriveBelt is null;

    private static ImmutableArray<string> Evidence(VisitFacts facts, bool located)
    {
        List<string> evidence = [];
        if (located)
        {
            evidence.Add(
                "Under load the running belt falls behind the roller, while the roller keeps up with the motor."
            );
        }

        foreach ((double turns, bool slipped) in facts.Slip.Tests.Distinct())
        {
            evidence.Add(
                $"At {Words.Turns(turns, signed: true)} {facts.Say.OnBolts} it {(slipped ? "slips" : "holds")} under the test demand."
            );
        }

        if (
            facts.Traces is { RollerWiped: true, OilOnRoller: false, DustOnRoller: false }
            && !facts.Slip.SinceLubricant
        )
        {
            evidence.Add("The drive roller is clean: it is not oil.");
        }

        if (facts.Slip.SinceLubricant)
        {
            evidence.Add("It held before the deck was lubricated.");
        }

        return [.. evidence];
    }

    /// <summary>What must be read before a bolt is turned; null where nothing is missing.</summary>
    private static string? ReadFirst(VisitFacts facts) =>
        facts.Slip.SinceLubricant
            ? "Wipe the drive roller with a dry white cloth again: it held before the deck was lubricated, and lubricant on the roller makes a tight belt slip."
        : !facts.Traces.RollerWiped ? "Wipe the drive roller with a dry white cloth: oil there makes a tight belt slip."
        : facts.Traces.DustOnRoller
            ? "Clean the drive roller, machine unplugged: there is dust on it, and dust takes grip."
        : !DriveBeltJudged(facts)
            ? $"Read motor and roller speed, unloaded and under {facts.Say.TestDemand}: their ratio tells whether the {facts.Say.Drive} slips."
        : facts.Slip.HeldWithLess is { } held
            ? $"Repeat the slip test under {facts.Say.TestDemand}: it slips at {Words.Turns(facts.Bolts.Turns, signed: true)} and held at {Words.Turns(held, signed: true)}, and more tension cannot make it slip."
        : !facts.Tension.Found && facts.Slip.Tests.Count == 0
            ? "Take one lift test at 30 mm, or a slip test before the first turn: without a reference nobody knows when to stop."
        : null;

    /// <summary>
    /// What comes before a turn where all that was read together speaks for a cause that no turn mends; null where it
    /// does not. One cloth may miss the oil, and one reading of speeds the slip.
    /// </summary>
    private static string? NotByTurns(VisitFacts facts, IReadOnlyList<RankedCause> causes)
    {
        double Probability(params Cause[] of) => causes.Where(c => of.Contains(c.Cause)).Sum(static c => c.Probability);
        double likely = facts.Options.LikelyCause.Value;
        return Probability(Cause.OilOnDriveRoller, Cause.OverLubricated) >= likely
                ? "Clean the drive roller, machine unplugged, and repeat the slip test: what was read together speaks for oil, though the cloth showed none."
            : Probability(Cause.DriveBeltSlack, Cause.DriveBeltGlazed, Cause.DriveBeltCracked, Cause.PulleyLoose)
            >= likely
                ? $"Read motor and roller speed again, unloaded and under {facts.Say.TestDemand}, and look at the {facts.Say.Drive}, its pulleys and their set screws, machine unplugged: what was read together speaks for slip there."
            : null;
    }

    private static NextStep ReadFirstStep(VisitFacts facts, string reading) =>
        new()
        {
            Action = "Do not turn a bolt yet. " + reading,
            Expect = facts.Machine.DriveBelt is null
                ? "A reading that tells whether the running belt is to be worked on."
                : "A reading that tells which of the two belts to work on.",
            StopAt = "Stop if the belt catches, smells or drifts to an edge.",
            EffortMinutes = 6,
            Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
        };

    /// <summary>What a quarter turn goes by, and what ends the turns.</summary>
    private static ImmutableArray<Threshold> LimitsOfATurn(VisitFacts facts, TensionBudget budget) =>
        [
            facts.Options.TurnStep,
            facts.Options.MostTurns,
            .. budget.Limit switch
            {
                TurnLimit.Elongation => [facts.Options.MostStrain],
                TurnLimit.EarlierTension => [facts.Options.MostOverReference],
                _ => Array.Empty<Threshold>(),
            },
        ];

    private static NextStep QuarterTurn(VisitFacts facts)
    {
        double step = facts.Options.TurnStep.Value;
        ImmutableArray<LadderStep> ladder = SlipBracket.Ladder(facts, step);
        LadderStep after = ladder[^1];
        string predicted =
            after.Margin.Is(out Figure? margin) && ladder[0].Margin.Is(out Figure? now)
                ? $" Predicted margin {margin}, now {now}."
                : "";
        string tension = after.Tension.Is(out Figure? strand) ? $" Strand tension about {strand}." : "";
        return new()
        {
            Action =
                $"Tighten {facts.Say.Bolts} by {Words.Turns(step, signed: false)}{facts.Say.Equally}, then repeat the slip test under {facts.Say.TestDemand}.{facts.Say.Sense(tighten: true)}",
            Expect =
                $"The belt elongates by {after.StrainAdded}.{tension}{predicted} Slip below {Words.Percent(facts.Options.Slip.Value)} and no giving way under the feet.",
            StopAt =
                $"Stop when the test holds, at {Words.Turns(facts.Options.MostTurns.Value, signed: false)} in all at this visit, at the end of the thread, or if a bolt turns suddenly hard. {StillSlips(facts)}",
            Undo = $"Take {facts.Say.Bolts} back by {Words.Turns(step, signed: false)}.",
            EffortMinutes = 5,
            Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
        };
    }

    /// <summary>What to think of a belt that slips when the turns are given.</summary>
    private static string StillSlips(VisitFacts facts) =>
        facts.Slip.LocatedAt(SlipPlace.RunningBelt)
            ? $"If it still slips then, read the speeds again: either the {facts.Say.Drive} slips by now, or belt and roller have lost their grip, not their tension."
            : $"What still slips then is likely the {facts.Say.Drive}.";

    /// <summary>What is done to a drive that slips, behind the words on the take-up bolts; null where it is told elsewhere.</summary>
    private static string? DriveWork(VisitFacts facts, IReadOnlyList<RankedCause> causes) =>
        facts.DriveBeltLook is DriveBeltLook.Glazed or DriveBeltLook.Cracked || PulleyIsLoose(facts, causes)
            ? null
            : facts.Machine.DriveBelt?.Tensioning switch
            {
                Tensioning.SlidingMotor => "slide the motor to tension the drive belt, after looking at its ribs",
                Tensioning.SlackSideIdler or Tensioning.TightSideIdler =>
                    "look at the drive belt's ribs and at its idler and spring",
                Tensioning.SprungMotor => "look at the drive belt's ribs and at the motor's spring or pivot",
                Tensioning.StretchFit or Tensioning.FixedCentres =>
                    "look at the drive belt's ribs; this kind is replaced, not tensioned",
                _ => "look at the coupling between motor and roller, and for a pulley loose on its shaft",
            };

    /// <summary>Whether a loose pulley was seen, or is what most speaks for: no tension holds it.</summary>
    private static bool PulleyIsLoose(VisitFacts facts, IReadOnlyList<RankedCause> causes) =>
        facts.Used<SymptomReading>().LastOrDefault(static s => s.Symptom == Symptom.PulleyMoves)?.Present == true
        || causes.Any(c => c.Cause == Cause.PulleyLoose && c.Probability >= facts.Options.LikelyCause.Value);

    /// <summary>The turns are given and it still slips, though the speeds before them had put it at the running belt.</summary>
    private static Finding TurnsDidNotHelp(VisitFacts facts) =>
        new()
        {
            Subject = Subject.RunningBelt,
            Severity = Severity.Restrict,
            Statement =
                $"After {Words.Turns(facts.Bolts.Turns, signed: false)} {facts.Say.OnBolts} it still slips; tension is not what it wants for.",
            Number = new("turns at this visit", facts.Bolts.Turns, "turn"),
            Limit = facts.Options.MostTurns,
            AlsoBy = [facts.Options.Slip.InPercent(), facts.Options.TurnStep],
            For =
            [
                $"Each {facts.Say.TurnOfBolts} adds {new Figure("", 100 * QuarterTurns.Strain(facts.Machine, 1), "%")} elongation; a running belt that was only slack holds before two turns.",
            ],
            Against = ["The speeds as found put the slip at the running belt."],
            Next = new()
            {
                Action =
                    $"Do not tighten further. Read the speeds of motor, roller and belt again, unloaded and under {facts.Say.TestDemand}: either the {facts.Say.Drive} slips by now, or belt and roller have lost their grip.",
                Expect =
                    "A reading that tells which of the two belts to work on; where it is not the running belt, its turns are taken back.",
                StopAt = "Stop if the belt catches, smells or drifts to an edge.",
                EffortMinutes = 6,
                Cautions = [Cautions.StandStill, Cautions.Clear, Cautions.Key, Cautions.TestUser],
            },
        };

    private static Finding DriveBeltSlips(VisitFacts facts, IReadOnlyList<RankedCause> causes)
    {
        if (facts.Slip.LocatedAt(SlipPlace.RunningBelt))
        {
            return TurnsDidNotHelp(facts);
        }

        bool located = facts.Slip.LocatedAt(SlipPlace.DriveBelt) || facts.Slip.LocatedAt(SlipPlace.Both);
        double given = Math.Max(0, facts.Bolts.Turns);
        double back = Math.Min(given, facts.Options.BackOffTurns.Value);
        string takeBack =
            back > 0
                ? $"Take {facts.Say.Bolts} back{facts.Say.Equally}, by at least {Words.Turns(back, signed: false)} of the {Words.Turns(given, signed: false)} given: tightening was not the cure. Then "
                : "Do not tighten the running belt; ";
        string? work = DriveWork(facts, causes);
        string action =
            work is not null ? takeBack + work + "."
            : back > 0 ? takeBack + "work on the drive as said beside it."
            : "";
        double before = facts.Bolts.TurnsBySomebody;
        if (action.Length > 0 && before > 0)
        {
            action +=
                $" Once it holds, take the {Words.Turns(before, signed: false)} given before the visit back as well, by {Words.Turns(facts.Options.TurnStep.Value, signed: false)} at a time while the slip test holds.";
        }

        if (action.Length > 0 && (back > 0 || before > 0))
        {
            action += facts.Say.Sense(tighten: false);
        }

        string both = facts.Slip.LocatedAt(SlipPlace.Both) ? " The running belt slips as well; it comes second." : "";
        return new()
        {
            Subject = Subject.DriveBelt,
            Severity = Severity.Restrict,
            Statement = located
                ? $"The {facts.Say.Drive} slips: under load the roller falls behind the motor.{both}"
                : $"After {Words.Turns(facts.Bolts.Turns, signed: false)} {facts.Say.OnBolts} it still slips; the {facts.Say.Drive} is to be suspected.",
            Number = located ? SlipFigure(facts) : new("turns at this visit", facts.Bolts.Turns, "turn"),
            Limit = located ? facts.Options.Slip.InPercent() : facts.Options.MostTurns,
            AlsoBy =
            [
                .. given > 0 ? [facts.Options.BackOffTurns] : Array.Empty<Threshold>(),
                .. located ? Array.Empty<Threshold>() : [facts.Options.Slip.InPercent(), facts.Options.TurnStep],
            ],
            For = located
                ? ["The ratio of roller to motor speed under load is below that of the unloaded machine."]
                :
                [
                    $"Each {facts.Say.TurnOfBolts} adds {new Figure("", 100 * QuarterTurns.Strain(facts.Machine, 1), "%")} elongation; a running belt that was only slack holds before two turns.",
                ],
            Against = located ? [] : ["The speed of the roller under load would settle it."],
            Next =
                action.Length == 0
                    ? null
                    : new()
                    {
                        Action = action,
                        Expect =
                            $"Motor-to-roller slip below {Words.Percent(facts.Options.Slip.Value)} under {facts.Say.TestDemand}.",
                        StopAt =
                            "Stop at cracked or missing ribs, or a pulley that moves on its shaft: replace, then retest.",
                        Undo =
                            back > 0 ? $"Tighten {facts.Say.Bolts} by {Words.Turns(back, signed: false)} again." : null,
                        EffortMinutes = 30,
                        Cautions = [Cautions.Unplug, Cautions.StandStill, Cautions.TestUser],
                    },
        };
    }

    private static IEnumerable<Finding> Holding(VisitFacts facts, TensionBudget budget)
    {
        int lastSlip = facts.Slip.Tests.FindLastIndex(t => t.Slipped);
        if (lastSlip >= 0)
        {
            yield return Cured(facts, budget, facts.Slip.Tests[lastSlip].Turns, facts.Slip.Tests[^1].Turns);
        }
        else if (
            facts.Slip.SlippedLast is null
            && facts.Margin.Is(out Figure? predicted)
            && Sure(facts, predicted)
            && predicted.Value < facts.Options.WantedMargin.Value
        )
        {
            bool below = (predicted.Upper ?? predicted.Value + (2 * (predicted.StandardUncertainty ?? 0))) < 1;
            yield return new()
            {
                Subject = Subject.RunningBelt,
                Severity = below ? Severity.Restrict : Severity.Attend,
                Statement = "The running belt's predicted margin under the test demand is small.",
                Number = predicted,
                Limit = facts.Options.WantedMargin,
                AlsoBy = [facts.Options.SureMargin.InPercent()],
                For = ["Predicted from tension, frictions and the person; not yet tested."],
                Next = ReadFirstStep(facts, $"Make one slip test under {facts.Say.TestDemand}."),
            };
        }
    }

    /// <summary>Whether a margin is known well enough to rest a finding on.</summary>
    private static bool Sure(VisitFacts facts, Figure margin) =>
        (margin.StandardUncertainty ?? 0) <= facts.Options.SureMargin.Value * margin.Value;

    private static Finding Cured(VisitFacts facts, TensionBudget budget, double slipped, double held)
    {
        string places =
            $"it slips at {Words.Turns(slipped, signed: true)} and holds at {Words.Turns(held, signed: true)} {facts.Say.OnBolts}";
        bool loosened = facts.Slip.RetestDue && facts.Bolts.Turns < held - 1e-9;
        bool byTurns = held > slipped && !facts.Slip.OtherWorkSince;
        Figure? margin = facts.Margin.Is(out Figure? known) && Sure(facts, known) ? known : null;
        bool ample = margin?.Value >= facts.Options.WantedMargin.Value;
        return new()
        {
            Subject = Subject.RunningBelt,
            Severity = byTurns || loosened ? Severity.Attend : Severity.Note,
            Statement =
                byTurns && facts.Traces.OilOnRoller ? $"More tension covers up the oil on the drive roller: {places}."
                : byTurns ? $"The running belt was slack: {places}."
                : $"It gave way and holds now, by other work than tension alone: {places}.",
            Number = margin,
            Limit = facts.Options.WantedMargin,
            AlsoBy = byTurns && !ample ? LimitsOfATurn(facts, budget) : [],
            For =
            [
                "The slip tests, before and after.",
                .. byTurns ? ["More tension alone cured it."] : Array.Empty<string>(),
            ],
            Next =
                loosened
                    ? ReadFirstStep(
                        facts,
                        $"Repeat the slip test under {facts.Say.TestDemand}: the belt was loosened since it held."
                    )
                : byTurns && !ample && facts.Slip.RetestDue
                    ? ReadFirstStep(
                        facts,
                        $"Repeat the slip test under {facts.Say.TestDemand}: there was work since it held."
                    )
                : byTurns && !ample ? Reserve(facts, budget)
                : null,
        };
    }

    /// <summary>A quarter turn of reserve after the rung that just holds: its margin may be hardly above 1.</summary>
    private static NextStep? Reserve(VisitFacts facts, TensionBudget budget) =>
        facts.Traces.OilOnRoller
        || ReadFirst(facts) is not null
        || budget.TurnsLeft < facts.Options.TurnStep.Value - 1e-9
            ? null
            : QuarterTurn(facts) with
            {
                Action =
                    $"For reserve, tighten {facts.Say.Bolts} once more by {Words.Turns(facts.Options.TurnStep.Value, signed: false)}{facts.Say.Equally}, and repeat the slip test under {facts.Say.TestDemand}.{facts.Say.Sense(tighten: true)}",
                StopAt =
                    $"Stop after this one step, or if a bolt turns suddenly hard; more costs the rollers' bearings and buys nothing that was asked for.",
            };

    private static Figure? SlipFigure(VisitFacts facts)
    {
        if (!facts.Slip.Located.Is(out SlipLocation? located))
        {
            return null;
        }

        Answer<Estimate<double>> slip = located.Place switch
        {
            SlipPlace.DriveBelt or SlipPlace.Both => located.DriveBelt,
            SlipPlace.NotLocated => located.Whole,
            _ => located.RunningBelt,
        };
        return slip.Is(out Estimate<double> found)
            ? new("slip", 100 * found.Value, "%", 100 * found.StandardUncertainty)
            : null;
    }
}
