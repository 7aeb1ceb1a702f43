using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>The drive belt on the motor's standing pulley: its tension, its friction.</summary>
internal sealed class PulleyContact(LoopGeometry loop, Tensioning tensioning, int tension, int friction)
    : LockedContact("drive belt", tension, friction)
{
    internal override Dual<Lanes> Holds(ReadOnlySpan<Dual<Lanes>> at)
    {
        MachineNumbers<Real> x = loop.Numbers;
        Real wrap = LoopLaws.Wrap(
            LoopLaws.StrandAngle(0.5 * x.MotorPulleyDiameter, 0.5 * x.RollerPulleyDiameter, x.PulleyCentreDistance)
        );
        Dual<Lanes> ratio = TractionLaws.TensionRatio(
            TractionLaws.WedgedFriction(at[1], x.GrooveHalfAngle.Value),
            wrap.Value
        );

        // At rest nothing is lost to the centrifugal force; pulled towards the console the belt loads its driving side.
        Dual<Lanes> holds = tensioning switch
        {
            Tensioning.SlackSideIdler => DriveBeltLaws.CapacityOfSlackSide(at[0], ratio),
            Tensioning.TightSideIdler => DriveBeltLaws.CapacityOfTightSide(at[0], ratio),
            _ => DriveBeltLaws.CapacityOfTensionSum(2 * at[0], ratio),
        };
        return holds
            / DriveBeltLaws.CircumferentialForce<Real>(1, loop.DriveRadius, 0.5 * x.RollerPulleyDiameter).Value;
    }
}
