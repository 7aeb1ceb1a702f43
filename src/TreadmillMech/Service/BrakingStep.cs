using UnitsNet;

namespace TreadmillMech.Service;

/// <summary>A deliberate braking step, stated as the ordinary runner or walker it stands for.</summary>
/// <param name="Mass">Mass of the ordinary user with the same peak pull at the same speed.</param>
/// <param name="LightestMass">That mass where ordinary users brake a fifth harder than the model says.</param>
/// <param name="HeaviestMass">That mass where they brake a fifth less.</param>
public sealed record BrakingStep(Mass Mass, Mass LightestMass, Mass HeaviestMass)
{
    private const double SpreadOfBraking = 0.2;

    /// <summary>The ordinary user that a braking step stands for.</summary>
    /// <param name="machine">The machine; of it deck friction and belt drag must be known.</param>
    /// <param name="demand">The demand with its braking step.</param>
    /// <returns>The masses; no answer where deck friction or drag is unknown, or the demand has no braking step.</returns>
    /// <remarks>
    /// The pull above the belt's drag goes with the user's mass at a given speed, so the mass follows in proportion:
    /// $$m' = m\,\frac{F_{step} - F_0}{F_{ordinary} - F_0}$$ The band is that of the braking peak between people, 20 %
    /// (see <see cref="Laws.GaitLaws.BrakingPeak"/>).
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    public static Answer<BrakingStep> Of(Treadmill machine, Demand demand)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        if (demand.BrakingStep is null)
        {
            return new Shortfall(Reason.InputUnknown, "BrakingStep");
        }

        Answer<Force> peak = machine.At(demand).PeakPull;
        if (!peak.Is(out Force step))
        {
            return peak.Missing;
        }

        double leg = Scenario.OfDemand(demand).Numbers.LegLength;
        double scale = Laws.GaitLaws.LegScale<Numbers.Real>(leg, Model.OperatingPointModel.ReferenceLeg);
        double usual = Laws.GaitLaws.BrakingPeak<Numbers.Real>(scale * Si.Speed.ToSi(demand.Speed));
        double drag = Si.Force.ToSi(machine.BeltDrag ?? Si.Force.FromSi(0));
        double excess = Si.Force.ToSi(step) - drag;
        double own = Si.Mass.ToSi(demand.Person.Mass);
        Mass StandsFor(double braking)
        {
            Force ordinary = machine.At(demand with { BrakingStep = braking }).PeakPull.Value;
            return Si.Mass.FromSi(own * excess / (Si.Force.ToSi(ordinary) - drag));
        }

        return new BrakingStep(
            StandsFor(usual),
            StandsFor((1 + SpreadOfBraking) * usual),
            StandsFor((1 - SpreadOfBraking) * usual)
        );
    }

    /// <summary>The mass it stands for, with its band; invariant.</summary>
    public override string ToString() =>
        $"stands for {ResultText.Of(Mass)} ({ResultText.Of(LightestMass)} to {ResultText.Of(HeaviestMass)})";
}
