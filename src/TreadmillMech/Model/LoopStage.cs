using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>The running belt at rest: loop, wrap, tension after the turns.</summary>
[SkipLocalsInit]
internal static class LoopStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(
        in MachineNumbers<T> x,
        in MachineKinds kinds,
        ref Workings<T> work,
        ref OutputNumbers<T> y
    )
        where T : struct, IReal<T>
    {
        T half = 0.5 * x.BeltThickness;
        work.DriveRadius = (0.5 * x.DriveRollerDiameter) + half;
        T tailRadius = (0.5 * x.TailRollerDiameter) + half;
        T angle = LoopLaws.StrandAngle(work.DriveRadius, tailRadius, x.CentreDistance);
        work.StrandLength = LoopLaws.StrandLength(x.CentreDistance, angle);
        y.DriveRollerWrap = LoopLaws.Wrap(angle);
        work.TailWrap = LoopLaws.Wrap(-angle);
        y.LoopLength = (2 * work.StrandLength) + (work.DriveRadius * y.DriveRollerWrap) + (tailRadius * work.TailWrap);
        Tension(in x, in angle, ref work, ref y);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Tension<T>(in MachineNumbers<T> x, in T angle, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        work.DriveCompliantLength = BeltLaws.CompliantLength(x.BeltStiffness, x.DriveHubCompliance);
        work.TailCompliantLength = BeltLaws.CompliantLength(x.BeltStiffness, x.TailHubCompliance);
        T change = TakeUpLaws.CentreDistanceChange(
            ScrewThreadLaws.Travel(x.ThreadLead, x.LeftTurns),
            ScrewThreadLaws.Travel(x.ThreadLead, x.RightTurns),
            x.BoltAngle
        );
        y.TensionNow =
            x.RestTension
            + BeltLaws.TensionGain(
                x.BeltStiffness,
                LoopLaws.LengthSlope(angle) * change,
                y.LoopLength,
                work.DriveCompliantLength + work.TailCompliantLength
            );
        work.MassPerLength = x.BeltMassPerArea * x.BeltWidth;
        y.CentrifugalTension = BeltLaws.CentrifugalTension(work.MassPerLength, x.BeltSpeed);
        work.Stride.TensionRatio = TractionLaws.TensionRatio(x.DriveRollerFriction, y.DriveRollerWrap);
        work.Grip = TractionLaws.Grip(y.TensionNow, y.CentrifugalTension, work.Stride.TensionRatio);
    }
}
