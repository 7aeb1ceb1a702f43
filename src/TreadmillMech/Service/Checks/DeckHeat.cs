using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How warm the friction of the belt makes the deck.</summary>
/// <remarks>
/// An estimate: the heat of friction spreads over deck and belt as one body, which gives it off by the conductance. That is found from a
/// run until the temperature stands: friction power over rise. Places under the feet are hotter than the mean.
/// </remarks>
public sealed record DeckHeat
{
    /// <summary>Mean power of friction between belt and deck.</summary>
    public required Power FrictionPower { get; init; }

    /// <summary>Temperature rise that it leads to in the end.</summary>
    public required TemperatureDelta FinalRise { get; init; }

    /// <summary>Temperature rise after the time; no answer where time or time constant is not given.</summary>
    public required Answer<TemperatureDelta> RiseAfter { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DeckHeat),
            (nameof(FrictionPower), FrictionPower),
            (nameof(FinalRise), FinalRise),
            (nameof(RiseAfter), RiseAfter)
        );

    /// <summary>The heat of a machine's deck.</summary>
    /// <param name="machine">The machine; its deck friction must be known.</param>
    /// <param name="demand">The demand, taken as lasting.</param>
    /// <param name="conductance">Heat given off by deck and belt for each kelvin, 0.1 to 500 W/K.</param>
    /// <param name="timeConstant">Time constant of heating, 10 s to 24 h; null where not measured.</param>
    /// <param name="time">Time from cold, 0 to 24 h; null where not asked.</param>
    /// <returns>The heat; no answer where the deck's friction is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<DeckHeat> Of(
        Treadmill machine,
        Demand demand,
        ThermalConductance conductance,
        Duration? timeConstant = null,
        Duration? time = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double given = Si.ThermalConductance.ToSi(
            Guard.Within(conductance, Si.ThermalConductance, 0.1, 500, nameof(conductance))
        );
        Answer<double> constant = Inquiry
            .Of(Guard.Within(timeConstant, Si.Duration, 10, 86400, nameof(timeConstant)), "TimeConstant")
            .Then(Si.Duration.ToSi);
        Answer<double> after = Inquiry
            .Of(Guard.Within(time, Si.Duration, 0, 86400, nameof(time)), "Time")
            .Then(Si.Duration.ToSi);
        return machine
            .At(demand)
            .DeckFrictionPower.Then(power =>
            {
                double final = DeckWearLaws.FinalRise<Real>(Si.Power.ToSi(power), given);
                return new DeckHeat
                {
                    FrictionPower = power,
                    FinalRise = Si.TemperatureRise.FromSi(final),
                    RiseAfter = constant.Ask(tau =>
                        after.Then(t => Si.TemperatureRise.FromSi(ThermalLaws.RiseAfter<Real>(final, 0, t, tau)))
                    ),
                };
            });
    }
}
