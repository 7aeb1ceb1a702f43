using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>A belt that drifts to one side.</summary>
internal static class TrackingRules
{
    private const double Eighth = 0.125;

    /// <summary>Drift for each pass that counts as straight, in millimetres.</summary>
    internal static Threshold Straight(VisitOptions options) =>
        options.StraightDrift with
        {
            Value = 1000 * options.StraightDrift.Value,
            Unit = "mm",
        };

    internal static IEnumerable<Finding> Of(VisitFacts facts, TensionBudget budget, IReadOnlyList<RankedCause> causes)
    {
        if (Unequal(facts) is { } unequal)
        {
            yield return unequal;
        }

        if (UnderUserAlone(facts) is { } user)
        {
            yield return user;
        }

        if (
            facts.Tracking.Empty is not { } reading
            || Math.Abs(reading.ForEachPass) <= facts.Options.StraightDrift.Value
        )
        {
            yield break;
        }

        string towards = Towards(reading);
        Figure? slope = Slope(facts);
        bool tight = causes.Any(c =>
            c.Cause == Cause.OverTightened && c.Probability >= facts.Options.LikelyCause.Value
        );
        yield return new()
        {
            Subject = Subject.Tracking,
            Severity = Severity.Attend,
            Statement = $"The running belt drifts to the {towards}.",
            Number = new("drift for each pass", 1000 * Math.Abs(reading.ForEachPass), "mm"),
            Limit = Straight(facts.Options),
            AlsoBy =
                slope is not null && !facts.Traces.OilOnRoller ? [facts.Options.LevelFrame.InPercent()]
                : facts.Machine.TakeUp.Bolts < 2 || facts.Traces.OilOnRoller ? []
                :
                [
                    facts.Options.TurnStep,
                    facts.Options.LeastTrackingGain,
                    facts.Options.MostTurns,
                    facts.Options.TurnsKeptForTension,
                ],
            For =
            [
                $"Counted over {reading.Passes} passes at a jog.",
                .. slope is null
                    ? Array.Empty<string>()
                    : [$"The frame slopes {slope} across, more than {facts.Options.LevelFrame.InPercent()}."],
            ],
            Next =
                facts.Traces.OilOnRoller ? CleanFirst()
                : slope is not null ? LevelFirst()
                : facts.Machine.TakeUp.Bolts < 2 ? OneBolt()
                : Step(facts, reading, towards, tight, budget),
        };
    }

    private static NextStep Step(
        VisitFacts facts,
        TrackingReading reading,
        string towards,
        bool tight,
        TensionBudget budget
    )
    {
        double first = TrackingAdvice
            .Of(facts.Machine, reading, options: facts.Options)
            .Then(a => Math.Min(a.FirstTurns, facts.Options.TurnStep.Value))
            .Or(Eighth);

        // What is left of thread or tension is kept for the belt's tension: near its end no turn of it goes into tracking.
        double kept = budget.Limit == TurnLimit.TurnsOfAVisit ? 0 : facts.Options.TurnsKeptForTension.Value;
        bool mayTighten = !tight && budget.TurnsLeft >= first + kept;

        // At the limit of the tension the other side is loosened, and that in eighths.
        first = mayTighten ? first : Math.Min(first, Eighth);
        Answer<TrackingAdvice> answer = TrackingAdvice.Of(facts.Machine, reading, mayTighten, facts.Options);
        _ = answer.Is(out TrackingAdvice? advice);
        bool tighten = advice?.Tighten ?? mayTighten;
        string how = advice is not null
            ? $"{(advice.Tighten ? "Tighten" : "Loosen")} the {Words.Side(advice.Side)} bolt by {Words.Turns(first, signed: false)}"
            : $"{(mayTighten ? "Tighten" : "Loosen")} the {(mayTighten ? towards : Opposite(towards))} bolt by 0.125 turn";
        string range =
            advice is null ? "The distance between the bolts is not known, so the turn is the smallest one."
            : advice.FirstTurns > facts.Options.MostTurns.Value
                ? "So large a drift is not for turns alone: compare both bolts' distance from the frame first."
            : advice.FirstTurns.Equals(advice.MostTurns)
                ? "So small a drift is worth the smallest turn, and no more before it was counted again."
            : $"Between {Words.Turns(advice.FirstTurns, signed: false)} for a belt that follows like a string and {Words.Turns(advice.MostTurns, signed: false)} for a stiff wide one; the first turn tells which.";
        return new()
        {
            Action =
                $"{how}, the belt standing still; then count the same passes again at a jog{(tighten ? "" : $", and repeat the slip test under {facts.Say.TestDemand}, for a loosened belt grips less")}.{facts.Say.Sense(tighten)}",
            Expect = $"Less drift to the {towards}. {range} Give it fifty passes to settle.",
            StopAt = "Stop if the belt nears an edge; a crowned roller may hold it at an offset, which is in order.",
            Undo = "Turn the same bolt back by as much.",
            EffortMinutes = 8,
            Cautions =
            [
                Cautions.StandStill,
                Cautions.Clear,
                .. tighten ? Array.Empty<string>() : [Cautions.Key, Cautions.TestUser],
            ],
        };
    }

