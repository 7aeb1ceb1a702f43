namespace TreadmillMech.Tests.Numbers;

/// <summary>Plain doubles into any number type and out again.</summary>
internal static class Plain
{
    public static int Width<T>()
        where T : struct, IReal<T> => T.Width;

    /// <summary>A number from as many doubles as the type is wide, with derivative zero.</summary>
    public static T Pack<T>(ReadOnlySpan<double> values)
        where T : struct, IReal<T>
    {
        if (typeof(T) == typeof(Lanes))
        {
            return (T)(object)new Lanes(values);
        }

        if (typeof(T) == typeof(FourLanes))
        {
            return (T)(object)new FourLanes(values);
        }

        return typeof(T) == typeof(Dual<Lanes>) ? (T)(object)new Dual<Lanes>(new Lanes(values), 0) : values[0];
    }

    /// <summary>The innermost value of one lane.</summary>
    public static double Unpack<T>(T value, int lane = 0)
        where T : struct, IReal<T> =>
        value switch
        {
            Real x => x.Value,
            Lanes x => x[lane],
            FourLanes x => x[lane],
            Dual<Real> x => x.Value.Value,
            Dual<Dual<Real>> x => x.Value.Value.Value,
            Dual<Lanes> x => x.Value[lane],
            _ => throw new NotSupportedException(typeof(T).Name),
        };

    /// <summary>A function of a number, applied to plain doubles as many at a time as the type is wide.</summary>
    public static double[] Map<T>(Func<T, T> function, IReadOnlyList<double> inputs)
        where T : struct, IReal<T> => Map<T>((x, _) => function(x), [.. inputs.Select(x => (x, 0.0))]);

    /// <inheritdoc cref="Map{T}(Func{T, T}, IReadOnlyList{double})"/>
    public static double[] Map<T>(Func<T, T, T> function, IReadOnlyList<(double First, double Second)> inputs)
        where T : struct, IReal<T>
    {
        int width = Width<T>();
        double[] results = new double[inputs.Count];
        double[] first = new double[width];
        double[] second = new double[width];
        for (int i = 0; i < inputs.Count; i += width)
        {
            for (int k = 0; k < width; k++)
            {
                (first[k], second[k]) = inputs[Math.Min(i + k, inputs.Count - 1)];
            }

            T result = function(Pack<T>(first), Pack<T>(second));
            for (int k = 0; k < width && i + k < inputs.Count; k++)
            {
                results[i + k] = Unpack(result, k);
            }
        }

        return results;
    }
}
