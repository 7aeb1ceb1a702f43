using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>A screw under an axial force: how hard it turns both ways, whether it stays, and what it bears.</summary>
/// <remarks>
/// Friction scatters: torques are right to a quarter at best. Metric and unified threads have the same 60 degree profile;
/// of a thread whose lead alone is known only the force is told.
/// </remarks>
public sealed record ScrewCheck
{
    /// <summary>Axial force.</summary>
    public required Force AxialForce { get; init; }

    /// <summary>Torque against the load, collar included where given; no answer where only the lead is known.</summary>
    public required Answer<Torque> TighteningTorque { get; init; }

    /// <summary>Torque with the load, collar included where given; negative where the load turns the screw by itself.</summary>
    public required Answer<Torque> LooseningTorque { get; init; }

    /// <summary>Thread friction over the tangent of the lead angle: above 1 the thread holds without help of a collar.</summary>
    public required Answer<double> LockingRatio { get; init; }

    /// <summary>Share of the work of tightening that goes into the load.</summary>
    public required Answer<Ratio> Efficiency { get; init; }

    /// <summary>Nut factor that these frictions amount to; without a collar that of the thread alone.</summary>
    public required Answer<double> EffectiveNutFactor { get; init; }

    /// <summary>Axial stress on the stress area.</summary>
    public required Answer<Pressure> AxialStress { get; init; }

    /// <summary>Equivalent stress of pull and torsion while the screw is being tightened.</summary>
    public required Answer<Pressure> StressWhileTightening { get; init; }

    /// <summary>Force that the class bears without a lasting stretch; no answer where the class is not known.</summary>
    public required Answer<Force> ProofLoad { get; init; }

    /// <summary>Axial force over the proof load; no answer where the class is not known.</summary>
    public required Answer<double> ProofShare { get; init; }

    /// <summary>Equivalent stress while tightening over the proof stress; no answer where the class is not known.</summary>
    public required Answer<double> ProofShareWhileTightening { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(ScrewCheck),
            (nameof(AxialForce), AxialForce),
            (nameof(TighteningTorque), TighteningTorque),
            (nameof(LooseningTorque), LooseningTorque),
            (nameof(LockingRatio), LockingRatio),
            (nameof(Efficiency), Efficiency),
            (nameof(EffectiveNutFactor), EffectiveNutFactor),
            (nameof(AxialStress), AxialStress),
            (nameof(StressWhileTightening), StressWhileTightening),
            (nameof(ProofLoad), ProofLoad),
            (nameof(ProofShare), ProofShare),
            (nameof(ProofShareWhileTightening), ProofShareWhileTightening)
        );

    /// <summary>Checks a screw.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="axialForce">Axial force, 1 N to 1 MN.</param>
    /// <param name="friction">Friction in the thread, 0.02 to 0.6; about 0.15 for dry steel (common practice).</param>
    /// <param name="boltClass">Property class stamped on the head; null where there is no stamp.</param>
    /// <param name="collar">What rubs under head or nut; null where nothing does, or it runs on a bearing.</param>
    /// <exception cref="ArgumentNullException">The thread is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Force, friction or class is outside its range.</exception>
    public static ScrewCheck Of(
        ScrewThread thread,
        Force axialForce,
        double friction = 0.15,
        BoltClass? boltClass = null,
        Collar? collar = null
    )
    {
        ArgumentNullException.ThrowIfNull(thread);
        return At(
            thread,
            Si.Force.ToSi(Guard.Within(axialForce, Si.Force, 1, 1e6, nameof(axialForce))),
            Guard.Within(friction, Si.One, 0.02, 0.6, nameof(friction)),
            boltClass is { } known ? Guard.Defined(known, nameof(boltClass)) : null,
            collar
        );
    }

    internal static ScrewCheck At(
        ScrewThread thread,
        double axial,
        double friction,
        BoltClass? boltClass,
        Collar? collar
    )
    {
        double lead = Si.Length.ToSi(thread.Lead);
        Answer<ScrewTorques> torques = ScrewTorques.Of(thread, axial, friction, collar);
        Answer<double> area = Inquiry.Of(thread.StressArea, nameof(ScrewThread.NominalDiameter)).Then(Si.Area.ToSi);
        Answer<double> proof = Inquiry.Of(boltClass, nameof(BoltClass)).Then(ProofStress.Of);
        Answer<double> stress = area.Then(a => (double)ScrewTorqueLaws.AxialStress<Real>(axial, a));
        Answer<double> turning = area.Ask(a =>
            torques.Then(t =>
                (double)
                    ScrewTorqueLaws.EquivalentStress<Real>(
                        ScrewTorqueLaws.AxialStress<Real>(axial, a),
                        t.Thread,
                        ScrewThreadLaws.StressDiameter<Real>(a)
                    )
            )
        );
        return new()
        {
            AxialForce = Si.Force.FromSi(axial),
            TighteningTorque = torques.Then(t => Si.Torque.FromSi(t.Raising)),
            LooseningTorque = torques.Then(t => Si.Torque.FromSi(t.Lowering)),
            LockingRatio = torques.Then(t => t.Locking),
            Efficiency = torques.Then(t => Si.Ratio.FromSi(ScrewTorqueLaws.Efficiency<Real>(axial, lead, t.Raising))),
            EffectiveNutFactor = torques.Then(t =>
                (double)ScrewTorqueLaws.NutFactor<Real>(axial, t.NominalDiameter, t.Raising)
            ),
            AxialStress = stress.Then(Si.Pressure.FromSi),
            StressWhileTightening = turning.Then(Si.Pressure.FromSi),
            ProofLoad = proof.Ask(p => area.Then(a => Si.Force.FromSi(ScrewTorqueLaws.ProofLoad<Real>(p, a)))),
            ProofShare = proof.Ask(p => stress.Then(s => s / p)),
            ProofShareWhileTightening = proof.Ask(p => turning.Then(s => s / p)),
        };
    }
}
