using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Readings that cannot be used, each by name with the reason.</summary>
internal static class ReadingCheck
{
    internal static List<RefusedReading> Refuse(Visit visit, VisitOptions options)
    {
        List<RefusedReading> refused = [];
        for (int i = 0; i < visit.Events.Length; i++)
        {
            if (Why(visit, i, options) is { } why)
            {
                refused.Add(new(i, Name(visit.Events[i]), why));
            }
        }

        return refused;
    }

    /// <summary>Whether two belt speeds [m/s] count as the same.</summary>
    internal static bool Same(double speed, double other, VisitOptions options) =>
        Math.Abs(speed - other) <= options.SameSpeed.Value * other;

    /// <summary>Whether a current under load is the controller's limit.</summary>
    internal static bool AtLimit(Treadmill machine, MotorCurrentReading reading, VisitOptions options) =>
        reading.State == LoadState.Loaded
        && machine.Motor?.CurrentLimit is { } limit
        && Si.Current.ToSi(reading.Current) >= options.AtLimit.Value * Si.Current.ToSi(limit);

    private static string Name(VisitEvent happened) =>
        happened switch
        {
            MotorCurrentReading => "motor current",
            MainsCurrentReading => "mains current",
            MainsPowerReading => "mains power",
            PullReading => "dead-weight pull",
            SpeedReading => "speeds",
            LockedPullReading => "locked pull",
            PassesReading => "counted passes",
            DriveBeltReading => "look under the hood",
            _ => "reading",
        };

    private static string? Why(Visit visit, int index, VisitOptions options) =>
        visit.Events[index] switch
        {
            MotorCurrentReading current => OfMotor(current)
                ?? BeyondLimit(visit.Machine, current, options)
                ?? BelowUnloaded<MotorCurrentReading>(visit, index, "current", options),
            MainsCurrentReading mains => OfMains(mains)
                ?? BelowUnloaded<MainsCurrentReading>(visit, index, "current", options),
            MainsPowerReading => BelowUnloaded<MainsPowerReading>(visit, index, "power", options),
            PullReading pull when Si.Force.ToSi(pull.LoadedPull) <= Si.Force.ToSi(pull.EmptyPull) =>
                "The loaded pull is not above the empty one; a mass can only add friction. Pull again, slowly and level.",
            PassesReading passes
                when SpeedRules.ByPasses(visit.Machine, passes) is var counted and > SpeedRules.FastestBelt =>
                $"So many passes in that time are {new Figure("", 3.6 * counted, "km/h")}, which no belt runs; count the mark again, and look in which unit the time was noted.",
            SpeedReading speeds when Count(speeds) < 2 =>
                "One speed alone tells no ratio; read at least two of motor, roller and belt together.",
            DriveBeltReading
            or LockedPullReading { Slid: SlidContact.DriveBelt } when visit.Machine.DriveBelt is null =>
                "The machine as described has no drive belt; describe it, or look again at what was seen.",
            _ => null,
        };

    private static string? OfMotor(MotorCurrentReading reading) =>
        Unfit(reading.Form, reading.Response, MeteredQuantity.MotorCurrent)
        ?? (
            reading.Zeroed
                ? null
                : "A direct-current clamp that was not zeroed carries an unknown offset; zero it and read again."
        );

    private static string? BeyondLimit(Treadmill machine, MotorCurrentReading reading, VisitOptions options) =>
        machine.Motor?.CurrentLimit is { } limit
        && Si.Current.ToSi(reading.Current) > options.MostOfLimit.Value * Si.Current.ToSi(limit)
            ? $"The controller's limit is {new Figure("", Si.Current.ToSi(limit), "A")}, and lets no such current through; look at the clamp's range and the decimal point, and read again."
            : null;

    private static string? OfMains(MainsCurrentReading reading) =>
        Unfit(reading.Form, reading.Response, MeteredQuantity.MainsCurrent);

    private static string? Unfit(CurrentForm form, MeterResponse response, MeteredQuantity quantity)
    {
        MeterUse use = MeterTable.Of(MeterTable.Kind(form, response), quantity);
        return use.Fitness == MeterFitness.Reads ? null : use.Why;
    }

    /// <summary>
    /// Whether the drive surely carries what is on the belt: uphill the weight of the user drives, and a drive that cannot
    /// brake then shows nothing, however strong the user.
    /// </summary>
    internal static bool Drives<TReading>(Visit visit, int index, VisitOptions options)
        where TReading : Reading =>
        NotUphill(visit)
        || visit.Machine.Motor is { CanBrake: true }
        || Compared(visit.Events[index]) is not { State: LoadState.Loaded } loaded
        || UnloadedBeside<TReading>(visit, index, loaded.Speed, options)
            .Select(unloaded => loaded.Value >= unloaded)
            .DefaultIfEmpty(false)
            .All(static carries => carries);

    private static string? BelowUnloaded<TReading>(Visit visit, int index, string what, VisitOptions options)
        where TReading : Reading =>
        Compared(visit.Events[index]) is { State: LoadState.Loaded } loaded
        && NotUphill(visit)
        && UnloadedBeside<TReading>(visit, index, loaded.Speed, options).Any(unloaded => loaded.Value < unloaded)
            ? $"The loaded {what} is below the unloaded one at the same speed, though nobody walked uphill; one of the two is wrong. Read both again."
            : null;

    /// <summary>What was read of the empty belt at a speed [m/s], before or after a reading.</summary>
    private static IEnumerable<double> UnloadedBeside<TReading>(
        Visit visit,
        int index,
        double speed,
        VisitOptions options
    )
        where TReading : Reading =>
        Beside<TReading>(visit, index)
            .Select(Compared)
            .Where(other => other is { State: LoadState.Unloaded } empty && Same(empty.Speed, speed, options))
            .Select(static other => other!.Value.Value);

    /// <summary>What a usable electrical reading is compared by, in SI units; null for any other event.</summary>
    private static (LoadState State, double Speed, double Value)? Compared(VisitEvent happened) =>
        happened switch
        {
            MotorCurrentReading r when OfMotor(r) is null => (
                r.State,
                Si.Speed.ToSi(r.BeltSpeed),
                Si.Current.ToSi(r.Current)
            ),
            MainsCurrentReading r when OfMains(r) is null => (
                r.State,
                Si.Speed.ToSi(r.BeltSpeed),
                Si.Current.ToSi(r.Current)
            ),
            MainsPowerReading r => (r.State, Si.Speed.ToSi(r.BeltSpeed), Si.Power.ToSi(r.Power)),
            _ => null,
        };

    /// <summary>Uphill the user's weight drives the belt and may well relieve the motor; on the level or downhill never.</summary>
    private static bool NotUphill(Visit visit) => Si.Ratio.ToSi(visit.TestDemand.Grade) <= 0;

    /// <summary>Readings before and after this one, up to the work on the deck on either side.</summary>
    private static IEnumerable<TReading> Beside<TReading>(Visit visit, int index) =>
        visit
            .Events.Take(index)
            .Reverse()
            .TakeWhile(NoWork)
            .Concat(visit.Events.Skip(index + 1).TakeWhile(NoWork))
            .OfType<TReading>();

    private static bool NoWork(VisitEvent happened) => happened is not CleanAction and not LubricateAction;

    private static int Count(SpeedReading speeds) =>
        (speeds.Motor is null ? 0 : 1) + (speeds.DriveRoller is null ? 0 : 1) + (speeds.Belt is null ? 0 : 1);
}
