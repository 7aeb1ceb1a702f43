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
        T square = Square(in s);
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

    /// <summary>Integral of the square of a foot's load over the stance, in phases [N2].</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static T Square<T>(in StrideNumbers<T> s)
        where T : struct, IReal<T> =>
        StanceLaws.SquareSum(
            s.NormalLoad,
            s.ThirdHarmonic,
            s.Braking,
            s.BrakingShare,
            First(in s.BrakingShare),
            Third(in s.BrakingShare)
        );

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T First<T>(in T brakingShare)
        where T : struct, IReal<T> => StanceLaws.FirstWithLobes(brakingShare);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Third<T>(in T brakingShare)
        where T : struct, IReal<T> => StanceLaws.ThirdWithLobes(brakingShare);

    /// <summary>Integral of the product of both feet's loads while both are on the belt, in phases [N2].</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static T Both<T>(in StrideNumbers<T> s)
        where T : struct, IReal<T>
    {
        Turn<T> first = At(in s.Overlap);
        Turn<T> thirds = At(3 * s.Overlap);
        Turn<T> braking = At(s.BrakingRate * s.Overlap);
        Turn<T> push = At(s.PushRate * s.Overlap);
        T withPush = s.Push * WaveWithLobe(in s, in s.PushRate, in first, in thirds, in push);
        T withBraking = s.Braking * WaveWithLobe(in s, in s.BrakingRate, in first, in thirds, in braking);
        T lobes = s.Braking * s.Push * Pair(in s.BrakingRate, in s.PushRate, in braking, in push, in s.Overlap);
        return (s.NormalLoad * ((s.NormalLoad * Waves(in s, in first, in thirds)) + withPush + withBraking)) + lobes;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Turn<T> At<T>(in T halfTurns)
        where T : struct, IReal<T> => Turn<T>.Of(halfTurns);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Waves<T>(in StrideNumbers<T> s, in Turn<T> first, in Turn<T> thirds)
        where T : struct, IReal<T> => StanceLaws.Waves(s.ThirdHarmonic, first.Pair, thirds.Pair, s.Overlap);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T WaveWithLobe<T>(
        in StrideNumbers<T> s,
        in T rate,
        in Turn<T> first,
        in Turn<T> thirds,
        in Turn<T> lobe
    )
        where T : struct, IReal<T>
    {
        T three = 3;
        T one = 1;
        T ofThird = Pair(in three, in rate, in thirds, in lobe, in s.Overlap);
        return T.MultiplyAdd(s.ThirdHarmonic, ofThird, Pair(in one, in rate, in first, in lobe, in s.Overlap));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Pair<T>(in T a, in T c, in Turn<T> atA, in Turn<T> atC, in T overlap)
        where T : struct, IReal<T> => StanceLaws.Pair(a, c, atA.Pair, atC.Pair, overlap);
}
