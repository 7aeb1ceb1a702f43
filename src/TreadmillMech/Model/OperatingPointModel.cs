using System.Runtime.CompilerServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>
/// The operating point of a machine with a person on it: laws composed into stages, on any number type.
/// </summary>
/// <remarks>
/// <para>
/// Each stage is a compilation root of its own, 10 to 25 operations long: the compiler's budget for inlining is spent
/// for each root, and one big method would leave most operators as calls.
/// </para>
/// <para>
/// Signs: the belt runs backwards under the feet; a load is positive where it resists the belt; the motor's torque is
/// positive where it drives. Left and right are seen by the user facing the console.
/// </para>
/// </remarks>
[SkipLocalsInit]
public static class OperatingPointModel
{
    /// <summary>Leg length that the relations of speed stand for [m].</summary>
    /// <remarks>Average of adult men, Minetti 2001; the people of the fits are not described by it.</remarks>
    internal const double ReferenceLeg = 0.92;

    /// <summary>Speed above which people run, for the reference leg [m/s]; a Froude number of 0.44.</summary>
    /// <remarks>
    /// Preferred change from walking to running: 28 adults, best told by 1.9 to 2.0 m/s (Hum. Mov. Sci. 2023, read).
    /// </remarks>
    internal const double RunningAbove = 2.0;

    /// <summary>Least demand that a margin is reckoned against [N]: a margin stays a number where nothing is asked.</summary>
    private const double LeastDemand = 1e-9;

    /// <summary>Computes the outputs of one case, or of eight side by side, with or without derivatives.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="machine">The inputs, SI.</param>
    /// <param name="kinds">What is not a number.</param>
    /// <param name="output">The outputs, SI.</param>
    /// <remarks>
    /// Inputs are not checked here: the typed layer does that. An output whose inputs make no sense may be infinite or
    /// NaN; nothing throws.
    /// </remarks>
    public static void Run<T>(in MachineNumbers<T> machine, in MachineKinds kinds, out OutputNumbers<T> output)
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out output);
        ref Workings<T> work = ref Aligned.In<Workings<T>>(stackalloc byte[Aligned.Size<Workings<T>>()]);
        BeforeSlides(in machine, in kinds, ref work, ref output);
        SlideStage.Run(in machine, ref work, ref output);
    }

    /// <summary>The same without the slides of the belts, which stay zero: for who asks for margins, currents or powers.</summary>
    internal static void RunWithoutSlides<T>(
        in MachineNumbers<T> machine,
        in MachineKinds kinds,
        out OutputNumbers<T> output
    )
        where T : struct, IReal<T>
    {
        Unsafe.SkipInit(out output);
        ref Workings<T> work = ref Aligned.In<Workings<T>>(stackalloc byte[Aligned.Size<Workings<T>>()]);
        BeforeSlides(in machine, in kinds, ref work, ref output);
        (output.BeltSlide, output.DriveBeltSlide) = (0, 0);
    }

    private static void BeforeSlides<T>(
        in MachineNumbers<T> machine,
        in MachineKinds kinds,
        ref Workings<T> work,
        ref OutputNumbers<T> output
    )
        where T : struct, IReal<T>
    {
        output.NoticeBits = 0;
        LoopStage.Run(in machine, in kinds, ref work, ref output);
        GaitStage.Run(in machine, in kinds, ref work, ref output);
        LoadStage.Run(in machine, in kinds, ref work, ref output);
        MeanStage.Run(in machine, ref work, ref output);
        GripStage.Run(in machine, ref work, ref output);
        HubStage.Run(in machine, in kinds, ref work, ref output);
        DriveBeltStage.Run(in machine, in kinds, ref work, ref output);
        MotorStage.Run(in machine, ref work, ref output);
    }

    /// <summary>Quotient of grip and demand, with a demand of nothing kept above zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Margin<T>(T grip, T demand)
        where T : struct, IReal<T> => grip / T.Max(demand, LeastDemand);
}
