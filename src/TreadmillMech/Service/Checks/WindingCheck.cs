using TreadmillMech.Laws;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Temperature of a copper winding from its resistance cold and now.</summary>
/// <remarks>
/// Mean over the winding; its hottest spot is hotter. Read the hot one at once: the winding cools within seconds. On a brushed
/// motor, brushes and their place on the commutator add more than the copper's change; turn the shaft and read several times.
/// Unplugged, capacitors dead.
/// </remarks>
public sealed record WindingCheck
{
    private const double Coldest = -60;
    private const double Hottest = 400;

    /// <summary>Temperature of the winding.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Its standard uncertainty.</summary>
    public required TemperatureDelta StandardUncertainty { get; init; }

    /// <summary>Rise above the cold temperature.</summary>
    public required TemperatureDelta Rise { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(WindingCheck),
            (nameof(Temperature), Temperature),
            (nameof(StandardUncertainty), StandardUncertainty),
            (nameof(Rise), Rise)
        );

    /// <summary>The temperature from two resistances of one winding, read with the same meter on the same leads.</summary>
    /// <param name="cold">Resistance cold, 0.01 to 200 ohm.</param>
    /// <param name="coldTemperature">Temperature of the winding then, -20 to 60 deg C: after a night in the room.</param>
    /// <param name="coldUncertainty">Standard uncertainty of that temperature, 0 to 20 K.</param>
    /// <param name="hot">Resistance now, 0.01 to 400 ohm.</param>
    /// <returns>The temperature; no answer where it would be one that no winding has.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<WindingCheck> Of(
        Estimate<ElectricResistance> cold,
        Temperature coldTemperature,
        TemperatureDelta coldUncertainty,
        Estimate<ElectricResistance> hot
    )
    {
        (double Value, double Uncertainty) before = ReadValue.Read(cold, Si.Resistance, 0.01, 200);
        (double Value, double Uncertainty) now = ReadValue.Read(hot, Si.Resistance, 0.01, 400);
        (double Value, double Uncertainty) room = (
            Si.Celsius.ToSi(Guard.Within(coldTemperature, Si.Celsius, -20, 60, nameof(coldTemperature))),
            Si.TemperatureRise.ToSi(Guard.Within(coldUncertainty, Si.TemperatureRise, 0, 20, nameof(coldUncertainty)))
        );
        (double temperature, double uncertainty) = ReadValue.Of(
            static x => ThermalLaws.CopperTemperature(x[0], x[1], x[2]),
            before,
            now,
            room
        );
        return temperature is >= Coldest and <= Hottest
            ? new WindingCheck
            {
                Temperature = Si.Celsius.FromSi(temperature),
                StandardUncertainty = Si.TemperatureRise.FromSi(uncertainty),
                Rise = Si.TemperatureRise.FromSi(temperature - room.Value),
            }
            : new Shortfall(
                Reason.ReadingsContradict,
                nameof(hot),
                temperature < Coldest ? Coldest : Hottest,
                temperature,
                "deg C"
            );
    }
}
