using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Drag, warmth and run-down of the rollers. Bells: common practice, no source.</summary>
internal static class RollerEvidence
{
    /// <summary>Warmth of the warmer end's bearing above the air [K].</summary>
    internal static readonly Bell Warmth = Bearing(failingFelt: 1);

    /// <summary>The same where only one of the two rollers was felt: the one that fails may be the other.</summary>
    private static readonly Bell WarmthOfOne = Bearing(failingFelt: 0.5);

    /// <summary>Logarithm of the drag of the empty belt over that of the earlier visit.</summary>
    private static readonly Bell DragAgainstBefore = new(
        3,
        0.05,
        0.15,
        (Cause.RollerBearing, 0.7, 0.3),
        (Cause.OverTightened, 0.45, 0.25)
    );

    /// <summary>Logarithm of the slowing of the empty belt over that of the earlier visit.</summary>
    private static readonly Bell SlowingAgainstBefore = new(
        3,
        0.03,
        0.1,
        (Cause.RollerBearing, 0.5, 0.2),
        (Cause.OverTightened, 0.3, 0.15)
    );

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        TemperatureReading[] felt =
        [
            .. facts
                .Used<TemperatureReading>()
                .Where(t => t.Place is WarmPlace.DriveRollerBearing or WarmPlace.TailRollerBearing),
        ];
        if (felt.Length > 0)
        {
            double rise = felt.Max(t => Si.Celsius.ToSi(t.Temperature) - Si.Celsius.ToSi(t.Air));
            bool both = felt.DistinctBy(static t => t.Place).Count() > 1;
            Figure warm = new("", rise, "K");
            yield return (both ? Warmth : WarmthOfOne).Read(
                rise,
                2,
                both
                    ? $"The warmest roller bearing is {warm} above the air."
                    : $"The bearing of the one roller that was felt is {warm} above the air."
            );
        }

        if (
            facts.Visit.Earlier.LastOrDefault(e => e.BeltDrag is not null)?.BeltDrag is { } dragBefore
            && facts.EmptyPullAsFound is { } drag
            && Si.Force.ToSi(drag) > 0
            && Si.Force.ToSi(dragBefore) > 0
        )
        {
            double ratio = Si.Force.ToSi(drag) / Si.Force.ToSi(dragBefore);
            yield return DragAgainstBefore.Read(
                Math.Log(ratio),
                facts.Options.ScaleForce.Value * Math.Sqrt(2),
                $"The empty belt drags {Words.Percent(ratio)} of what it did at the earlier visit."
            );
        }

        if (
            facts.Visit.Earlier.LastOrDefault(e => e.Slowing is not null)?.Slowing is { } slowingBefore
            && facts.Used<CoastDownReading>().FirstOrDefault() is { } coast
        )
        {
            double slowing = Si.Speed.ToSi(coast.From) / Si.Duration.ToSi(coast.Time);
            double ratio = slowing / Si.Acceleration.ToSi(slowingBefore);
            yield return SlowingAgainstBefore.Read(
                Math.Log(ratio),
                facts.Options.CoastDown.Value * Math.Sqrt(2),
                $"The empty belt slows at {Words.Percent(ratio)} of the earlier visit's rate."
            );
        }
    }

    private static Bell Bearing(double failingFelt) =>
        new(
            150,
            12,
            6,
            (Cause.RollerBearing, 42, 14),
            (Cause.OverTightened, 24, 8),
            (Cause.DeckDry, 16, 7),
            (Cause.BeltAndDeckWorn, 17, 7)
        )
        {
            Showing = new Dictionary<Cause, double> { [Cause.RollerBearing] = failingFelt },
        };
}
