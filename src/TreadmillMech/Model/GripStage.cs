using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Margin of the running belt at the worst phase, tensions there, and the extremes of the pull.</summary>
internal static class GripStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        Found<T> found = default;
        Span<T> phases = found;
        T.OnPlain<WorstPhases>(NumbersAccess.Fields<StrideNumbers<T>, T>(ref work.Stride), phases);
        y.PeakPull = Stride.AtPlace(in work.Stride, phases[WorstPhases.MostPiece], phases[WorstPhases.MostPlace]).Pull;
        y.LeastPull = T.Min(
            x.BeltDrag,
            Stride.AtPlace(in work.Stride, phases[WorstPhases.LeastPiece], phases[WorstPhases.LeastPlace]).Pull
        );
        work.BeltOverruns = phases[WorstPhases.BeltOverruns];
        Belt(phases[WorstPhases.BeltPiece], phases[WorstPhases.BeltPlace], ref work, ref y);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Belt<T>(T piece, T place, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        (T pull, T shared) = Stride.AtPlace(in work.Stride, piece, place);
        T ratio = work.Stride.TensionRatio;
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
