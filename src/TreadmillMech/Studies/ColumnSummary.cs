using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>What a batch tells about one output.</summary>
public sealed class ColumnSummary
{
    private readonly Limit[] limits;
    private readonly long[] below;
    private readonly long[] above;
    private readonly OrderedBins? bins;
    private readonly IReadOnlyDictionary<double, double> exact;

    internal ColumnSummary(
        Output output,
        in Spread spread,
        ColumnTally tally,
        IReadOnlyDictionary<double, double> percentiles
    )
    {
        Output = output;
        Answered = spread.Count;
        Mean = spread.Mean;
        StandardDeviation = spread.Count > 1 ? Math.Sqrt(spread.Squares / (spread.Count - 1)) : 0;
        (Least, Most) = (tally.Least, tally.Most);
        if (spread.Count == 0)
        {
            (Least, Mean, Most) = (double.NaN, double.NaN, double.NaN);
        }

        limits = [.. tally.Limits.Select(limit => new Limit(output, PhysicalValue.Of(limit, output.Unit)))];
        (below, above) = (tally.Below.ToArray(), tally.Above.ToArray());
        (Lowest, Highest) = (tally.Lowest, tally.Highest);
        bins = tally.Bins;
        exact = percentiles;
    }

    /// <summary>The output.</summary>
    public Output Output { get; }

    /// <summary>Rows in which it has a number; all that follows is of them.</summary>
    public long Answered { get; }

    /// <summary>Least value, SI; NaN where no row has one.</summary>
    public double Least { get; }

    /// <summary>Mean, SI; NaN where no row has one.</summary>
    public double Mean { get; }

    /// <summary>Largest value, SI; NaN where no row has one.</summary>
    public double Most { get; }

    /// <summary>Standard deviation over the rows, SI; 0 for a single one.</summary>
    public double StandardDeviation { get; }

    /// <summary>Rows with the lowest values, lowest first, ties by row number; as many as were asked for.</summary>
    public IReadOnlyList<RankedRow> Lowest { get; }

    /// <summary>Rows with the highest values, highest first, ties by row number; as many as were asked for.</summary>
    public IReadOnlyList<RankedRow> Highest { get; }

    /// <summary>Rows below a limit that was given in the options.</summary>
    /// <param name="limit">The limit.</param>
    /// <exception cref="ArgumentException">It was not given.</exception>
    public long Below(PhysicalValue limit) => below[Place(limit)];

    /// <summary>Rows above a limit that was given in the options.</summary>
    /// <param name="limit">The limit.</param>
    /// <exception cref="ArgumentException">It was not given.</exception>
    public long Above(PhysicalValue limit) => above[Place(limit)];

    /// <summary>
    /// The value below which a share of the answered rows lies, interpolated between two rows, SI: exact for the shares
    /// given in the options of a batch that was run at once. Otherwise the middle of <see cref="PercentileBounds"/>.
    /// </summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    /// <exception cref="InvalidOperationException">No percentiles of this output were asked for, or no row answered.</exception>
    public double Percentile(double share)
    {
        if (exact.TryGetValue(share, out double value))
        {
            return value;
        }

        Bounds bounds = PercentileBounds(share);
        return (0.5 * bounds.From) + (0.5 * bounds.To);
    }

    /// <summary>Bounds of a percentile, SI, that no row had to be kept for: they are 1/4096 of the value apart, or less.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside the range.</exception>
    /// <exception cref="InvalidOperationException">No percentiles of this output were asked for, or no row answered.</exception>
    public Bounds PercentileBounds(double share)
    {
        Given.Number(share, 0, 1, nameof(share));
        if (bins is null || bins.Count == 0)
        {
            throw new InvalidOperationException(
                bins is null
                    ? $"No percentiles of {Output.Name} were asked for in the options."
                    : $"{Output.Name} has no number in any row."
            );
        }

        double place = share * (bins.Count - 1);
        long rank = (long)place;
        Bounds low = OrderedBins.Ends(bins.AtRank(rank).Bin);
        Bounds high = OrderedBins.Ends(bins.AtRank(Math.Min(rank + 1, bins.Count - 1)).Bin);
        double way = place - rank;
        return new(
            Math.Max(Least, ((1 - way) * low.From) + (way * high.From)),
            Math.Min(Most, ((1 - way) * low.To) + (way * high.To))
        );
    }

    /// <summary>Least, mean and largest value in words, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Output.Name}: {Least:G4} to {Most:G4} {Output.Unit}, mean {Mean:G4} {Output.Unit}, {Answered} rows"
        );

    private int Place(PhysicalValue limit)
    {
        int place = Array.FindIndex(limits, one => one.Value == limit);
        return place >= 0
            ? place
            : throw new ArgumentException(
                $"{limit} is no limit of {Output.Name}; given: {string.Join(", ", limits.Select(one => one.Value))}.",
                nameof(limit)
            );
    }
}
