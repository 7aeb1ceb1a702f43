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
        T.OnPlain<WorstPhases>(NumbersAccess.Fields<StepNumbers<T>, T>(ref work.Step), phases);
        y.PeakPull = Stride.AtPlace(in work.Stride, phases[WorstPhases.MostPiece], phases[WorstPhases.MostPlace]).Pull;
        T least = Stride.AtPlace(in work.Stride, phases[WorstPhases.LeastPiece], phases[WorstPhases.LeastPlace]).Pull;
        y.LeastPull = T.IfLess(1, work.Stride.StepPhase, T.Min(x.BeltDrag, least), least);
        work.BeltOverruns = phases[WorstPhases.BeltOverruns];
        T place = Following(
            ref work,
            phases[WorstPhases.BeltPiece],
            phases[WorstPhases.BeltPlace],
            phases[WorstPhases.BeltCurvature]
        );
        Belt(phases[WorstPhases.BeltPiece], place, ref work, ref y);
    }

    /// <summary>
    /// The worst place with its derivative: one more Newton step, taken with derivatives. The margin does not need it,
    /// being at its own extreme; the tensions read off there do.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Following<T>(ref Workings<T> work, T piece, T place, T curvature)
        where T : struct, IReal<T>
    {
        StrideNumbers<Dual<T>> once = work.Stride.Once();
        (Dual<T> pull, Dual<T> shared) = Stride.AtPlace(in once, new Dual<T>(piece, 0), new Dual<T>(place, 1));
        T ratio = work.Stride.TensionRatio;
        T slope = (T.IfLess(work.BeltOverruns, 0.5, ratio, -1) * pull.Slope) + ((1 - ratio) * shared.Slope);
        T moved = place - (slope / T.Min(curvature, -double.Epsilon));

        // At the end of a piece the place moves with the end.
        T inside = T.IfLess(1e-9, place, T.IfLess(place, 1 - 1e-9, 1, 0), 0);
        return T.IfLess(0.5, inside, T.IfLess(curvature, 0, moved, place), place);
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
