using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What one turn of both bolts brings the belt, with frame and bolts giving way.</summary>
/// <remarks>A roller without a hub stiffness counts as rigidly mounted.</remarks>
public sealed record TurnYield
{
    /// <summary>Strain of one turn if nothing gave way.</summary>
    public required Ratio RigidStrain { get; init; }

    /// <summary>Strain of one turn that reaches the belt.</summary>
    public required Ratio Strain { get; init; }

    /// <summary>Gain of strand tension of one turn.</summary>
    public required Force TensionGain { get; init; }

    /// <summary>Share of each turn that is lost in frame and bolts.</summary>
    public required Ratio LostShare { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TurnYield),
            (nameof(RigidStrain), RigidStrain),
            (nameof(Strain), Strain),
            (nameof(TensionGain), TensionGain),
            (nameof(LostShare), LostShare)
        );

    /// <summary>The yield of a turn on a machine.</summary>
    /// <param name="machine">The machine; of it geometry, stiffness, take-up and the rollers' hub stiffness.</param>
    /// <param name="rod">The loaded part of each bolt as a spring; null to leave it out, or where the hub stiffness has it.</param>
    /// <returns>The yield; no answer where the belt's stiffness, or with a rod the thread's diameter, is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static Answer<TurnYield> Of(Treadmill machine, BoltRod? rod = null)
    {
        ArgumentNullException.ThrowIfNull(machine);
        LoopGeometry loop = new(machine);
        return RodCompliance(machine.TakeUp, rod)
            .Ask(bolts => Inquiry.Stiffness(loop).Then(stiffness => At(loop, stiffness, bolts)));
    }

    private static TurnYield At(LoopGeometry loop, double stiffness, double bolts)
    {
        double compliant = BeltLaws.CompliantLength<Real>(
            stiffness,
            loop.Numbers.DriveHubCompliance + loop.Numbers.TailHubCompliance + bolts
        );
        double turn = loop.Lengthening(1, 1);
        double gain = BeltLaws.TensionGain<Real>(stiffness, turn, loop.Length, compliant);
        return new()
        {
            RigidStrain = Si.Ratio.FromSi(turn / loop.Length),
            Strain = Si.Ratio.FromSi(gain / stiffness),
            TensionGain = Si.Force.FromSi(gain),
            LostShare = Si.Ratio.FromSi(BeltLaws.SpringLoss<Real>(loop.Length, compliant)),
        };
    }

    private static Answer<double> RodCompliance(TakeUp takeUp, BoltRod? rod) =>
        rod is null
            ? 0
            : Inquiry
                .Of(takeUp.Thread.StressArea, nameof(ScrewThread.NominalDiameter))
                .Then(area =>
                    (double)
                        TakeUpLaws.BoltCompliance<Real>(
                            Si.Area.ToSi(area),
                            Si.Pressure.ToSi(rod.ElasticModulus),
                            Si.Length.ToSi(rod.FreeLength),
                            takeUp.Bolts,
                            Si.Angle.ToSi(takeUp.BoltAngle)
                        )
                );
}
