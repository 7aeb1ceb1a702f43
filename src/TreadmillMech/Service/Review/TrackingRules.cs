using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>A belt that drifts to one side.</summary>
internal static class TrackingRules
{
    private const double StraightPerPass = 1e-4;

    /// <summary>Drift for each pass that counts as straight.</summary>
    internal static Threshold Straight { get; } =
        new("straight", 1000 * StraightPerPass, "mm", "common practice, no source");

    internal static IEnumerable<Finding> Of(VisitFacts facts, double turnsLeft)
    {
        if (
            facts.Tracking is not { } reading
            || Math.Abs(Si.Length.ToSi(reading.DriftToRight)) <= StraightPerPass * reading.Passes
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
            Limit = Straight,
            For = [$"Counted over {reading.Passes} passes at a jog."],
            Next = Step(facts, reading, towards, turnsLeft > 0),
        };
    }

    private static NextStep Step(VisitFacts facts, TrackingReading reading, string towards, bool mayTighten)
    {
        Answer<TrackingAdvice> answer = TrackingAdvice.Of(facts.Machine, reading, mayTighten, facts.Options);
        string how = answer.Is(out TrackingAdvice? advice)
            ? $"{(advice.Tighten ? "Tighten" : "Loosen")} the {Words.Side(advice.Side)} bolt by {Words.Turns(advice.FirstTurns, signed: false)}"
            : $"{(mayTighten ? "Tighten" : "Loosen")} the {(mayTighten ? towards : Opposite(towards))} bolt by 0.125 turn";
        string range = advice is null
            ? "The distance between the bolts is not known, so the turn is the smallest one."
            : $"Between {Words.Turns(advice.FirstTurns, signed: false)} for a belt that follows like a string and {Words.Turns(advice.MostTurns, signed: false)} for a stiff wide one; the first turn tells which.";
        return new()
        {
            Action = $"{how}, the belt standing still; then count the same passes again at a jog.",
            Expect = $"Less drift to the {towards}. {range} Give it fifty passes to settle.",
            StopAt = "Stop if the belt nears an edge; a crowned roller may hold it at an offset, which is in order.",
            Undo = "Turn the same bolt back by as much.",
            Cautions = [Cautions.StandStill, Cautions.Clear],
        };
    }

    private static string Opposite(string side) => side == "left" ? "right" : "left";
}
