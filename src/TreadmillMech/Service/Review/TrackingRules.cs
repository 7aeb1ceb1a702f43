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

    internal static IEnumerable<Finding> Of(VisitFacts facts, double turnsLeft)
    {
        if (
            facts.Tracking is not { } reading
            || Math.Abs(Si.Length.ToSi(reading.DriftToRight)) <= facts.Options.StraightDrift.Value * reading.Passes
        )
        {
            yield break;
        }

        double drift = Si.Length.ToSi(reading.DriftToRight);
        string towards = Words.Side(drift > 0 ? Side.Right : Side.Left);
        yield return new()
        {
            Subject = Subject.Tracking,
            Severity = Severity.Attend,
            Statement = $"The running belt drifts to the {towards}.",
            Number = new("drift for each pass", 1000 * Math.Abs(drift) / reading.Passes, "mm"),
            Limit = Straight(facts.Options),
            AlsoBy =
                facts.Machine.TakeUp.Bolts < 2 || facts.OilOnRoller
                    ? []
                    : [facts.Options.TurnStep, facts.Options.LeastTrackingGain, facts.Options.MostTurns],
            For = [$"Counted over {reading.Passes} passes at a jog."],
            Next =
                facts.OilOnRoller ? CleanFirst()
                : facts.Machine.TakeUp.Bolts < 2 ? OneBolt()
                : Step(facts, reading, towards, turnsLeft),
        };
    }

    private static NextStep Step(VisitFacts facts, TrackingReading reading, string towards, double turnsLeft)
    {
        double first = TrackingAdvice
            .Of(facts.Machine, reading, options: facts.Options)
            .Then(a => Math.Min(a.FirstTurns, facts.Options.TurnStep.Value))
            .Or(Eighth);
        bool mayTighten = turnsLeft >= first;

        // At the limit of the tension the other side is loosened, and that in eighths.
        first = mayTighten ? first : Math.Min(first, Eighth);
        Answer<TrackingAdvice> answer = TrackingAdvice.Of(facts.Machine, reading, mayTighten, facts.Options);
        string how = answer.Is(out TrackingAdvice? advice)
            ? $"{(advice.Tighten ? "Tighten" : "Loosen")} the {Words.Side(advice.Side)} bolt by {Words.Turns(first, signed: false)}"
            : $"{(mayTighten ? "Tighten" : "Loosen")} the {(mayTighten ? towards : Opposite(towards))} bolt by 0.125 turn";
        string range =
            advice is null ? "The distance between the bolts is not known, so the turn is the smallest one."
            : advice.FirstTurns > facts.Options.MostTurns.Value
                ? "So large a drift is not for turns alone: compare both bolts' distance from the frame first."
            : $"Between {Words.Turns(advice.FirstTurns, signed: false)} for a belt that follows like a string and {Words.Turns(advice.MostTurns, signed: false)} for a stiff wide one; the first turn tells which.";
        return new()
        {
            Action = $"{how}, the belt standing still; then count the same passes again at a jog.",
            Expect = $"Less drift to the {towards}. {range} Give it fifty passes to settle.",
            StopAt = "Stop if the belt nears an edge; a crowned roller may hold it at an offset, which is in order.",
            Undo = "Turn the same bolt back by as much.",
            EffortMinutes = 8,
            Cautions = [Cautions.StandStill, Cautions.Clear],
        };
    }

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

    private static string Opposite(string side) => side == "left" ? "right" : "left";
}
