using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Bounds of what nodes say about a load between them; derived in docs/articles/batch-and-speed.md.</summary>
/// <param name="Interval">Longest interval between nodes, in phases [1].</param>
/// <param name="Ride">Share of the loop that the foot rides back in a stance [1].</param>
/// <param name="Second">Bound of both feet's second derivative over pi squared [N].</param>
/// <param name="Fourth">Bound of both feet's fourth derivative over pi to the fourth [N].</param>
internal readonly record struct Doubts<T>(T Interval, T Ride, T Second, T Fourth)
    where T : struct, IReal<T>
{
    private const double Pi2 = Math.PI * Math.PI;

    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static Doubts<T> Of(in StrideNumbers<T> s)
    {
        T longest = T.Max(T.Max(s.Overlap, s.BrakingShare - s.Overlap), s.Window - s.BrakingShare);
        T braking = s.BrakingRate * s.BrakingRate;
        T push = s.PushRate * s.PushRate;
        T brakingSecond = T.Abs(s.Braking) * braking;
        T pushSecond = T.Abs(s.Push) * push;
        T second = StanceLaws.Bound(s.NormalLoad, s.ThirdHarmonic, 9, T.Max(brakingSecond, pushSecond));
        T fourth = StanceLaws.Bound(
            s.NormalLoad,
            s.ThirdHarmonic,
            81,
            T.Max(brakingSecond * braking, pushSecond * push)
        );
        return new(longest * (1.0 / StepNodes<T>.Intervals), T.Abs(s.RideShare), 2 * second, 2 * fourth);
    }

    /// <summary>How far the tops of two cubics may be apart while the lower one stands for the higher top [N].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal T OfCubics(in Target<T> target)
    {
        T weight = Pi2 * ((Pi2 * Weight(in target)) + (4 * Math.PI * Ride * T.Abs(target.OnShared)));
        T square = Interval * Interval;
        return 2.0 / 384.0 * square * square * weight * Fourth;
    }

    /// <summary>1 where a top of the target may stand above another, otherwise 0.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal T Worth(in StepNodes<T> nodes, in Target<T> target, in Top<T> floor)
    {
        T highest = target.Of(nodes.At(1, 0)).Height;
        for (int piece = nodes.FirstPiece; piece < Stride.Pieces; piece++)
        {
            for (int i = 0; i <= StepNodes<T>.Intervals; i++)
            {
                highest = T.Max(highest, target.Of(nodes.At(piece, i)).Height);
            }
        }

        T weight = (Pi2 * Weight(in target)) + (2 * Math.PI * Ride * T.Abs(target.OnShared));
        return T.IfLess(floor.Height, T.MultiplyAdd(0.125 * Interval * Interval * weight, Second, highest), 1, 0);
    }

    // Shares lie between 0 and 1.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Weight(in Target<T> target) => T.Max(T.Abs(target.OnPull), T.Abs(target.OnPull + target.OnShared));
}
