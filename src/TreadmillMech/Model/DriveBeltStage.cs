using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>The drive belt: its grip both ways by how it is tensioned, its margin, and its load on the motor.</summary>
[SkipLocalsInit]
internal static class DriveBeltStage
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
        if (kinds.Tensioning == Tensioning.DirectDrive)
        {
            work.SpeedRatio = 1;
            work.DriveBeltGrip = double.PositiveInfinity;
            work.DriveBeltGripBackwards = double.PositiveInfinity;
            y.DriveBeltMargin = double.PositiveInfinity;
            y.MotorHubLoad = 0;
        }
        else
        {
            T wrap = LoopLaws.Wrap(
                LoopLaws.StrandAngle(0.5 * x.MotorPulleyDiameter, 0.5 * x.RollerPulleyDiameter, x.PulleyCentreDistance)
            );
            work.SpeedRatio = x.RollerPulleyDiameter / x.MotorPulleyDiameter;
            Grip(in x, in kinds, in wrap, ref work);
            Margin(in x, ref work, ref y);
            Hub(in x, in kinds, in wrap, ref work, ref y);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Grip<T>(in MachineNumbers<T> x, in MachineKinds kinds, in T wrap, ref Workings<T> work)
        where T : struct, IReal<T>
    {
        T ratio = TractionLaws.TensionRatio(TractionLaws.WedgedFriction(x.DriveBeltFriction, x.GrooveHalfAngle), wrap);
        T beltSpeed = x.BeltSpeed * (0.5 * x.RollerPulleyDiameter) / work.DriveRadius;
        T centrifugal = BeltLaws.CentrifugalTension(x.DriveBeltMassPerLength, beltSpeed);

        T kept = Kept(kinds.Tensioning, x.DriveBeltTension, centrifugal);
        work.DriveBeltEffectiveTension = kept;
        (work.DriveBeltGrip, work.DriveBeltGripBackwards) = BothWays(kinds.Tensioning, kept, ratio);
    }

    /// <summary>Tension above the centrifugal part that the tensioning keeps [N].</summary>
    /// <remarks>
    /// A spring presses on the hub or idler with the tension above the centrifugal part: it keeps that. Fixed centres keep
    /// the whole tension, and the centrifugal part is lost to the grip.
    /// </remarks>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Kept<T>(Tensioning tensioning, T tension, T centrifugal)
        where T : struct, IReal<T> =>
        tensioning is Tensioning.SprungMotor or Tensioning.SlackSideIdler or Tensioning.TightSideIdler
            ? tension
            : tension - centrifugal;

    /// <summary>Largest circumferential forces, driving and braking [N].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static (T Driving, T Braking) BothWays<T>(Tensioning tensioning, T kept, T ratio)
        where T : struct, IReal<T>
    {
        T ofSlack = DriveBeltLaws.CapacityOfSlackSide(kept, ratio);
        T ofTight = DriveBeltLaws.CapacityOfTightSide(kept, ratio);
        T ofSum = DriveBeltLaws.CapacityOfTensionSum(2 * kept, ratio);
        return tensioning switch
        {
            Tensioning.SlackSideIdler => (ofSlack, ofTight),
            Tensioning.TightSideIdler => (ofTight, ofSlack),
            _ => (ofSum, ofSum),
        };
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Margin<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        T pulley = 0.5 * x.RollerPulleyDiameter;
        T forwards = DriveBeltLaws.CircumferentialForce(y.PeakPull, work.DriveRadius, pulley);
        T backwards = DriveBeltLaws.CircumferentialForce(-y.LeastPull, work.DriveRadius, pulley);
        y.DriveBeltMargin = T.Min(
            OperatingPointModel.Margin(work.DriveBeltGrip, forwards),
            OperatingPointModel.Margin(work.DriveBeltGripBackwards, backwards)
        );
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Hub<T>(
        in MachineNumbers<T> x,
        in MachineKinds kinds,
        in T wrap,
        ref Workings<T> work,
        ref OutputNumbers<T> y
    )
        where T : struct, IReal<T>
    {
        T force = DriveBeltLaws.CircumferentialForce(y.MeanPull, work.DriveRadius, 0.5 * x.RollerPulleyDiameter);
        T kept = work.DriveBeltEffectiveTension;
        (T tight, T slack) = kinds.Tensioning switch
        {
            Tensioning.SlackSideIdler => (kept + force, kept),
            Tensioning.TightSideIdler => (kept, kept - force),
            _ => (kept + (0.5 * force), kept - (0.5 * force)),
        };
        y.MotorHubLoad = HubLaws.HubLoad(tight, slack, wrap);
    }
}
