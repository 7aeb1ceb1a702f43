using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Means over a step of the squared pull, and of the pull times its share.</summary>
[SkipLocalsInit]
internal static class MeanStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        ref readonly StrideNumbers<T> s = ref work.Stride;
        T sum = StanceLaws.Sum(s.NormalLoad, s.ThirdHarmonic);
        T moment = StanceLaws.FirstMoment(s.NormalLoad, s.ThirdHarmonic, s.Braking, s.BrakingShare);
        T square = StanceLaws.SquareSum(s.NormalLoad, s.ThirdHarmonic, s.Braking, s.BrakingShare);
        if (T.AnyLess(0, s.Overlap))
        {
            square += T.IfLess(0, s.Overlap, 2 * Both(in s), 0);
        }

        T perStep = 1 / s.StepPhase;
        square = T.MultiplyAdd(perStep, T.MultiplyAdd(2 * s.Drag, sum, square), s.Drag * s.Drag);
        y.RmsPull = T.Sqrt(square);
        work.MeanSharedPull = (0.5 * s.Drag) + (perStep * ((s.StrikeShare * sum) + (s.RideShare * moment)));
        y.PullPower = y.MeanPull * x.BeltSpeed;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Both<T>(in StrideNumbers<T> s)
        where T : struct, IReal<T> =>
        StanceLaws.ProductSum(s.NormalLoad, s.ThirdHarmonic, s.Braking, s.BrakingRate, s.Push, s.PushRate, s.Overlap);
}
