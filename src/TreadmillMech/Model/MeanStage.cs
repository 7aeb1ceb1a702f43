using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>
/// Loads at the Gauss nodes of a step, and the means over it that have no closed form: of the squared pull, and of the
/// pull times its share.
/// </summary>
internal static class MeanStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        work.Step.Stride = work.Stride;
        T flight = work.Stride.StepPhase - work.Stride.Window;
        T square = flight * x.BeltDrag * x.BeltDrag;
        T shared = 0.5 * flight * x.BeltDrag;
        for (int piece = work.Step.FirstPiece; piece < Stride.Pieces; piece++)
        {
            (T from, T to) = Stride.Piece<T>(in work.Stride, piece);
            T length = to - from;
            for (int i = 0; i < Stride.NodesAPiece; i++)
            {
                (T pull, T sharedPull) = Stride.At(in work.Stride, from + (length * Stride.Nodes[i]));
                work.Step.Pull[(piece * Stride.NodesAPiece) + i] = pull;
                work.Step.SharedPull[(piece * Stride.NodesAPiece) + i] = sharedPull;
                T weight = length * Stride.Weights[i];
                square += weight * pull * pull;
                shared += weight * sharedPull;
            }
        }

        y.RmsPull = T.Sqrt(square / work.Stride.StepPhase);
        work.MeanSharedPull = shared / work.Stride.StepPhase;
        y.PullPower = y.MeanPull * x.BeltSpeed;
    }
}
