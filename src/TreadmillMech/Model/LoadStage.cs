using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>What the feet put on the belt, and where.</summary>
[SkipLocalsInit]
internal static class LoadStage
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
        Normal(in x, ref work, ref y);
        y.PeakFootForce = Peak(in work);
        Tangential(in x, ref work, ref y);
        Places(in x, in kinds, ref work, in y);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Normal<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        work.MeanNormalForce = GaitLaws.MeanNormalForce(x.PersonMass, x.Incline, x.RailSupport);
        work.NormalAmplitude = GaitLaws.NormalAmplitude(work.MeanNormalForce, y.DutyFactor, work.Stride.ThirdHarmonic);
        y.DeckFrictionPower = DeckLaws.FrictionPower(x.DeckFriction, work.MeanNormalForce, x.BeltSpeed);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Peak<T>(in Workings<T> work)
        where T : struct, IReal<T> => work.NormalAmplitude * GaitLaws.NormalShapePeak(work.Stride.ThirdHarmonic);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Tangential<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        // Incline and rails act through the feet, hence with the normal force over time.
        T tangential = GaitLaws.MeanTangentialForce(x.PersonMass, x.Incline, x.RailSupport, x.RailForce);
        T relative = tangential / T.Max(work.MeanNormalForce, double.Epsilon);
        work.Stride.NormalLoad =
            DeckLaws.FrictionForce(x.DeckFriction, work.NormalAmplitude) + (work.NormalAmplitude * relative);
        work.Stride.Drag = x.BeltDrag;
        work.Stride.Push = StanceLaws.PushPeak(work.Stride.Braking, work.Stride.BrakingShare);
        work.Stride.BrakingRate = 1 / work.Stride.BrakingShare;
        work.Stride.PushRate = 1 / (1 - work.Stride.BrakingShare);
        y.MeanPull = DeckLaws.FrictionForce(x.DeckFriction, work.MeanNormalForce) + tangential + x.BeltDrag;
    }

    /// <summary>Distance along the belt, in the direction of running, from the drive roller to a place on the top strand.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Distance<T>(T place, T driveArc, T strand, T loopLength, bool rear)
        where T : struct, IReal<T> => rear ? loopLength - driveArc - strand + place : driveArc + place;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Places<T>(
        in MachineNumbers<T> x,
        in MachineKinds kinds,
        ref Workings<T> work,
        in OutputNumbers<T> y
    )
        where T : struct, IReal<T>
    {
        // The drive roller's arc changes from tight to slack along its length: half of it counts to either side.
        T driveArc = 0.5 * work.DriveRadius * y.DriveRollerWrap;
        bool rear = kinds.DriveEnd == DriveEnd.Rear;
        T distance = Distance(x.StrikePosition, driveArc, work.StrandLength, y.LoopLength, rear);
        T passed = rear ? 1 : 0;
        T ride = x.BeltSpeed * y.ContactTime;
        work.Stride.StrikeShare = TractionLaws.LoadShare(
            distance,
            y.LoopLength,
            work.DriveCompliantLength,
            work.TailCompliantLength,
            passed
        );
        work.Stride.RideShare =
            TractionLaws.LoadShare(
                distance + ride,
                y.LoopLength,
                work.DriveCompliantLength,
                work.TailCompliantLength,
                passed
            ) - work.Stride.StrikeShare;

        T step = 0.5 / y.DutyFactor;
        work.Stride.StepPhase = step;
        work.Stride.Overlap = T.Max(0, 1 - step);
        work.Stride.Window = T.Min(1, step);
    }
}
