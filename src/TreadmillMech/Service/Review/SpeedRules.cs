using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Causes;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Service.Review;

/// <summary>What the speeds say beside slip: a display that is off, pulleys that do not fit.</summary>
internal static class SpeedRules
{
    /// <summary>Speed that no belt reaches [m/s]; the largest speed that a reading may have.</summary>
    internal const double FastestBelt = 8;

    private const double KilometersInAMile = 1.609344;

    /// <summary>Belt speed by counted passes of the whole loop [m/s].</summary>
    internal static double ByPasses(Treadmill machine, PassesReading passes) =>
        MeasurementLaws.SpeedFromPasses<Real>(
            new LoopGeometry(machine).Length.Value,
            passes.Passes,
            Si.Duration.ToSi(passes.Time)
        );

    /// <summary>Whether an error of the display [%] is one that no display has before one of the two was misread.</summary>
    internal static bool IsGross(VisitFacts facts, Figure error) =>
        Math.Abs(error.Value) > 100 * facts.Options.GrossDisplayError.Value;

    /// <summary>Whether belt and display differ by just the ratio of miles and kilometres.</summary>
    private static bool OtherUnit(Figure error, VisitOptions options)
    {
        double ratio = 1 + (error.Value / 100);
        return Math.Abs((ratio / KilometersInAMile) - 1) < options.SameSpeed.Value
            || Math.Abs((ratio * KilometersInAMile) - 1) < options.SameSpeed.Value;
    }

    /// <summary>
    /// How far the empty belt falls behind the face of its drive roller, or runs ahead of it, in parts of the roller's;
    /// null where they were not read together.
    /// </summary>
    internal static double? AgainstRoller(VisitFacts facts) =>
        facts
            .Used<SpeedReading>()
            .LastOrDefault(static s => s is { State: LoadState.Unloaded, Belt: not null, DriveRoller: not null })
            is { } read
            ? (Si.Speed.ToSi(read.Belt!.Value) / FaceSpeed(facts.Visit.Machine, read.DriveRoller!.Value)) - 1
            : null;

    /// <summary>Speed of the belt's middle on a roller that it does not slip on [m/s].</summary>
    private static double FaceSpeed(Treadmill machine, RotationalSpeed roller)
    {
        double thickness = machine.Belt.Thickness is { } thick ? Si.Length.ToSi(thick) : 0;
        return MeasurementLaws.SpeedFromRoller<Real>(
            Si.RotationalSpeed.ToSi(roller),
            Si.Length.ToSi(machine.DriveRoller.Diameter),
            thickness
        );
    }

    internal static bool RollerContradicts(VisitFacts facts) =>
        !PulleysContradict(facts)
        && AgainstRoller(facts) is { } off
        && Math.Abs(off) > facts.Options.RatioAgreement.Value;

    /// <summary>
    /// Whether under load a belt seems to run ahead of what drives it, by more than the errors of the speeds. Off the
    /// level the user may drive the belt, and it may; on the level no belt overtakes its pulley.
    /// </summary>
    internal static bool RunsAhead(VisitFacts facts) =>
        Ahead(facts, facts.Slip.AsFound) || Ahead(facts, facts.Slip.Now);

    private static bool Ahead(VisitFacts facts, Answer<SlipLocation> speeds) =>
        Si.Ratio.ToSi(facts.Visit.TestDemand.Grade) <= 0
        && speeds.Is(out SlipLocation? located)
        && (Ahead(facts, located.RunningBelt) || Ahead(facts, located.DriveBelt) || Ahead(facts, located.Whole));

    private static bool Ahead(VisitFacts facts, Answer<Estimate<double>> slip) =>
        slip.Is(out Estimate<double> told) && told.Value < -facts.Options.Slip.Value - (2 * told.StandardUncertainty);

    /// <summary>Whether two readings of the empty belt at one displayed speed differ by more than a display may be off.</summary>
    internal static bool DisplaysContradict(VisitFacts facts)
    {
        (LoadState State, double Display, double Belt, double Relative)[] read =
        [
            .. BeltAndDisplay(facts).Where(static r => r.State == LoadState.Unloaded && r.Belt > 0),
        ];
        return read.Any(one =>
            read.Any(other =>
                ReadingCheck.Same(one.Display, other.Display, facts.Options)
                && Math.Abs((one.Belt / other.Belt) - 1) > facts.Options.DisplayError.Value
            )
        );
    }

    private static IEnumerable<(LoadState State, double Display, double Belt, double Relative)> BeltAndDisplay(
        VisitFacts facts
    ) =>
        facts
            .LoneSpeeds.Concat(facts.Used<Reading>())
            .Select(r => Shown(facts, r))
            .OfType<(LoadState State, double Display, double Belt, double Relative)>();

