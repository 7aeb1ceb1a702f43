using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>What the speeds say beside slip: a display that is off, pulleys that do not fit.</summary>
internal static class SpeedRules
{
    /// <summary>Error of the display, from belt and display read together, best unloaded; null where they were not.</summary>
    internal static Figure? DisplayError(VisitFacts facts)
    {
        // Under load a belt may slip, or be overrun: the display is judged unloaded where it can be.
        if (
            facts
                .Used<Reading>()
                .Select(r => Shown(facts, r))
                .OfType<(LoadState State, double Display, double Belt, double Relative)>()
                .OrderBy(r => r.State == LoadState.Unloaded)
                .LastOrDefault()
            is not { Display: > 0 } reading
        )
        {
            return null;
        }

        (_, double shown, double belt, double relative) = reading;
        double error = MeasurementLaws.DisplayError<Real>(shown, belt);
        return new("error of the display", 100 * error, "%", 100 * shown / belt * relative);
    }

    /// <summary>Display and belt read together [m/s]: by a meter, or by counted passes of the whole loop.</summary>
    private static (LoadState State, double Display, double Belt, double Relative)? Shown(
        VisitFacts facts,
        Reading reading
    )
    {
        double relative = reading.RelativeUncertainty is { } own ? Si.Ratio.ToSi(own) : facts.Options.MeterSpeed.Value;
        return reading switch
        {
            SpeedReading { Belt: { } belt, Display: { } display } speeds => (
                speeds.State,
                Si.Speed.ToSi(display),
                Si.Speed.ToSi(belt),
                relative
            ),
            PassesReading { Display: { } display } passes => (
                passes.State,
                Si.Speed.ToSi(display),
                passes.Passes * new LoopGeometry(facts.Machine).Length.Value / Si.Duration.ToSi(passes.Time),
                MeasurementLaws.RelativeUncertaintyOfTwo<Real>(
                    relative,
                    facts.Options.WatchTime.Value / Si.Duration.ToSi(passes.Time)
                )
            ),
            _ => null,
        };
    }

    internal static IEnumerable<Finding> Of(VisitFacts facts)
    {
        if (DisplayError(facts) is { } error && Math.Abs(error.Value) > 100 * facts.Options.DisplayError.Value)
        {
            yield return OfDisplay(facts, error);
        }

        if (PulleysContradict(facts))
        {
            yield return OfPulleys(facts, AgainstPulleys(facts)!.Value);
        }
    }

    /// <summary>Whether measured ratio and pulleys' diameters differ by more than reading errors do.</summary>
    internal static bool PulleysContradict(VisitFacts facts) =>
        AgainstPulleys(facts) is { } difference && Math.Abs(difference) > facts.Options.RatioAgreement.Value;

    private static double? AgainstPulleys(VisitFacts facts) =>
        MeasuredRatio.AgainstPulleys(facts.Visit, facts.Used<SpeedReading>().Where(r => r.State == LoadState.Unloaded));

    private static Finding OfDisplay(VisitFacts facts, Figure error) =>
        new()
        {
            Subject = Subject.Speed,
            Severity = Severity.Attend,
            Statement =
                error.Value < 0
                    ? "The display reads low: the belt runs faster than it says."
                    : "The display reads high: the belt runs slower than it says.",
            Number = error,
            Limit = facts.Options.DisplayError.InPercent(),
            For = ["Belt and display read at one time."],
            Against = facts.SlipsNow ? ["The belt slips: read both again, unloaded, once it holds."] : [],
            Next = new()
            {
                Action =
                    "Count the passes of a mark at two set speeds, unloaded; then set the displayed speed anew by the maker's manual.",
                Expect = $"Display and belt within {facts.Options.DisplayError.InPercent()}.",
                StopAt = "Until then nobody trains by the displayed speed.",
                EffortMinutes = 10,
                Cautions = [Cautions.Clear, Cautions.Key],
            },
        };

    private static Finding OfPulleys(VisitFacts facts, double difference) =>
        new()
        {
            Subject = Subject.Readings,
            Severity = Severity.Attend,
            Statement = facts.Machine.DriveBelt is null
                ? "Motor and roller turn at different speeds unloaded, though one sits on the other: a speed was misread."
                : "The speeds of motor and roller, unloaded, do not fit the diameters of the pulleys: one of them was misread.",
            Number = new("difference", 100 * difference, "%"),
            Limit = facts.Options.RatioAgreement.InPercent(),
            Next = new()
            {
                Action = "Read motor and roller speed again unloaded, and measure both pulleys where the belt lies.",
                Expect = $"A ratio within {facts.Options.RatioAgreement.InPercent()} of that of the pulleys.",
                StopAt = "A ratio that changes from reading to reading unloaded is slip already.",
                EffortMinutes = 10,
                Cautions = [Cautions.Unplug, Cautions.Clear],
            },
        };
}
