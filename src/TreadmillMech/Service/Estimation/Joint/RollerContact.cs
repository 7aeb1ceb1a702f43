using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>The running belt on its standing roller: tension, stiffness, friction of the roller.</summary>
internal sealed class RollerContact(
    LoopGeometry loop,
    bool rear,
    double lengthening,
    int tension,
    int stiffness,
    int roller
) : LockedContact("running belt", tension, stiffness, roller)
{
    internal override Dual<Lanes> Holds(ReadOnlySpan<Dual<Lanes>> at)
    {
        MachineNumbers<Real> x = loop.Numbers;
        Real distance = LoadStage.Distance(
            0.5 * loop.Span,
            0.5 * loop.DriveRadius * loop.DriveWrap,
            loop.Span,
            loop.Length,
            rear
        );
        Dual<Lanes> share = TractionLaws.LoadShare(
            distance.Value,
            loop.Length.Value,
            BeltLaws.CompliantLength(at[1], x.DriveHubCompliance.Value),
            BeltLaws.CompliantLength(at[1], x.TailHubCompliance.Value),
            rear ? 1 : 0
        );
        return TractionLaws.HoldingPull(
            at[0] + LiftedLoop.Gain(loop, at[1], lengthening),
            TractionLaws.TensionRatio(at[2], loop.DriveWrap.Value),
            share
        );
    }
}
