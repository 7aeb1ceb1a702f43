using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What a take-up bolt carries: how hard it turns at this tension, and whether it holds.</summary>
/// <remarks>Friction scatters: the torques are right to a quarter at best. "Suddenly hard to turn" means stop.</remarks>
public sealed record BoltCheck
{
    private const double HalfThreadAngle = Math.PI / 6;

    /// <summary>Axial force of one bolt: its share of the adjusted roller's load at rest.</summary>
    public required Force AxialForce { get; init; }

    /// <summary>Torque in the thread while tightening; no answer where only the lead of the thread is known.</summary>
    public required Answer<Torque> TighteningTorque { get; init; }

    /// <summary>Torque in the thread while loosening; negative where the load would turn the bolt by itself.</summary>
    public required Answer<Torque> LooseningTorque { get; init; }

    /// <summary>Friction over tangent of the lead angle: above 1 the bolt holds its place by itself.</summary>
    public required Answer<double> LockingRatio { get; init; }

    /// <summary>Axial stress over the proof stress of its class; well below 1 it holds.</summary>
    public required Answer<double> ProofShare { get; init; }

    /// <summary>Checks the take-up bolts of a machine at its strand tension.</summary>
    /// <param name="machine">The machine; of it tension, rollers and take-up.</param>
    /// <param name="friction">Friction in the thread, 0.02 to 0.6; about 0.15 for dry steel (common practice).</param>
    /// <param name="boltClass">Property class of the bolts.</param>
    /// <returns>The check; no answer where the tension is not known.</returns>
    /// <remarks>
    /// Each of two bolts carries half of the two strands, one bolt both; the bolts' angle to the strands adds its share. A
    /// collar or washer under the head adds its own friction, see <see cref="ScrewTorqueLaws.CollarTorque"/>.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Friction or class is outside its range.</exception>
    public static Answer<BoltCheck> Of(
        Treadmill machine,
        double friction = 0.15,
        BoltClass boltClass = BoltClass.Class8P8
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        double rubbing = Guard.Within(friction, Si.One, 0.02, 0.6, nameof(friction));
        double proof = ProofStress(Guard.Defined(boltClass, nameof(boltClass)));
        LoopGeometry loop = new(machine);
        return loop.Tension.Then(tension => At(machine.TakeUp, loop, tension, rubbing, proof));
    }

    private static BoltCheck At(TakeUp takeUp, LoopGeometry loop, double tension, double friction, double proof)
    {
        double hub = HubLaws.HubLoad<Real>(tension, tension, loop.TailWrap);
        double axial = hub / takeUp.Bolts / Math.Cos(Si.Angle.ToSi(takeUp.BoltAngle));
        Answer<Length> known = takeUp.Thread.NominalDiameter is { } nominal
            ? nominal
            : new Shortfall(Reason.InputUnknown, "NominalDiameter");
        double lead = Si.Length.ToSi(takeUp.Thread.Lead);
        Answer<double> mean = known.Then(d => (double)ScrewThreadLaws.PitchDiameter<Real>(Si.Length.ToSi(d), lead));
        return new()
        {
            AxialForce = Si.Force.FromSi(axial),
            TighteningTorque = mean.Then(d =>
                Si.Torque.FromSi(ScrewTorqueLaws.RaisingTorque<Real>(axial, d, lead, friction, HalfThreadAngle))
            ),
            LooseningTorque = mean.Then(d =>
                Si.Torque.FromSi(ScrewTorqueLaws.LoweringTorque<Real>(axial, d, lead, friction, HalfThreadAngle))
            ),
            LockingRatio = mean.Then(d =>
                (double)ScrewTorqueLaws.LockingRatio<Real>(d, lead, friction, HalfThreadAngle)
            ),
            ProofShare = known.Then(_ =>
                ScrewTorqueLaws.AxialStress<Real>(axial, Si.Area.ToSi(takeUp.Thread.StressArea!.Value)).Value / proof
            ),
        };
    }

    /// <summary>Proof stress [Pa]: ISO 898-1, 8.8 read there, the others from memory.</summary>
    private static double ProofStress(BoltClass boltClass) =>
        boltClass switch
        {
            BoltClass.Class4P6 => 225e6,
            BoltClass.Class5P8 => 380e6,
            BoltClass.Class10P9 => 830e6,
            BoltClass.Class12P9 => 970e6,
            _ => 580e6,
        };
}
