using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Margin of the running belt at the worst phase, tensions there, and the extremes of the pull.</summary>
[SkipLocalsInit]
internal static class GripStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        Found<T> found = default;
        Span<T> phases = found;
        T.OnPlain<WorstPhases>(NumbersAccess.Fields<StrideNumbers<T>, T>(ref work.Stride), phases);
        y.PeakPull = Stride
            .AtPlace(in work.Stride, in phases[WorstPhases.MostPiece], in phases[WorstPhases.MostPlace])
            .Pull;
        T least = Stride
            .AtPlace(in work.Stride, in phases[WorstPhases.LeastPiece], in phases[WorstPhases.LeastPlace])
            .Pull;
        y.LeastPull = T.IfLess(1, work.Stride.StepPhase, T.Min(x.BeltDrag, least), least);
        work.BeltOverruns = phases[WorstPhases.BeltOverruns];
        NodeLoads<T> loads = Stride.WithSlopes(
            in work.Stride,
            in phases[WorstPhases.BeltPiece],
            in phases[WorstPhases.BeltPlace]
        );
        Belt(in loads, in phases[WorstPhases.BeltPlace], in phases[WorstPhases.BeltCurvature], ref work, ref y);
    }

    /// <summary>Margin and tensions at the worst place, which moves with the inputs.</summary>
    /// <remarks>
    /// The place found is held; its derivative comes from one more Newton step, taken with derivatives. The margin does not
    /// need it, being at its own extreme; the tensions read off there do. At the end of a piece the place moves with the
    /// end.
    /// </remarks>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Belt<T>(
        in NodeLoads<T> loads,
        in T place,
        in T curvature,
        ref Workings<T> work,
        ref OutputNumbers<T> y
    )
        where T : struct, IReal<T>
    {
        T ratio = work.Stride.TensionRatio;
        T slope = T.IfLess(
            work.BeltOverruns,
            0.5,
            TractionLaws.SlipDemand(loads.PullSlope, loads.SharedSlope, ratio),
            TractionLaws.OverrunDemand(loads.PullSlope, loads.SharedSlope, ratio)
        );
        T inside = T.IfLess(1e-9, place, T.IfLess(place, 1 - 1e-9, 1, 0), 0);
        T step = -(slope / T.Min(curvature, -double.Epsilon));
        step = T.IfLess(0.5, inside, T.IfLess(curvature, 0, step, 0), 0);
        T pull = T.MultiplyAdd(step, loads.PullSlope, loads.Pull);
        T shared = T.MultiplyAdd(step, loads.SharedSlope, loads.Shared);
        T demand = T.IfLess(
            work.BeltOverruns,
            0.5,
            TractionLaws.SlipDemand(pull, shared, ratio),
            TractionLaws.OverrunDemand(pull, shared, ratio)
        );
        y.BeltMargin = OperatingPointModel.Margin(work.Grip, demand);
        y.SlackTension = TractionLaws.SlackTension(y.TensionNow, pull, shared);
        y.TightTension = TractionLaws.TightTension(y.TensionNow, shared);
    }

    [InlineArray(WorstPhases.Results)]
    private struct Found<T>
    {
        private T first;
    }
}
