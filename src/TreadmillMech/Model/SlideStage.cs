using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>How far each belt slides in one step while the demand exceeds the grip.</summary>
/// <remarks>
/// While it slips, the force beyond the grip slows the masses behind the slipping contact; when the demand falls, the
/// grip drags them up to speed again. Followed over two steps at even phases; the second one counts, so that a slide
/// that does not end within its step shows. The slipping speed stays between zero and the belt's.
/// </remarks>
internal static class SlideStage
{
    private const int PhasesAStep = 64;

    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        y.BeltSlide = 0;
        y.DriveBeltSlide = 0;
        if (!T.AnyLess(T.Min(y.BeltMargin, y.DriveBeltMargin), 1))
        {
            return;
        }

        Load(in work.Stride, out AtPhases<T> pull, out AtPhases<T> shared);
        T ratio = work.Stride.TensionRatio;
        T tailRadius = 0.5 * (x.TailRollerDiameter + x.BeltThickness);
        T mass = (work.MassPerLength * y.LoopLength) + (x.TailRollerInertia / (tailRadius * tailRadius));
        if (T.AnyLess(y.BeltMargin, 1))
        {
            T onPull = T.IfLess(work.BeltOverruns, 0.5, ratio, -1);
            T slide = Follow(in pull, in shared, x.BeltSpeed, work.StepTime, onPull, 1 - ratio, work.Grip, ratio, mass);
            y.BeltSlide = T.IfLess(y.BeltMargin, 1, slide, 0);
        }

        if (T.AnyLess(y.DriveBeltMargin, 1))
        {
            T pulley = 0.5 * x.RollerPulleyDiameter;
            T perPull = DriveBeltLaws.CircumferentialForce<T>(1, work.DriveRadius, pulley);
            T backwards = T.IfLess(work.DriveBeltGrip, perPull * y.PeakPull, 0, 1);
            T grip = T.IfLess(backwards, 0.5, work.DriveBeltGrip, work.DriveBeltGripBackwards) / perPull;
            T driven = mass + (x.DriveRollerInertia / (work.DriveRadius * work.DriveRadius));
            T slide = Follow(in pull, in shared, x.BeltSpeed, work.StepTime, 1 - (2 * backwards), 0, grip, 1, driven);
            y.DriveBeltSlide = T.IfLess(y.DriveBeltMargin, 1, slide, 0);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Load<T>(in StrideNumbers<T> stride, out AtPhases<T> pull, out AtPhases<T> shared)
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out pull);
        Unsafe.SkipInit(out shared);
        for (int i = 0; i < PhasesAStep; i++)
        {
            (pull[i], shared[i]) = Stride.At(in stride, (i + 0.5) / PhasesAStep * stride.StepPhase);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Follow<T>(
        in AtPhases<T> pull,
        in AtPhases<T> shared,
        T beltSpeed,
        T stepTime,
        T onPull,
        T onShared,
        T grip,
        T tensionRatio,
        T mass
    )
        where T : struct, IReal<T>
    {
        T time = stepTime * (1.0 / PhasesAStep);
        T perMass = time / mass;
        T slipping = 0;
        T slide = 0;
        for (int i = 0; i < 2 * PhasesAStep; i++)
        {
            int phase = i % PhasesAStep;
            T demand = (onPull * pull[phase]) + (onShared * shared[phase]);
            T slowing = TractionLaws.SlowingForce(demand, grip, tensionRatio);
            slipping = T.Max(0, T.Min(beltSpeed, slipping + (perMass * slowing)));
            slide += i < PhasesAStep ? 0 : slipping * time;
        }

        return slide;
    }

    [InlineArray(PhasesAStep)]
    private struct AtPhases<T>
    {
        private T first;
    }
}
