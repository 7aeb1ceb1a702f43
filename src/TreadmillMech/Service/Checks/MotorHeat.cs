using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How warm a direct-current motor grows under a demand that lasts.</summary>
/// <remarks>
/// Heat of the copper alone; brushes and iron come on top. The current is that of a held belt speed: a flywheel smooths it
/// and heats less. At one current a slow belt is the worst case, as in heavy walking: the shaft's fan hardly turns.
/// </remarks>
public sealed record MotorHeat
{
    /// <summary>Heat of the copper at the temperature of the air.</summary>
    public required Power ColdLoss { get; init; }

    /// <summary>How near to running away it is: below 1 a steady temperature exists.</summary>
    public required double RunawayRatio { get; init; }

    /// <summary>Temperature at which the winding settles; no answer where it runs away.</summary>
    public required Answer<Temperature> Settled { get; init; }

    /// <summary>Time from cold to a limit; no answer where it is never reached, or the time constant is not known.</summary>
    public required Answer<Duration> TimeToLimit { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(MotorHeat),
            (nameof(ColdLoss), ColdLoss),
            (nameof(RunawayRatio), RunawayRatio),
            (nameof(Settled), Settled),
            (nameof(TimeToLimit), TimeToLimit)
        );

    /// <summary>The heat of a machine's motor under a demand.</summary>
    /// <param name="machine">The machine; motor constant, friction and resistance must be known.</param>
    /// <param name="demand">The demand, taken as lasting.</param>
    /// <param name="cooling">How the motor gives off heat.</param>
    /// <param name="limit">Temperature the winding must not pass, 40 to 220 deg C, by its insulation class.</param>
    /// <returns>The heat; no answer where the current cannot be told.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The limit is outside the range.</exception>
    public static Answer<MotorHeat> Of(Treadmill machine, Demand demand, MotorCooling cooling, Temperature limit)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(cooling);
        double hottest = Si.Celsius.ToSi(Guard.Within(limit, Si.Celsius, 40, 220, nameof(limit)));
        double ambient = Si.Celsius.ToSi(cooling.Ambient);
        if (machine.Motor?.Resistance is not { } resistance)
        {
            return new Shortfall(Reason.InputUnknown, "ArmatureResistance");
        }

        OperatingPoint point = machine.At(demand);
        double cold = DcMotorLaws.CopperResistance<Real>(
            Si.Resistance.ToSi(resistance),
            Si.Celsius.ToSi(machine.Motor.ResistanceTemperature),
            ambient
        );
        double speedShare = Si.RotationalSpeed.ToSi(point.MotorSpeed) / Si.RotationalSpeed.ToSi(cooling.RatedSpeed);
        double conductance = ThermalLaws.FanConductance<Real>(
            Si.ThermalConductance.ToSi(cooling.Still),
            Si.ThermalConductance.ToSi(cooling.Fan),
            speedShare
        );
        return point.RmsCurrent.Then(current =>
            At(
                DcMotorLaws.CopperLoss<Real>(Si.Current.ToSi(current), cold),
                ambient,
                conductance,
                hottest,
                cooling.TimeConstant
            )
        );
    }

    private static MotorHeat At(double loss, double ambient, double conductance, double limit, Duration? timeConstant)
    {
        double coefficient = ThermalLaws.CopperCoefficient<Real>(ambient);
        double runaway = ThermalLaws.RunawayRatio<Real>(loss, coefficient, conductance);
        double rise = ThermalLaws.CopperRise<Real>(loss, coefficient, conductance);
        Answer<Temperature> settled =
            runaway < 1
                ? Si.Celsius.FromSi(ambient + rise)
                : new Shortfall(Reason.ThermalRunaway, "RunawayRatio", runaway, 1, "1");
        return new()
        {
            ColdLoss = Si.Power.FromSi(loss),
            RunawayRatio = runaway,
            Settled = settled,
            TimeToLimit = timeConstant is { } tau
                ? TimeTo(
                    limit - ambient,
                    rise,
                    DeckWearLaws.FinalRise<Real>(loss, conductance),
                    runaway,
                    Si.Duration.ToSi(tau)
                )
                : new Shortfall(Reason.InputUnknown, nameof(MotorCooling.TimeConstant)),
        };
    }

    /// <summary>From cold; beyond a runaway ratio of 1 every limit is reached, and a limit below the air's temperature at once.</summary>
    private static Answer<Duration> TimeTo(
        double rise,
        double finalRise,
        double coldFinalRise,
        double runaway,
        double timeConstant
    ) =>
        runaway < 1 && rise >= finalRise
            ? new Shortfall(Reason.NotInRange, "Settled", rise, finalRise, "K")
            : Si.Duration.FromSi(
                ThermalLaws.CopperTimeToRise<Real>(Math.Max(0, rise), coldFinalRise, runaway, timeConstant)
            );
}
