using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using MathNet.Numerics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>Draws of the uncertain inputs, a column of each; one thread's.</summary>
internal sealed unsafe class Drawing : IDisposable
{
    private const int Rows = RowKernel.Tile;

    private readonly UncertainSet set;
    private readonly nint[] columns;
    private readonly double* numbers;

    // Whatever an input needs besides its first number: a second one, or a mean square.
    private readonly double* seconds;
    private readonly double[] freedom;

    internal Drawing(UncertainSet set)
    {
        this.set = set;
        int inputs = set.Inputs.Length;
        numbers = (double*)NativeMemory.AlignedAlloc((nuint)(2 * inputs * Rows * sizeof(double)), RowKernel.Line);
        seconds = numbers + (inputs * Rows);
        columns = new nint[inputs];
        for (int i = 0; i < inputs; i++)
        {
            columns[i] = (nint)(numbers + (i * Rows));
        }

        freedom =
        [
            .. set.Inputs.Select(input =>
                input.Distribution == Distribution.Normal ? input.DegreesOfFreedom : double.PositiveInfinity
            ),
        ];
    }

    /// <summary>Starts of the columns that <see cref="Fill"/> fills.</summary>
    internal ReadOnlySpan<nint> Columns => columns;

    public void Dispose() => NativeMemory.AlignedFree(numbers);

    /// <summary>Draws every input.</summary>
    /// <param name="random">The streams.</param>
    /// <param name="rows">How many draws, a tile at most; rounded up to a multiple of eight.</param>
    internal void Fill(ref LaneStream random, int rows)
    {
        int eights = (rows + LaneStream.Count - 1) / LaneStream.Count * LaneStream.Count;
        LaneStream streams = random;
        for (int row = 0; row < eights; row += LaneStream.Count)
        {
            Draw(ref streams, row);
        }

        random = streams;
        if (Vector512.IsHardwareAccelerated)
        {
            Shape<Lanes>(eights);
        }
        else
        {
            Shape<FourLanes>(eights);
        }
    }

    private void Draw(ref LaneStream random, int row)
    {
        for (int i = 0; i < columns.Length; i++)
        {
            if (set.Correlated[i])
            {
                random.Uniform(numbers + (i * Rows) + row);
            }
        }

        for (int i = 0; i < columns.Length; i++)
        {
            int place = (i * Rows) + row;
            if (!set.Correlated[i])
            {
                random.Uniform(numbers + place);
                if (set.Inputs[i].Distribution == Distribution.Triangular)
                {
                    random.Uniform(seconds + place);
                }
            }

            if (double.IsFinite(freedom[i]))
            {
                random.MeanSquare(freedom[i], seconds + place);
            }
        }
    }

    private void Shape<T>(int rows)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        for (int i = 0; i < columns.Length; i++)
        {
            // The same input by itself: sums of uniform numbers need no inverse of the normal distribution.
            if (set.Correlated[i] || set.Inputs[i].Distribution is Distribution.Normal or Distribution.Lognormal)
            {
                NormalQuantile.Of<T>(new Span<double>((double*)columns[i], rows));
            }
        }

        // From the last on, since an input is mixed of itself and those before.
        for (int i = columns.Length - 1; i >= 0; i--)
        {
            double value = set.Inputs[i].Value.Si;
            double u = set.Inputs[i].StandardUncertainty.Si;
            for (int row = 0; row < rows; row += T.Width)
            {
                T z = set.Correlated[i] ? Mixed<T>(i, row) : T.Load((double*)columns[i] + row);
                T second = T.Load(seconds + (i * Rows) + row);
                Shaped(i, value, u, z, second).Store((double*)columns[i] + row);
            }
        }
    }

    /// <summary>An input's number from uniform ones, or from a standard normal one (Gaussian copula).</summary>
    private T Shaped<T>(int input, double value, double u, T z, T second)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        bool normal = set.Correlated[input];
        return set.Inputs[input].Distribution switch
        {
            Distribution.Rectangular => value + (Math.Sqrt(3) * u * ((2 * (normal ? Each(z, Below) : z)) - 1)),
            Distribution.Triangular => value + (Math.Sqrt(6) * u * (normal ? Each(z, Triangle) : z + second - 1)),
            Distribution.Lognormal => Lognormal(value, u, z),
            _ => value + (u * (double.IsFinite(freedom[input]) ? z / T.Sqrt(second) : z)),
        };
    }

    private static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    // From the tail's side, so that neither end loses digits.
    private static double Triangle(double z)
    {
        double tail = Math.Sqrt(2 * Below(-Math.Abs(z))) - 1;
        return z < 0 ? tail : -tail;
    }

    private static T Lognormal<T>(double mean, double deviation, T z)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        double square = Math.Log(1 + (deviation / mean * (deviation / mean)));
        return mean * T.Exp((Math.Sqrt(square) * z) - (0.5 * square));
    }

    private static T Each<T>(T z, Func<double, double> of)
        where T : unmanaged, ILanes<T>, IReal<T> => LaneFunctions.Others(z, default, z, of);

    private T Mixed<T>(int input, int row)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        T sum = 0;
        for (int k = 0; k <= input; k++)
        {
            if (set.Correlated[k])
            {
                sum += set.Factor[input, k] * T.Load((double*)columns[k] + row);
            }
        }

        return sum;
    }
}
