using MathNet.Numerics;

namespace TreadmillMech.Studies;

/// <summary>Draws of the uncertain inputs.</summary>
internal sealed class Drawing(UncertainSet set)
{
    private readonly double[] normals = new double[set.Inputs.Length];

    /// <summary>One draw of every input.</summary>
    internal void Next(ref RandomStream random, Span<double> values)
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
    private static double Free(UncertainInput input, ref RandomStream random)
    {
        double u = input.StandardUncertainty.Si;
        return input.Distribution switch
        {
            Distribution.Rectangular => input.Value.Si + (Math.Sqrt(3) * u * ((2 * random.Uniform()) - 1)),
            Distribution.Triangular => input.Value.Si + (Math.Sqrt(6) * u * (random.Uniform() + random.Uniform() - 1)),
            _ => Tied(input, random.Normal(), ref random),
        };
    }

    /// <summary>A standard normal number turned into the input's own distribution (Gaussian copula).</summary>
    private static double Tied(UncertainInput input, double z, ref RandomStream random)
    {
        double value = input.Value.Si;
        double u = input.StandardUncertainty.Si;
        return input.Distribution switch
        {
            Distribution.Rectangular => value + (Math.Sqrt(3) * u * ((2 * Below(z)) - 1)),
            Distribution.Triangular => value + (Math.Sqrt(6) * u * Triangle(z)),
            Distribution.Lognormal => Lognormal(value, u, z),
            _ => value
                + (
                    u
                    * (
                        double.IsFinite(input.DegreesOfFreedom)
                            ? z / Math.Sqrt(random.MeanSquare(input.DegreesOfFreedom))
                            : z
                    )
                ),
        };
    }

    private static double Below(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    // From the tail's side, so that neither end loses digits.
    private static double Triangle(double z)
    {
        double tail = Math.Sqrt(2 * Below(-Math.Abs(z))) - 1;
        return z < 0 ? tail : -tail;
    }

    private static double Lognormal(double mean, double deviation, double z)
    {
        double square = Math.Log(1 + (deviation / mean * (deviation / mean)));
        return mean * Math.Exp((Math.Sqrt(square) * z) - (0.5 * square));
    }

    private double Mixed(int row)
    {
        double sum = 0;
        for (int k = 0; k <= row; k++)
        {
            sum += set.Factor[row, k] * normals[k];
        }

        return sum;
    }
}
