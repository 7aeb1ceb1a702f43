using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>Inputs and outputs by their place in the table.</summary>
public static class NumbersAccess
{
    /// <summary>The inputs as a span, in the order of <see cref="Inputs"/>.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="numbers">The inputs; the span refers to them, it is no copy.</param>
    public static Span<T> AsSpan<T>(ref this MachineNumbers<T> numbers)
        where T : struct, IReal<T> => Fields<MachineNumbers<T>, T>(ref numbers);

    /// <summary>The outputs as a span, in the order of <see cref="Outputs"/>.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="numbers">The outputs; the span refers to them, it is no copy.</param>
    public static Span<T> AsSpan<T>(ref this OutputNumbers<T> numbers)
        where T : struct, IReal<T> => Fields<OutputNumbers<T>, T>(ref numbers);

    /// <summary>An output by its place.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T At<T>(in OutputNumbers<T> numbers, int index)
        where T : struct, IReal<T> =>
        Unsafe.Add(ref Unsafe.As<OutputNumbers<T>, T>(ref Unsafe.AsRef(in numbers)), index);

    /// <summary>The fields of a struct that has nothing but fields of one number type.</summary>
    internal static Span<T> Fields<TStruct, T>(ref TStruct numbers)
        where TStruct : struct
        where T : struct, IReal<T> =>
        MemoryMarshal.CreateSpan(ref Unsafe.As<TStruct, T>(ref numbers), Unsafe.SizeOf<TStruct>() / Unsafe.SizeOf<T>());

    /// <summary>Inputs without derivative, for use with another number type.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="numbers">The inputs as plain numbers.</param>
    public static MachineNumbers<T> Lift<T>(this MachineNumbers<Real> numbers)
        where T : struct, IReal<T>
    {
        MachineNumbers<T> lifted = default;
        Span<Real> from = numbers.AsSpan();
        Span<T> to = lifted.AsSpan();
        for (int i = 0; i < from.Length; i++)
        {
            to[i] = from[i].Value;
        }

        return lifted;
    }
}
