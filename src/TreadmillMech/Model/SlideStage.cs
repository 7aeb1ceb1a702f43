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
[SkipLocalsInit]
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
    private static void Load<T>(in StrideNumbers<T> s, out AtPhases<T> pull, out AtPhases<T> shared)
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out pull);
        Unsafe.SkipInit(out shared);
        T interval = s.StepPhase * (1.0 / PhasesAStep);
        T first = 0.5 * interval;
        Ahead(in s, in first, in interval, ref pull, ref shared);
        if (T.AnyLess(first, s.Overlap))
        {
            Behind(in s, in first, in interval, ref pull, ref shared);
        }
    }

    /// <summary>The foot that struck last, and the drag.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Ahead<T>(
        in StrideNumbers<T> s,
        in T first,
        in T interval,
        ref AtPhases<T> pull,
        ref AtPhases<T> shared
    )
        where T : struct, IReal<T>
    {
        Lobes(in s, in first, in interval, ref pull);
        Turn<T> wave = Start(in first);
        Turn<T> waveStep = Start(in interval);
        T phase = first;
        T step = interval;
        for (int i = 0; i < PhasesAStep; i++)
        {
            T load = StanceLaws.Load(s.NormalLoad, s.ThirdHarmonic, wave.Sin, pull[i]);
            load = T.IfLess(phase, 1, load, 0);
            pull[i] = load + s.Drag;
            shared[i] = T.MultiplyAdd(load, T.MultiplyAdd(s.RideShare, phase, s.StrikeShare), 0.5 * s.Drag);
            phase += step;

            // The sines of a phase follow from those of the one before.
            wave = wave.Plus(in waveStep);
        }
    }

    /// <summary>Braking and push of that foot.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Lobes<T>(in StrideNumbers<T> s, in T first, in T interval, ref AtPhases<T> lobes)
        where T : struct, IReal<T>
    {
        Turn<T> braking = Start(s.BrakingRate * first);
        Turn<T> brakingStep = Start(s.BrakingRate * interval);
        Turn<T> push = Start(s.PushRate * (first - s.BrakingShare));
        Turn<T> pushStep = Start(s.PushRate * interval);
        T phase = first;
        T step = interval;
        for (int i = 0; i < PhasesAStep; i++)
        {
            lobes[i] = T.IfLess(phase, s.BrakingShare, s.Braking * braking.Sin, s.Push * push.Sin);
            phase += step;
            braking = braking.Plus(in brakingStep);
            push = push.Plus(in pushStep);
        }
    }

    /// <summary>The foot that struck before, until its toe-off; counted back from there.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Behind<T>(
        in StrideNumbers<T> s,
        in T first,
        in T interval,
        ref AtPhases<T> pull,
        ref AtPhases<T> shared
    )
        where T : struct, IReal<T>
    {
        T left = s.Overlap - first;
        T step = interval;
        Turn<T> wave = Start(in left);
        Turn<T> waveStep = Start(-step);
        Turn<T> push = Start(s.PushRate * left);
        Turn<T> pushStep = Start(-(s.PushRate * step));
        T atToeOff = s.StrikeShare + s.RideShare;
        for (int i = 0; i < PhasesAStep && T.AnyLess(0, left); i++)
        {
            T load = StanceLaws.Load(s.NormalLoad, s.ThirdHarmonic, wave.Sin, s.Push * push.Sin);
            load = T.IfLess(0, left, load, 0);
            pull[i] += load;
            shared[i] = T.MultiplyAdd(load, T.MultiplyAdd(-s.RideShare, left, atToeOff), shared[i]);
            left -= step;
            wave = wave.Plus(in waveStep);
            push = push.Plus(in pushStep);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Turn<T> Start<T>(in T halfTurns)
        where T : struct, IReal<T> => Turn<T>.Of(halfTurns);

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

        // The slowing force is linear in the demand beyond the grip.
        T gain = time / mass * TractionLaws.SlowingForce(1, 0, tensionRatio);
        T slipping = 0;
        T slide = Once(in pull, in shared, beltSpeed, gain * onPull, gain * onShared, gain * grip, ref slipping);
        if (T.AnyLess(0, slipping))
        {
            // A step that begins at rest is its own successor; the others are gone through once more.
            slide = Once(in pull, in shared, beltSpeed, gain * onPull, gain * onShared, gain * grip, ref slipping);
        }

        return slide * time;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static T Once<T>(
        in AtPhases<T> pull,
        in AtPhases<T> shared,
        T beltSpeed,
        T onPull,
        T onShared,
        T grip,
        ref T slipping
    )
        where T : struct, IReal<T>
    {
        T speed = slipping;
        T sum = 0;
        for (int i = 0; i < PhasesAStep; i++)
        {
            T beyond = T.MultiplyAdd(onPull, pull[i], T.MultiplyAdd(onShared, shared[i], -grip));
            speed = T.Max(0, T.Min(beltSpeed, speed + beyond));
            sum += speed;
        }

        slipping = speed;
        return sum;
    }

    [InlineArray(PhasesAStep)]
    private struct AtPhases<T>
    {
        private T first;
    }
}
