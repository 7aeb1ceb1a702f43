using System.Globalization;

namespace TreadmillMech.Studies;

/// <summary>A result with its distribution by drawing (JCGM 101:2008).</summary>
public sealed class SampledUncertainty
{
    private readonly double[] sorted;

    internal SampledUncertainty(
        string name,
        string unit,
        double coverage,
        int draws,
        double[] sorted,
        Moments moments,
        Convergence convergence
    )
    {
        this.sorted = sorted;
        Name = name;
        Coverage = coverage;
        Draws = draws;
        Convergence = convergence;
        Mean = PhysicalValue.Of(moments.Mean, unit);
        StandardUncertainty = PhysicalValue.Of(moments.Deviation, unit);
        (double low, double high) = Order.Symmetric(sorted, coverage);
        (Low, High) = (PhysicalValue.Of(low, unit), PhysicalValue.Of(high, unit));
        (low, high) = Order.Shortest(sorted, coverage);
        (ShortestLow, ShortestHigh) = (PhysicalValue.Of(low, unit), PhysicalValue.Of(high, unit));
    }

    /// <summary>What the result is.</summary>
    public string Name { get; }

    /// <summary>Mean of the draws.</summary>
    public PhysicalValue Mean { get; }

    /// <summary>Standard deviation of the draws.</summary>
    public PhysicalValue StandardUncertainty { get; }

    /// <summary>Probability that the intervals cover.</summary>
    public double Coverage { get; }

    /// <summary>Lower end of the interval with the same probability on either side of it.</summary>
    public PhysicalValue Low { get; }

    /// <summary>Upper end of that interval.</summary>
    public PhysicalValue High { get; }

    /// <summary>Lower end of the shortest interval.</summary>
    public PhysicalValue ShortestLow { get; }

    /// <summary>Upper end of the shortest interval.</summary>
    public PhysicalValue ShortestHigh { get; }

    /// <summary>How many draws were made.</summary>
    public int Draws { get; }

    /// <summary>
    /// Draws without an answer: an input left its range, or the output has no answer there. All numbers are of the others; a
    /// large share says that the question has no sure answer.
    /// </summary>
    public int WithoutAnswer => Draws - sorted.Length;

    /// <summary>How far the numbers have settled.</summary>
    public Convergence Convergence { get; }

    /// <summary>The results in rising order, as plain SI numbers.</summary>
    public ReadOnlySpan<double> Sorted => sorted;

    /// <summary>The result below which a share of the draws lies.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    public PhysicalValue Percentile(double share) =>
        PhysicalValue.Of(Order.Quantile(sorted, Given.Number(share, 0, 1, nameof(share))), Mean.Unit);

    /// <summary>The share of the draws below a result.</summary>
    /// <param name="value">The result.</param>
    /// <exception cref="ArgumentException">The value has another dimension.</exception>
    public double ShareBelow(PhysicalValue value)
    {
        double number = Given.Alike(Name, Mean.Unit, value, nameof(value));
        int below = 0;
        int above = sorted.Length;
        while (below < above)
        {
            int middle = below + ((above - below) / 2);
            (below, above) = sorted[middle] < number ? (middle + 1, above) : (below, middle);
        }

        return (double)below / sorted.Length;
    }

    /// <summary>Mean and interval in words, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Name} {Mean}, u = {StandardUncertainty}, {100 * Coverage:0.##} % from {Low} to {High}"
        );
}
