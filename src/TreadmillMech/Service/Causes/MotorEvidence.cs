using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;
using UnitsNet;

namespace TreadmillMech.Service.Causes;

/// <summary>The motor and its controller. Bells and chances: common practice, no source.</summary>
internal static class MotorEvidence
{
    /// <summary>
    /// Motor constant from two unloaded points over that of the plate; that of a motor that is weak by its brushes or its
    /// winding is as ever.
    /// </summary>
    private static readonly Bell Constant = new(1, 1, 0.05, (Cause.MotorWeak, 0.8, 0.07))
    {
        Showing = new Dictionary<Cause, double> { [Cause.MotorWeak] = 0.6 },
    };

    /// <summary>Warmth of the motor's case above the air [K]; a limit that is reached in peaks need not warm it.</summary>
    internal static readonly Bell Warmth = new(
        200,
        32,
        10,
        (Cause.MotorWeak, 70, 15),
        (Cause.DeckDry, 48, 14),
        (Cause.BeltAndDeckWorn, 50, 14),
        (Cause.ControllerLimit, 50, 14)
    )
    {
        Showing = new Dictionary<Cause, double> { [Cause.ControllerLimit] = 0.6 },
    };

    private static readonly Chance ShortBrush = Chance.OfAFault(0.02, (Cause.MotorWeak, 0.5));

    private static readonly Chance AtLimit = new(
        0.01,
        (Cause.ControllerLimit, 0.95),
        (Cause.DeckDry, 0.1),
        (Cause.BeltAndDeckWorn, 0.12),
        (Cause.UserBeyondPlate, 0.1)
    );

    /// <summary>
    /// Speed of the motor under load over its unloaded one. A controller with voltage in reserve makes up for a weak motor
    /// or supply; what shuts off at its peaks may hold its mean.
    /// </summary>
    private static readonly Bell Droop = new(
        0.5,
        0.985,
        0.012,
        (Cause.ControllerLimit, 0.88, 0.06),
        (Cause.SupplyWeak, 0.92, 0.04),
        (Cause.MotorWeak, 0.93, 0.04),
        (Cause.DriveOverrun, 1.08, 0.05)
    )
    {
        Showing = new Dictionary<Cause, double>
        {
            [Cause.ControllerLimit] = 0.5,
            [Cause.SupplyWeak] = 0.5,
            [Cause.MotorWeak] = 0.5,
        },
    };

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        if (
            facts.Visit.Machine.Motor?.Constant is { } plate
            && facts.Friction.ConstantMeasured
            && facts.Friction.MotorConstant.Is(out Estimate<MotorConstant> measured)
        )
        {
            double ratio = measured.Value.VoltSecondsPerRadian / plate.VoltSecondsPerRadian;
            yield return Constant.Read(
                ratio,
                measured.StandardUncertainty.VoltSecondsPerRadian / plate.VoltSecondsPerRadian,
                $"The motor constant is {Words.Percent(ratio)} of the plate's."
            );
        }

        if (
            facts
                .Used<TemperatureReading>()
                .LastOrDefault(t => t.Place is WarmPlace.MotorCase or WarmPlace.MotorWinding) is
            { } warm
        )
        {
            double rise = Si.Celsius.ToSi(warm.Temperature) - Si.Celsius.ToSi(warm.Air);

            double ofCase = warm.Place == WarmPlace.MotorWinding ? rise - facts.Options.WindingOverCase.Value : rise;
            yield return Warmth.Read(ofCase, 3, $"The motor is {new Figure("", rise, "K")} above the air.");
        }

        if (facts.Used<BrushReading>().LastOrDefault() is { Least: { } least } brush)
        {
            yield return ShortBrush.Seen(
                Si.Length.ToSi(brush.Left) < Si.Length.ToSi(least),
                "A brush is shorter than the maker allows.",
                "The brushes are long enough."
            );
        }

        if (facts.Visit.Machine.Motor is { CurrentLimit: { } limit } && LoadedCurrent(facts) is { } current)
        {
            double share = current / Si.Current.ToSi(limit);
            yield return AtLimit.Seen(
                share >= facts.Options.AtLimit.Value,
                $"The motor's current under load is {Words.Percent(share)} of the controller's limit.",
                $"The motor's current under load is no more than {Words.Percent(share)} of the controller's limit.",
                facts.Options.AtLimit.InPercent()
            );
        }

        if (Drooping(facts) is { } droop)
        {
            yield return Droop.Read(
                droop,
                facts.Options.MeterSpeed.Value * Math.Sqrt(2),
                $"Under load the motor turns at {Words.Percent(droop)} of its unloaded speed."
            );
        }
    }

    private static double? LoadedCurrent(VisitFacts facts) =>
        facts
            .Used<MotorCurrentReading>()
            .Where(r => r.State == LoadState.Loaded)
            .Max(r => (double?)Si.Current.ToSi(r.Current));

    /// <summary>Motor speed under load over unloaded, at one displayed speed; null where it was not read.</summary>
    internal static double? Drooping(VisitFacts facts)
    {
        SpeedReading? unloaded = facts
            .Used<SpeedReading>()
            .FirstOrDefault(r => r is { State: LoadState.Unloaded, Motor: not null });
        SpeedReading? loaded = facts
            .Used<SpeedReading>()
            .FirstOrDefault(r => r is { State: LoadState.Loaded, Motor: not null });
        return unloaded is null || loaded is null || !SameSetting(facts, unloaded, loaded)
            ? null
            : Si.RotationalSpeed.ToSi(loaded.Motor!.Value) / Si.RotationalSpeed.ToSi(unloaded.Motor!.Value);
    }

    /// <summary>
    /// By the display where it was read both times; otherwise the loaded speeds are those of the test demand, and the empty
    /// belt must have run at that speed.
    /// </summary>
    private static bool SameSetting(VisitFacts facts, SpeedReading unloaded, SpeedReading loaded) =>
        unloaded.Display is { } first && loaded.Display is { } second
            ? Same(facts, first, second)
            : (unloaded.Belt ?? unloaded.Display) is { } empty && Same(facts, empty, facts.Visit.TestDemand.Speed);

    private static bool Same(VisitFacts facts, Speed one, Speed other) =>
        ReadingCheck.Same(Si.Speed.ToSi(one), Si.Speed.ToSi(other), facts.Options);
}
