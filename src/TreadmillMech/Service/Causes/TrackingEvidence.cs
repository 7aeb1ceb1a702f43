using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Drift of the belt and level of the frame. Chances: common practice, no source.</summary>
internal static class TrackingEvidence
{
    internal static readonly Chance Drifts = new(0.06, (Cause.BeltOffCentre, 0.96));

    private static readonly Chance OutOfLevel = new(0.08, (Cause.BeltOffCentre, 0.5));

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        if (facts.Used<TrackingReading>().FirstOrDefault(t => t.State == LoadState.Unloaded) is { } drift)
        {
            double each = Math.Abs(drift.ForEachPass);
            Figure figure = new("", 1000 * each, "mm");
            yield return Drifts.Seen(
                each > facts.Options.StraightDrift.Value,
                $"The empty belt drifts {figure} in each pass.",
                $"The empty belt drifts no more than {figure} in each pass.",
                TrackingRules.Straight(facts.Options)
            );
        }

        if (facts.Used<LevelReading>().LastOrDefault() is { } level)
        {
            double slope = Math.Abs(Si.Ratio.ToSi(level.Across));
            yield return OutOfLevel.Seen(
                slope > facts.Options.LevelFrame.Value,
                $"The frame slopes {Words.Percent(slope)} across.",
                "The frame stands level across.",
                facts.Options.LevelFrame.InPercent()
            );
        }
    }
}
