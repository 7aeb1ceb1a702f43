using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Rise of a motor whose load takes turns with rest, once the cycle repeats itself.</summary>
public sealed record IntermittentHeat
{
    /// <summary>Rise at the end of each load.</summary>
    public required TemperatureDelta Highest { get; init; }

    /// <summary>Rise at the end of each rest.</summary>
    public required TemperatureDelta Lowest { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(IntermittentHeat), (nameof(Highest), Highest), (nameof(Lowest), Lowest));

    /// <summary>The rise in a repeating cycle.</summary>
    /// <param name="finalRise">Rise that the load would lead to if it lasted, 1 to 500 K.</param>
    /// <param name="load">Time under load, 1 s to 24 h.</param>
    /// <param name="rest">Time at rest, 0 to 24 h.</param>
    /// <param name="heatingConstant">Time constant while loaded, 1 min to 10 h.</param>
    /// <param name="coolingConstant">Time constant at rest, 1 min to 10 h; longer where a shaft fan stands still.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static IntermittentHeat Of(
        TemperatureDelta finalRise,
        Duration load,
        Duration rest,
        Duration heatingConstant,
        Duration coolingConstant
    )
    {
        double final = Si.TemperatureRise.ToSi(Guard.Within(finalRise, Si.TemperatureRise, 1, 500, nameof(finalRise)));
        double loaded = Si.Duration.ToSi(Guard.Within(load, Si.Duration, 1, 86400, nameof(load)));
        double resting = Si.Duration.ToSi(Guard.Within(rest, Si.Duration, 0, 86400, nameof(rest)));
        double heating = Si.Duration.ToSi(
            Guard.Within(heatingConstant, Si.Duration, 60, 36000, nameof(heatingConstant))
        );
        double cooling = Si.Duration.ToSi(
            Guard.Within(coolingConstant, Si.Duration, 60, 36000, nameof(coolingConstant))
        );
        double highest = ThermalLaws.DutyCycleRise<Real>(final, loaded, resting, heating, cooling);
        return new()
        {
            Highest = Si.TemperatureRise.FromSi(highest),
            Lowest = Si.TemperatureRise.FromSi(ThermalLaws.RiseAfter<Real>(0, highest, resting, cooling)),
        };
    }
}