    /// <summary>Slope of the frame across, where it is more than it should be; null where it is not, or was not read.</summary>
    private static Figure? Slope(VisitFacts facts) =>
        facts.Used<LevelReading>().LastOrDefault() is { } level
        && Math.Abs(Si.Ratio.ToSi(level.Across)) > facts.Options.LevelFrame.Value
            ? new("slope of the frame across", 100 * Math.Abs(Si.Ratio.ToSi(level.Across)), "%")
            : null;

    /// <summary>Bolts turned one more than the other, and the drift not counted since; null where it is not so.</summary>
    private static Finding? Unequal(VisitFacts facts) =>
        facts.Machine.TakeUp.Bolts == 2 && Math.Abs(facts.Tracking.UnequalTurns) > Eighth + 1e-9
            ? new()
            {
                Subject = Subject.Tracking,
                Severity = Severity.Attend,
                Statement =
                    $"The {(facts.Tracking.UnequalTurns > 0 ? "right" : "left")} bolt was turned {Words.Turns(Math.Abs(facts.Tracking.UnequalTurns), signed: false)} further than the other, and how the belt tracks was not counted since.",
                Number = new("turns of one bolt more than of the other", Math.Abs(facts.Tracking.UnequalTurns), "turn"),
                Limit = Straight(facts.Options),
                ForOwner = "Whether the belt stays in the middle is to be looked at again.",
                Next = new()
                {
                    Action =
                        "Let the belt run empty at a jog and count its sideways movement over fifty passes before anybody steps on.",
                    Expect = $"A drift below {Straight(facts.Options)} for each pass.",
                    StopAt = "Stop if the belt nears an edge: pull the safety key, then give the last turn back.",
                    EffortMinutes = 5,
                    Cautions = [Cautions.Clear, Cautions.Key],
                },
            }
            : null;

    /// <summary>A belt that tracks straight empty and drifts under somebody: not a matter of the bolts.</summary>
    private static Finding? UnderUserAlone(VisitFacts facts) =>
        facts.Tracking is { Empty: { } empty, UnderLoad: { } loaded }
        && Math.Abs(empty.ForEachPass) <= facts.Options.StraightDrift.Value
        && Math.Abs(loaded.ForEachPass) > facts.Options.StraightDrift.Value
            ? new()
            {
                Subject = Subject.Tracking,
                Severity = Severity.Note,
                Statement =
                    $"The belt drifts to the {Towards(loaded)} only with somebody on it: it is the way they step, not the bolts. Turn no bolt for it.",
                Number = new("drift for each pass with somebody on it", 1000 * Math.Abs(loaded.ForEachPass), "mm"),
                Limit = Straight(facts.Options),
                For = ["Empty it runs straight."],
                ForOwner = "The belt runs straight; whoever steps off the middle draws it to a side.",
            }
            : null;

    private static NextStep LevelFirst() =>
        new()
        {
            Action = "Level the frame across by its feet first, then count the same passes again at a jog.",
            Expect = "Less drift, or none; what is left is for the bolts.",
            StopAt = "Stop if the belt nears an edge; turn no bolt before the frame stands level.",
            Undo = "Turn the feet back by as much.",
            EffortMinutes = 8,
            Cautions = [Cautions.StandStill, Cautions.Clear],
        };

    private static NextStep CleanFirst() =>
        new()
        {
            Action = "Clean the drive roller first, then count the same passes again at a jog.",
            Expect = "A drift that can be believed: on an oily roller it tells nothing of the bolts.",
            StopAt = "Stop if the belt nears an edge.",
            EffortMinutes = 10,
            Cautions = [Cautions.Unplug, Cautions.StandStill, Cautions.Clear],
        };

    private static NextStep OneBolt() =>
        new()
        {
            Action = "Centre the belt as the maker's manual says: this machine has one take-up bolt.",
            Expect = "Less drift over the same passes.",
            StopAt = "Stop if the belt nears an edge.",
            EffortMinutes = 10,
            Cautions = [Cautions.StandStill, Cautions.Clear],
        };

    private static string Towards(TrackingReading reading) =>
        Words.Side(reading.ForEachPass > 0 ? Side.Right : Side.Left);

    private static string Opposite(string side) => side == "left" ? "right" : "left";
}
