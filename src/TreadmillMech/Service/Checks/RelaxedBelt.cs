using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What is left of a belt's tension some time after it was fitted or tightened, and of its margin.</summary>
/// <remarks>A straight line over the logarithm of time, with a loss that is to be measured: two readings tell it.</remarks>
public sealed record RelaxedBelt
{
    /// <summary>Strand tension at rest that is left.</summary>
    public required Force Tension { get; init; }

    /// <summary>Share of the first tension that is lost.</summary>
    public required Ratio Lost { get; init; }

    /// <summary>Margin of the running belt at the first time.</summary>
    public required Answer<double> MarginBefore { get; init; }

    /// <summary>Margin of the running belt at the later time.</summary>
    public required Answer<double> MarginAfter { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(RelaxedBelt),
            (nameof(Tension), Tension),
            (nameof(Lost), Lost),
            (nameof(MarginBefore), MarginBefore),
            (nameof(MarginAfter), MarginAfter)
        );

    /// <summary>The belt of a machine some time after fitting.</summary>
    /// <param name="machine">The machine; its tension is that at the first time.</param>
    /// <param name="demand">The demand the margins are told for.</param>
    /// <param name="lossPerDecade">Share of the first tension lost in each tenfold of time, 0 to 50 %.</param>
    /// <param name="firstTime">Time since fitting at which the tension was found, 1 s to 30 days.</param>
    /// <param name="time">Time since fitting that is asked for, from the first time to 30 years.</param>
    /// <returns>The belt then; no answer where the tension is not known, or nothing of it would be left.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<RelaxedBelt> Of(
        Treadmill machine,
        Demand demand,
        Ratio lossPerDecade,
        Duration firstTime,
        Duration time
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double loss = Si.Ratio.ToSi(Guard.Within(lossPerDecade, Si.Ratio, 0, 0.5, nameof(lossPerDecade)));
        double first = Si.Duration.ToSi(Guard.Within(firstTime, Si.Duration, 1, 2.592e6, nameof(firstTime)));
        double later = Si.Duration.ToSi(Guard.Within(time, Si.Duration, first, 9.4608e8, nameof(time)));
        double decades = BeltLifeLaws.Decades<Real>(first, later);
        return Inquiry
            .TautTension(new(machine))
            .Ask(tension =>
                Inquiry
                    .Taut(BeltLifeLaws.RelaxedTension<Real>(tension, loss, decades))
                    .Then(left => new RelaxedBelt
                    {
                        Tension = Si.Force.FromSi(left),
                        Lost = Si.Ratio.FromSi(1 - (left / tension)),
                        MarginBefore = machine.At(demand).BeltMargin,
                        MarginAfter = ChangedMachine.AtTension(machine, left).At(demand).BeltMargin,
                    })
            );
    }
}
