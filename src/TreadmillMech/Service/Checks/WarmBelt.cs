using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What warmth does to a belt that was tensioned cold: it grows longer than the frame, and softer.</summary>
/// <remarks>Friction on roller and deck changes with warmth as well; that is not in it.</remarks>
public sealed record WarmBelt
{
    /// <summary>Strand tension at rest when warm.</summary>
    public required Force Tension { get; init; }

    /// <summary>Change of the strand tension; negative where it falls.</summary>
    public required Force Change { get; init; }

    /// <summary>Margin of the running belt when cold.</summary>
    public required Answer<double> MarginCold { get; init; }

    /// <summary>Margin of the running belt when warm.</summary>
    public required Answer<double> MarginWarm { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(WarmBelt),
            (nameof(Tension), Tension),
            (nameof(Change), Change),
            (nameof(MarginCold), MarginCold),
            (nameof(MarginWarm), MarginWarm)
        );

    /// <summary>The belt of a machine when warm.</summary>
    /// <param name="machine">The machine; its tension and stiffness are those when cold.</param>
    /// <param name="demand">The demand the margins are told for.</param>
    /// <param name="rise">Temperature rise of the belt over the frame and over the state it was tensioned in, 0.1 to 100 K.</param>
    /// <param name="expansion">Thermal expansion of the belt less that of the frame, -0.0005 to 0.0005 for each kelvin.</param>
    /// <param name="stiffnessLost">Share of its stiffness that the belt loses by that rise, 0 to 90 %.</param>
    /// <returns>The belt then; no answer where tension or stiffness is not known, or it would hang loose.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<WarmBelt> Of(
        Treadmill machine,
        Demand demand,
        TemperatureDelta rise,
        CoefficientOfThermalExpansion expansion,
        Ratio stiffnessLost
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double warmer = Si.TemperatureRise.ToSi(Guard.Within(rise, Si.TemperatureRise, 0.1, 100, nameof(rise)));
        double longer = Si.Expansion.ToSi(Guard.Within(expansion, Si.Expansion, -5e-4, 5e-4, nameof(expansion)));
        double softer = Si.Ratio.ToSi(Guard.Within(stiffnessLost, Si.Ratio, 0, 0.9, nameof(stiffnessLost)));
        LoopGeometry loop = new(machine);
        return Inquiry
            .TautTension(loop)
            .Ask(cold =>
                Inquiry
                    .Stiffness(loop)
                    .Ask(stiffness =>
                        Inquiry.Taut(BeltLifeLaws.WarmTension<Real>(cold, stiffness, longer, softer / warmer, warmer))
                    )
                    .Then(warm => new WarmBelt
                    {
                        Tension = Si.Force.FromSi(warm),
                        Change = Si.Force.FromSi(warm - cold),
                        MarginCold = machine.At(demand).BeltMargin,
                        MarginWarm = ChangedMachine.AtTension(machine, warm).At(demand).BeltMargin,
                    })
            );
    }
}
