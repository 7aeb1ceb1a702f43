using MathNet.Numerics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>Draws of the uncertain inputs, eight side by side.</summary>
internal sealed class Drawing(UncertainSet set)
{
    private readonly Lanes[] normals = new Lanes[set.Inputs.Length];

    /// <summary>Eight draws of every input.</summary>
    internal void Next(ref LaneStream random, Span<Lanes> values)
    {
        for (int i = 0; i < normals.Length; i++)
        {
            if (set.Correlated[i])
            {
                normals[i] = random.Normal();
            }
        }

        for (int i = 0; i < normals.Length; i++)
        {
            UncertainInput input = set.Inputs[i];
            values[i] = set.Correlated[i] ? Tied(input, Mixed(i), ref random) : Free(input, ref random);
        }
    }

    // The same input by itself: sums of uniform numbers need no inverse of the normal distribution.
    private static Lanes Free(UncertainInput input, ref LaneStream random)
    {
        double value = input.Value.Si;
        double u = input.StandardUncertainty.Si;
        return input.Distribution switch
        {
            Distribution.Rectangular => value + (Math.Sqrt(3) * u * ((2 * random.Uniform()) - 1)),
            Distribution.Triangular => value + (Math.Sqrt(6) * u * (random.Uniform() + random.Uniform() - 1)),
            _ => Tied(input, random.Normal(), ref random),
        };
    }

    /// <summary>Standard normal numbers turned into the input's own distribution (Gaussian copula).</summary>
    private static Lanes Tied(UncertainInput input, Lanes z, ref LaneStream random)
    {
        double value = input.Value.Si;
        double u = input.StandardUncertainty.Si;
        return input.Distribution switch
        {
            Distribution.Rectangular => value + (Math.Sqrt(3) * u * ((2 * Each(z, Below)) - 1)),
            Distribution.Triangular => value + (Math.Sqrt(6) * u * Each(z, Triangle)),
            Distribution.Lognormal => Lognormal(value, u, z),
            _ when double.IsFinite(input.DegreesOfFreedom) => value
                + (u * (z / Lanes.Sqrt(random.MeanSquare(input.DegreesOfFreedom)))),
            _ => value + (u * z),
        };
    }

    private static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    // From the tail's side, so that neither end loses digits.
    private static double Triangle(double z)
    {
        double tail = Math.Sqrt(2 * Below(-Math.Abs(z))) - 1;
        return z < 0 ? tail : -tail;
    }

    private static Lanes Lognormal(double mean, double deviation, Lanes z)
    {
        double square = Math.Log(1 + (deviation / mean * (deviation / mean)));
        return mean * Lanes.Exp((Math.Sqrt(square) * z) - (0.5 * square));
    }

    private static Lanes Each(Lanes z, Func<double, double> of)
    {
        Span<double> values = stackalloc double[Lanes.Count];
        for (int k = 0; k < Lanes.Count; k++)
        {
            values[k] = of(z[k]);
        }

        return new(values);
    }

    private Lanes Mixed(int row)
    {
        Lanes sum = 0;
        for (int k = 0; k <= row; k++)
        {
            sum += set.Factor[row, k] * normals[k];
        }

        return sum;
    }
}
