using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace TreadmillMech.Numbers.Integration;

/// <summary>
/// Solves the equations of a step of <see cref="Rodas"/>, <c>(d - J) x = b</c>, for one case with at most eight coupled states:
/// a column in each register.
/// </summary>
/// <remarks>
/// The inverse is taken once by the method of Gauss and Jordan and used for all stages: products with it do not wait for each
/// other, as those of a substitution do.
/// </remarks>
[SkipLocalsInit]
internal sealed class RegisterSolver
{
    private const int Register = 8;
    private const int Few = 6;

    private readonly int coupled;
    private readonly int registers;
    private readonly AlignedRow<double> inverse;
    private readonly AlignedRow<double> divisors;

    internal RegisterSolver(int count, int coupled)
    {
        this.coupled = coupled;
        registers = (count + Register - 1) / Register;
        inverse = new(Register * Register);
        divisors = new(Register * registers);
    }

    /// <summary>Inverts for a diagonal.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal void Factor(double diagonal, in SlopeTable<Real> slopes)
    {
        Vector512<double> numbers = Vector512.Create(0d, 1, 2, 3, 4, 5, 6, 7);
        Vector512<double> diagonals = Vector512.Create(diagonal);
        ref Vector512<double> columns = ref First(slopes.Numbers);
        Span<Vector512<double>> room = stackalloc Vector512<double>[Register];
        ref Vector512<double> left = ref MemoryMarshal.GetReference(room);
        ref Vector512<double> right = ref First(inverse);
        for (int i = 0; i < coupled; i++)
        {
            Vector512<double> here = Vector512.Equals(numbers, Vector512.Create((double)i));
            Unsafe.Add(ref left, i) = (diagonals & here) - Unsafe.Add(ref columns, i * registers);
            Unsafe.Add(ref right, i) = Vector512<double>.One & here;
        }

        for (int pivot = 0; pivot < coupled; pivot++)
        {
            Vector512<double> ofLeft = Unsafe.Add(ref left, pivot);
            Vector512<double> scale = Vector512.Create(1 / Element(ref Unsafe.Add(ref left, pivot), pivot));
            ofLeft *= scale;
            Vector512<double> ofRight = Unsafe.Add(ref right, pivot) * scale;
            for (int row = 0; row < coupled; row++)
            {
                ref Vector512<double> line = ref Unsafe.Add(ref left, row);
                ref Vector512<double> result = ref Unsafe.Add(ref right, row);
                Vector512<double> factor = Vector512.Create(-Element(ref line, pivot));
                line = Vector512.FusedMultiplyAdd(ofLeft, factor, line);
                result = Vector512.FusedMultiplyAdd(ofRight, factor, result);
            }

            Unsafe.Add(ref left, pivot) = ofLeft;
            Unsafe.Add(ref right, pivot) = ofRight;
        }

        ref Vector512<double> own = ref First(slopes.Own);
        ref Vector512<double> divisor = ref First(divisors);
        for (int i = 0; i < registers; i++)
        {
            Unsafe.Add(ref divisor, i) = Vector512<double>.One / (diagonals - Unsafe.Add(ref own, i));
        }

        divisor &= Vector512.GreaterThanOrEqual(numbers, Vector512.Create((double)coupled));
    }

    /// <summary>Solves in place.</summary>
    /// <param name="rightSide">Registers of the right side.</param>
    /// <param name="slopes">The slopes.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal void Solve(ref Vector512<double> rightSide, in SlopeTable<Real> slopes)
    {
        ref Vector512<double> columns = ref First(inverse);
        Vector512<double> b = rightSide;
        Vector512<double> even = columns * Broadcast(b, 0);
        Vector512<double> odd = Unsafe.Add(ref columns, 1) * Broadcast(b, 1);
        even = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, 2), Broadcast(b, 2), even);
        odd = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, 3), Broadcast(b, 3), odd);
        even = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, 4), Broadcast(b, 4), even);
        odd = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, 5), Broadcast(b, 5), odd);
        bool many = coupled > Few;
        if (many)
        {
            even = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, 6), Broadcast(b, 6), even);
            odd = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, 7), Broadcast(b, 7), odd);
        }

        // The following states of the first register have a column of nothing here, and come with the others below.
        Vector512<double> solved = even + odd;
        ref Vector512<double> rows = ref First(slopes.Numbers);
        ref Vector512<double> divisor = ref First(divisors);
        Vector512<double> s0 = Broadcast(solved, 0);
        Vector512<double> s1 = Broadcast(solved, 1);
        Vector512<double> s2 = Broadcast(solved, 2);
        Vector512<double> s3 = Broadcast(solved, 3);
        Vector512<double> s4 = Broadcast(solved, 4);
        Vector512<double> s5 = Broadcast(solved, 5);
        Vector512<double> s6 = Broadcast(solved, 6);
        Vector512<double> s7 = Broadcast(solved, 7);
        int width = registers;
        for (int i = coupled == Register ? 1 : 0; i < width; i++)
        {
            ref Vector512<double> row = ref Unsafe.Add(ref rows, i);
            Vector512<double> sum = Vector512.FusedMultiplyAdd(row, s0, Unsafe.Add(ref rightSide, i));
            Vector512<double> other = Unsafe.Add(ref row, width) * s1;
            sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref row, 2 * width), s2, sum);
            other = Vector512.FusedMultiplyAdd(Unsafe.Add(ref row, 3 * width), s3, other);
            sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref row, 4 * width), s4, sum);
            other = Vector512.FusedMultiplyAdd(Unsafe.Add(ref row, 5 * width), s5, other);
            if (many)
            {
                sum = Vector512.FusedMultiplyAdd(Unsafe.Add(ref row, 6 * width), s6, sum);
                other = Vector512.FusedMultiplyAdd(Unsafe.Add(ref row, 7 * width), s7, other);
            }

            // Divisors are 0 at coupled states, solutions of the inverse 0 at following ones.
            Unsafe.Add(ref rightSide, i) = (sum + other) * Unsafe.Add(ref divisor, i);
        }

        rightSide = coupled == Register ? solved : rightSide + solved;
    }

    private static ref Vector512<double> First<TNumber>(AlignedRow<TNumber> numbers)
        where TNumber : struct => ref Unsafe.As<TNumber, Vector512<double>>(ref numbers.First);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Element(ref Vector512<double> register, int index) =>
        Unsafe.Add(ref Unsafe.As<Vector512<double>, double>(ref register), index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Broadcast(Vector512<double> register, [ConstantExpected] int index) =>
        Vector512.Shuffle(register, Vector512.Create((long)index));
}
