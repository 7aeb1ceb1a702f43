using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How much of a loss of speed is the belt's elastic creep, which is normal, and how much is slip.</summary>
public sealed record BeltCreep
{
    /// <summary>Creep at the mean pull.</summary>
    public required Ratio AtMeanPull { get; init; }

    /// <summary>Creep at the largest pull over the stride.</summary>
    public required Ratio AtPeakPull { get; init; }

    /// <summary>Measured slip beyond the creep at the mean pull; no answer where no slip was measured.</summary>
    public required Answer<Ratio> SlipBeyondCreep { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(BeltCreep),
            (nameof(AtMeanPull), AtMeanPull),
            (nameof(AtPeakPull), AtPeakPull),
            (nameof(SlipBeyondCreep), SlipBeyondCreep)
        );

    /// <summary>The creep of a machine's belt under a demand.</summary>
    /// <param name="machine">The machine; deck friction, belt drag and the belt's stiffness must be known.</param>
    /// <param name="demand">The demand.</param>
    /// <param name="measuredSlip">Loss of the belt's speed against the drive roller's, loaded against unloaded, -50 to 100 %; null where not measured.</param>
    /// <returns>The creep; no answer where pull or stiffness is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The slip is outside its range.</exception>
    public static Answer<BeltCreep> Of(Treadmill machine, Demand demand, Ratio? measuredSlip = null)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        Answer<double> slip = Inquiry
            .Of(Guard.Within(measuredSlip, Si.Ratio, -0.5, 1, nameof(measuredSlip)), "MeasuredSlip")
            .Then(Si.Ratio.ToSi);
        OperatingPoint point = machine.At(demand);
        return Inquiry
            .Stiffness(new(machine))
            .Ask(stiffness =>
                point.MeanPull.Ask(mean =>
                    point.PeakPull.Then(peak =>
                    {
                        double creep = BeltLifeLaws.Creep<Real>(Si.Force.ToSi(mean), 0, stiffness);
                        return new BeltCreep
                        {
                            AtMeanPull = Si.Ratio.FromSi(creep),
                            AtPeakPull = Si.Ratio.FromSi(BeltLifeLaws.Creep<Real>(Si.Force.ToSi(peak), 0, stiffness)),
                            SlipBeyondCreep = slip.Then(lost => Si.Ratio.FromSi(lost - creep)),
                        };
                    })
                )
            );
    }
}
