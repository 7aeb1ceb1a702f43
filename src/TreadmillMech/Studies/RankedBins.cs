namespace TreadmillMech.Studies;

/// <summary>The numbers of the bins in which wanted ranks lie; sorted, they give percentiles exactly.</summary>
internal sealed class RankedBins
{
    private readonly long count;
    private readonly double[] shares;
    private readonly Dictionary<int, List<double>> numbers = [];
    private readonly Dictionary<int, long> below = [];
    private readonly OrderedBins bins;
    private readonly Lock gate = new();

    private RankedBins(OrderedBins bins, IReadOnlyList<double> shares)
    {
        this.bins = bins;
        count = bins.Count;
        this.shares = [.. shares];
        foreach (double share in shares)
        {
            foreach (long rank in Ranks(share))
            {
                (int bin, long before) = bins.AtRank(rank);
                numbers[bin] = [];
                below[bin] = before;
            }
        }
    }

    internal static RankedBins? Of(OrderedBins? bins, IReadOnlyList<double> shares) =>
        bins is { Count: > 0 } ? new(bins, shares) : null;

    /// <summary>Keeps the numbers of a tile that lie in one of the bins; several threads may bring some.</summary>
    internal void Keep(ReadOnlySpan<double> tile)
    {
        foreach (double value in tile)
        {
            if (!double.IsNaN(value) && numbers.TryGetValue(OrderedBins.Of(value), out List<double>? kept))
            {
                lock (gate)
                {
                    kept.Add(value);
                }
            }
        }
    }

    /// <summary>The percentile of every share.</summary>
    internal Dictionary<double, double> Values()
    {
        foreach (List<double> kept in numbers.Values)
        {
            kept.Sort();
        }

        Dictionary<double, double> values = [];
        foreach (double share in shares)
        {
            double place = share * (count - 1);
            long[] ranks = [.. Ranks(share)];
            double low = AtRank(ranks[0]);
            values[share] = low + ((place - ranks[0]) * (AtRank(ranks[1]) - low));
        }

        return values;
    }

    private IEnumerable<long> Ranks(double share)
    {
        long rank = (long)(share * (count - 1));
        yield return rank;
        yield return Math.Min(rank + 1, count - 1);
    }

    private double AtRank(long rank)
    {
        int bin = bins.AtRank(rank).Bin;
        return numbers[bin][(int)(rank - below[bin])];
    }
}