    /// <summary>Error of the display, from belt and display read together, best unloaded; null where they were not.</summary>
    internal static Figure? DisplayError(VisitFacts facts)
    {
        // Under load a belt may slip, be overrun, or lag behind a controller at its limit: the display is judged unloaded
        // where it can be, and never by a drive that gives way or can do no more.
        if (
            BeltAndDisplay(facts)
                .Where(r => r.State == LoadState.Unloaded || !LagsUnderLoad(facts))
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

    /// <summary>
    /// Whether at any time of the visit the belt did not run under load as the drive was set: it gave way, even if that was
    /// mended since, the drive was at its limit, the user drove it, or the motor itself fell behind.
    /// </summary>
    private static bool LagsUnderLoad(VisitFacts facts) =>
        facts.Slip.Tests.Any(static t => t.Slipped)
        || Slipped(facts.Slip.AsFound)
        || Slipped(facts.Slip.Now)
        || facts
            .Used<SymptomReading>()
            .Any(static s => s is { Symptom: Symptom.ShutsOff or Symptom.BeltRunsAway, Present: true })
        || facts.Used<MotorCurrentReading>().Any(r => ReadingCheck.AtLimit(facts.Visit.Machine, r, facts.Options))
        || Math.Abs(1 - (MotorEvidence.Drooping(facts) ?? 1)) > facts.Options.SameSpeed.Value;

    private static bool Slipped(Answer<SlipLocation> speeds) =>
        speeds.Is(out SlipLocation? located) && SlipFacts.Shows(located);

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
                ByPasses(facts.Machine, passes),
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
        bool roller = RollerContradicts(facts);
        if (roller)
        {
            yield return OfRoller(facts, AgainstRoller(facts)!.Value);
        }

        if (RunsAhead(facts))
        {
            yield return OfAhead(facts);
        }

        bool twice = DisplaysContradict(facts);
        if (twice)
        {
            yield return OfTwo(facts);
        }

        if (
            !roller
            && !twice
            && DisplayError(facts) is { } error
            && Math.Abs(error.Value) > 100 * facts.Options.DisplayError.Value
        )
        {
            yield return IsGross(facts, error) ? Gross(facts, error) : OfDisplay(facts, error);
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

    /// <summary>So large an error is a slip of the count more often than of the machine.</summary>
    private static Finding Gross(VisitFacts facts, Figure error) =>
        new()
        {
            Subject = Subject.Speed,
            Severity = Severity.Attend,
            Statement = OtherUnit(error, facts.Options)
                ? "Belt and display differ by just the ratio of miles and kilometres: one of the two was noted in the other unit."
                : "Belt and display are so far apart that one of the two was likely misread.",
            AlsoBy = [facts.Options.DisplayError.InPercent(), facts.Options.SameSpeed.InPercent()],
            Number = error,
            Limit = facts.Options.GrossDisplayError.InPercent(),
            For = ["Belt and display read at one time."],
            ForOwner = "The speed on the display is to be compared with that of the belt once more.",
            Next = ReadAgain(facts),
        };

    private static NextStep ReadAgain(VisitFacts facts) =>
        new()
        {
            Action =
                "Read belt and display again, unloaded: one mark only, every pass counted, the display's unit looked at. Set nothing before that.",
            Expect = $"Display and belt within {facts.Options.DisplayError.InPercent()}, or the same error twice.",
            StopAt = "Until then nobody trains by the displayed speed.",
            EffortMinutes = 5,
            Cautions = [Cautions.Clear, Cautions.Key],
        };

    private static Finding OfAhead(VisitFacts facts) =>
        new()
        {
            Subject = Subject.Readings,
            Severity = Severity.Attend,
            Statement = "Under load a belt seems to run ahead of what drives it: a speed was misread.",
            Limit = facts.Options.Slip.InPercent(),
            ForOwner = "The speeds of the drive are to be read once more.",
            Next = new()
            {
                Action =
                    $"Read motor, roller and belt again, unloaded and under {facts.Say.TestDemand}: one mark on each, so that no half or double speed is shown.",
                Expect = "Under load ratios as unloaded, or a belt that falls behind.",
                StopAt = "Do not tighten anything by these speeds.",
                EffortMinutes = 6,
                Cautions = [Cautions.Clear, Cautions.Key, Cautions.TestUser],
            },
        };

    private static Finding OfTwo(VisitFacts facts) =>
        new()
        {
            Subject = Subject.Speed,
            Severity = Severity.Attend,
            Statement = "Two readings of the empty belt at one displayed speed do not agree: one of them was misread.",
            Limit = facts.Options.DisplayError.InPercent(),
            AlsoBy = [facts.Options.SameSpeed.InPercent()],
            ForOwner = "The speed on the display is to be compared with that of the belt once more.",
            Next = ReadAgain(facts),
        };

    private static Finding OfRoller(VisitFacts facts, double off) =>
        new()
        {
            Subject = Subject.Readings,
            Severity = Severity.Attend,
            Statement =
                off < 0
                    ? "With nobody on it the belt runs slower than the face of its drive roller: a speed or the roller's diameter was misread, or the belt slips empty."
                    : "With nobody on it the belt runs faster than the face of its drive roller: a speed or the roller's diameter was misread.",
            Number = new("difference", 100 * off, "%"),
            Limit = facts.Options.RatioAgreement.InPercent(),
            ForOwner = "The speed of the belt is to be read once more.",
            Next = new()
            {
                Action =
                    "Read belt and roller again with nobody on the belt, and measure the roller's diameter. Set the display by none of them before that.",
                Expect = $"Belt and roller's face within {facts.Options.RatioAgreement.InPercent()}.",
                StopAt = "The same difference twice is slip: then wipe the roller and test the tension.",
                EffortMinutes = 8,
                Cautions = [Cautions.Unplug, Cautions.Clear],
            },
        };

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
            Against = facts.Slip.ShowsNow ? ["The belt slips: read both again, unloaded, once it holds."] : [],
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
