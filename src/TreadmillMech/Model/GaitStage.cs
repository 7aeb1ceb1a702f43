using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>The person: cadence, contact and the shape of the foot's force.</summary>
[SkipLocalsInit]
internal static class GaitStage
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
        T bound = RunsAbove(in kinds);
        T usual = Contact(in x, in kinds, bound, ref work, ref y);
        Shape(in x, in kinds, bound, ref work);
        y.NoticeBits = Outside(in x, bound, work.SimilarSpeed, y.StepFrequencyUsed / usual);
    }

    /// <summary>Speed of the reference leg above which a person runs [m/s].</summary>
    internal static double RunsAbove(in MachineKinds kinds) =>
        kinds.Gait switch
        {
            Gait.Walking => double.PositiveInfinity,
            Gait.Running => double.NegativeInfinity,
            _ => OperatingPointModel.RunningAbove,
        };

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Contact<T>(
        in MachineNumbers<T> x,
        in MachineKinds kinds,
        T bound,
        ref Workings<T> work,
        ref OutputNumbers<T> y
    )
        where T : struct, IReal<T>
    {
        T scale = GaitLaws.LegScale(x.LegLength, OperatingPointModel.ReferenceLeg);
        T v = x.BeltSpeed * scale;
        work.SimilarSpeed = v;
        T usual = scale * T.IfLess(bound, v, GaitLaws.RunningStepFrequency(v), GaitLaws.WalkingStepFrequency(v));
        y.StepFrequencyUsed = kinds.StepFrequencyGiven ? x.StepFrequency : usual;
        y.DutyFactor = T.IfLess(bound, v, GaitLaws.RunningDutyFactor(v), GaitLaws.WalkingDutyFactor(v));
        y.ContactTime = GaitLaws.ContactTime(y.DutyFactor, y.StepFrequencyUsed);
        work.StepTime = 1 / y.StepFrequencyUsed;
        return usual;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Shape<T>(in MachineNumbers<T> x, in MachineKinds kinds, T bound, ref Workings<T> work)
        where T : struct, IReal<T>
    {
        T v = work.SimilarSpeed;
        work.Stride.ThirdHarmonic = T.IfLess(
            bound,
            v,
            GaitLaws.RunningThirdHarmonic(v),
            GaitLaws.WalkingThirdHarmonic(v)
        );
        work.Stride.BrakingShare = T.IfLess(
            bound,
            v,
            GaitLaws.RunningBrakingShare(v),
            GaitLaws.WalkingBrakingShare<T>()
        );
        work.Stride.Braking =
            (kinds.BrakingPeakGiven ? x.BrakingPeak : GaitLaws.BrakingPeak(v)) * x.PersonMass * Gravity.Standard;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Outside<T>(in MachineNumbers<T> x, T bound, T similarSpeed, T cadenceRatio)
        where T : struct, IReal<T>
    {
        T speed = T.IfLess(
            bound,
            similarSpeed,
            Row(Ranges.RunningSpeed, similarSpeed),
            Row(Ranges.WalkingSpeed, similarSpeed)
        );
        return speed
            + Row(Ranges.Incline, x.Incline)
            + Row(Ranges.Rails, T.Abs(x.RailSupport) + T.Abs(x.RailForce))
            + Row(Ranges.StepFrequency, cadenceRatio);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Row<T>(int row, T value)
        where T : struct, IReal<T>
    {
        Bounds fitted = Ranges.Fitted(row);
        double flag = Ranges.Flag(row);
        return T.IfLess(value, fitted.From, flag, T.IfLess(fitted.To, value, flag, 0));
    }
}
