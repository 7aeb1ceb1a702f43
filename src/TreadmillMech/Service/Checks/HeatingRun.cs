using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Time constant and final temperature of a motor from a run under a constant load, before the end is reached.</summary>
/// <remarks>Two readings, the second after twice the time of the first. Load and fan must not change between them.</remarks>
public sealed record HeatingRun
{
    /// <summary>Time constant of heating.</summary>
    public required Duration TimeConstant { get; init; }

    /// <summary>Rise that the load would lead to.</summary>
    public required TemperatureDelta FinalRise { get; init; }

    /// <summary>Temperature that the load would lead to.</summary>
    public required Temperature FinalTemperature { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(HeatingRun),
            (nameof(TimeConstant), TimeConstant),
            (nameof(FinalRise), FinalRise),
            (nameof(FinalTemperature), FinalTemperature)
        );

    /// <summary>Heat given off for each kelvin, if the power turned into heat is known.</summary>
    /// <param name="loss">Power turned into heat, 0.1 W to 5 kW.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is outside the range.</exception>
    public ThermalConductance Conductance(Power loss) =>
        Si.ThermalConductance.FromSi(
            ThermalLaws.Conductance<Real>(
                Si.Power.ToSi(Guard.Within(loss, Si.Power, 0.1, 5000, nameof(loss))),
                Si.TemperatureRise.ToSi(FinalRise)
            )
        );

    /// <summary>Reads a run.</summary>
    /// <param name="cold">Temperature at the beginning, that of the air: -20 to 60 deg C.</param>
    /// <param name="first">Temperature after the time, up to 300 deg C.</param>
    /// <param name="second">Temperature after twice the time, up to 300 deg C.</param>
    /// <param name="time">The time, 1 min to 10 h.</param>
    /// <returns>The run; no answer where the second rise does not fall behind the first: then there is no end in sight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<HeatingRun> Of(Temperature cold, Temperature first, Temperature second, Duration time)
    {
        double begin = Si.Celsius.ToSi(Guard.Within(cold, Si.Celsius, -20, 60, nameof(cold)));
        double one = Si.Celsius.ToSi(Guard.Within(first, Si.Celsius, -20, 300, nameof(first))) - begin;
        double two = Si.Celsius.ToSi(Guard.Within(second, Si.Celsius, -20, 300, nameof(second))) - begin;
        double seconds = Si.Duration.ToSi(Guard.Within(time, Si.Duration, 60, 36000, nameof(time)));
        if (one <= 0 || two <= one)
        {
            return new Shortfall(Reason.NotObservable, nameof(second), one, two, "K");
        }

        if (two >= 2 * one)
        {
            return new Shortfall(Reason.ReadingsContradict, nameof(second), 2 * one, two, "K");
        }

        double rise = ThermalLaws.FinalRiseOfTwo<Real>(one, two);
        return new HeatingRun
        {
            TimeConstant = Si.Duration.FromSi(ThermalLaws.TimeConstantOfTwo<Real>(one, two, seconds)),
            FinalRise = Si.TemperatureRise.FromSi(rise),
            FinalTemperature = Si.Celsius.FromSi(begin + rise),
        };
    }
}
