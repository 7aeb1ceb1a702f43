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
internal sealed class RegisterSolver
{
    private const int Register = 8;

    private readonly int coupled;
    private readonly int registers;
    private readonly double[] inverse;
    private readonly double[] divisors;

    internal RegisterSolver(int count, int coupled)
    {
        this.coupled = coupled;
        registers = (count + Register - 1) / Register;
        inverse = new double[Register * coupled];
        divisors = new double[Register * registers];
    }

    /// <summary>Inverts for a diagonal.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal void Factor(double diagonal, in SlopeTable<Real> slopes)
    {
        Vector512<double> numbers = Vector512.Create(0d, 1, 2, 3, 4, 5, 6, 7);
        Vector512<double> diagonals = Vector512.Create(diagonal);
        ref Vector512<double> columns = ref First(Cells.Of(slopes.Numbers));
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

        ref Vector512<double> own = ref First(Cells.Of(slopes.Own));
        ref Vector512<double> divisor = ref First(divisors);
        for (int i = 0; i < registers; i++)
        {
            Unsafe.Add(ref divisor, i) = Vector512<double>.One / (diagonals - Unsafe.Add(ref own, i));
        }
    }

    /// <summary>Solves in place.</summary>
    /// <param name="rightSide">Registers of the right side.</param>
    /// <param name="slopes">The slopes.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal void Solve(ref Vector512<double> rightSide, in SlopeTable<Real> slopes)
    {
        ref Vector512<double> columns = ref First(inverse);
        Vector512<double> even = Vector512<double>.Zero;
        Vector512<double> odd = Vector512<double>.Zero;
        int column = 0;
        for (; column < coupled - 1; column += 2)
        {
            even = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, column), Spread(ref rightSide, column), even);
            odd = Vector512.FusedMultiplyAdd(
                Unsafe.Add(ref columns, column + 1),
                Spread(ref rightSide, column + 1),
                odd
            );
        }

        if (column < coupled)
        {
            even = Vector512.FusedMultiplyAdd(Unsafe.Add(ref columns, column), Spread(ref rightSide, column), even);
        }

        // The following states of the first register come with the others below.
        Vector512<double> isCoupled = Vector512.LessThan(
            Vector512.Create(0d, 1, 2, 3, 4, 5, 6, 7),
            Vector512.Create((double)coupled)
        );
        Vector512<double> solved = Vector512.ConditionalSelect(isCoupled, even + odd, rightSide);
        rightSide = solved;
        ref Vector512<double> rows = ref First(Cells.Of(slopes.Numbers));
        ref Vector512<double> divisor = ref First(divisors);
        for (int i = coupled == Register ? 1 : 0; i < registers; i++)
        {
            Vector512<double> sum = Unsafe.Add(ref rightSide, i);
            for (column = 0; column < coupled; column++)
            {
                sum = Vector512.FusedMultiplyAdd(
                    Unsafe.Add(ref rows, (column * registers) + i),
                    Spread(ref rightSide, column),
                    sum
                );
            }

            sum *= Unsafe.Add(ref divisor, i);
            Unsafe.Add(ref rightSide, i) = i == 0 ? Vector512.ConditionalSelect(isCoupled, solved, sum) : sum;
        }
    }

    private static ref Vector512<double> First(Span<double> numbers) =>
        ref Unsafe.As<double, Vector512<double>>(ref MemoryMarshal.GetReference(numbers));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Element(ref Vector512<double> register, int index) =>
        Unsafe.Add(ref Unsafe.As<Vector512<double>, double>(ref register), index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Spread(ref Vector512<double> register, int index) =>
        Vector512.Create(Element(ref register, index));
}
