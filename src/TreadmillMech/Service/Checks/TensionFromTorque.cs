using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What a torque reading on a take-up bolt says about the belt's tension: little, with its scatter.</summary>
/// <remarks>
/// The torque is that of the bolt turning against its load, head friction included. A lift test tells the tension better.
/// </remarks>
public sealed record TensionFromTorque
{
    /// <summary>Axial force of the bolt.</summary>
    public required Estimate<Force> AxialForce { get; init; }

    /// <summary>Strand tension, both bolts taken as equally loaded.</summary>
    public required Estimate<Force> StrandTension { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TensionFromTorque),
            (nameof(AxialForce), AxialForce),
            (nameof(StrandTension), StrandTension)
        );

    /// <summary>Reads the torque on a bolt of a machine.</summary>
    /// <param name="machine">The machine; of it rollers and take-up.</param>
    /// <param name="torque">Torque that turns the bolt slowly against its load, 0.05 to 200 N m.</param>
    /// <param name="nutFactor">Nut factor of the bolt.</param>
    /// <param name="torqueUncertainty">Relative standard uncertainty of the reading, 0 to 50 %.</param>
    /// <returns>The estimate; no answer where only the lead of the thread is known.</returns>
    /// <exception cref="ArgumentNullException">The machine or the factor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static Answer<TensionFromTorque> Of(
        Treadmill machine,
        Torque torque,
        NutFactor nutFactor,
        Ratio torqueUncertainty
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(nutFactor);
        double turning = Si.Torque.ToSi(Guard.Within(torque, Si.Torque, 0.05, 200, nameof(torque)));
        double relative = MeasurementLaws.RelativeUncertaintyOfTwo<Real>(
            Si.Ratio.ToSi(Guard.Within(torqueUncertainty, Si.Ratio, 0, 0.5, nameof(torqueUncertainty))),
            Si.Ratio.ToSi(nutFactor.ForceScatter)
        );

        // Force and tension go together: the force of a bolt at one newton of tension is the scale.
        double scale = BoltCheck.AxialForce(machine, new(machine), 1);
        return Inquiry
            .Of(machine.TakeUp.Thread.NominalDiameter, nameof(ScrewThread.NominalDiameter))
            .Then(nominal =>
            {
                double axial = ScrewTorqueLaws.ForceByNutFactor<Real>(
                    turning,
                    Si.Length.ToSi(nominal),
                    nutFactor.Value
                );
                return new TensionFromTorque
                {
                    AxialForce = Force(axial, relative),
                    StrandTension = Force(axial / scale, relative),
                };
            });
    }

    private static Estimate<Force> Force(double value, double relative) =>
        new(Si.Force.FromSi(value), Si.Force.FromSi(value * relative));
}
