using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>What is told about one output over rows: extremes, counts at limits, bins, ranked rows.</summary>
internal sealed class ColumnTally
{
    /// <summary>Rows that are summed side by side.</summary>
    internal const int Together = 8;

    private readonly double[] limits;
    private readonly long[] below;
    private readonly long[] above;
    private readonly OrderedBins? bins;
    private readonly Ranking? lowest;
    private readonly Ranking? highest;

    internal ColumnTally(double[] limits, bool percentiles, int ranked)
    {
        this.limits = limits;
        below = new long[limits.Length];
        above = new long[limits.Length];
        bins = percentiles ? new() : null;
        lowest = ranked > 0 ? new(ranked) : null;
        highest = ranked > 0 ? new(ranked) : null;
        Clear();
    }

    internal double Least { get; private set; }

    internal double Most { get; private set; }

    internal OrderedBins? Bins => bins;

    internal IReadOnlyList<double> Limits => limits;

    internal ReadOnlySpan<long> Below => below;

    internal ReadOnlySpan<long> Above => above;

    internal IReadOnlyList<RankedRow> Lowest => lowest is null ? [] : [.. lowest.Rows];

    // Ranked by the negative number, so that the highest comes first.
    internal IReadOnlyList<RankedRow> Highest =>
        highest is null ? [] : [.. highest.Rows.ToArray().Select(row => row with { Si = -row.Si })];

    internal void Clear()
    {
        (Least, Most) = (double.PositiveInfinity, double.NegativeInfinity);
        below.AsSpan().Clear();
        above.AsSpan().Clear();
        bins?.Clear();
        lowest?.Clear();
        highest?.Clear();
    }

    internal void Add(ColumnTally other)
    {
        (Least, Most) = (Math.Min(Least, other.Least), Math.Max(Most, other.Most));
        for (int i = 0; i < limits.Length; i++)
        {
            below[i] += other.below[i];
            above[i] += other.above[i];
        }

        bins?.Add(other.bins!);
        lowest?.Add(other.lowest!);
        highest?.Add(other.highest!);
    }

    /// <summary>Adds the rows of a tile, a multiple of eight with NaN where there is no answer.</summary>
    internal Spread Add(ReadOnlySpan<double> tile, long firstRow)
    {
        // Eight sums side by side, in one order for every register width.
        ReadOnlySpan<Vector256<double>> fours = MemoryMarshal.Cast<double, Vector256<double>>(tile);
        Vector256<double> low = default;
        Vector256<double> high = default;
        Vector256<double> count = default;
        FourLanes least = Least;
        FourLanes most = Most;
        for (int i = 0; i + 1 < fours.Length; i += 2)
        {
            count += One(fours[i]) + One(fours[i + 1]);
            low += Number(fours[i]);
            high += Number(fours[i + 1]);
            // What is no number changes neither.
            least = FourLanes.Min(new(fours[i + 1]), FourLanes.Min(new(fours[i]), least));
            most = FourLanes.Max(FourLanes.Max(most, new(fours[i])), new(fours[i + 1]));
        }

        long answered = (long)Sum(count, default);
        if (answered == 0)
        {
            return default;
        }

        double mean = Sum(low, high) / answered;
        for (int i = 0; i < FourLanes.Count; i++)
        {
            (Least, Most) = (Math.Min(Least, least[i]), Math.Max(Most, most[i]));
        }

        (low, high) = (default, default);
        Vector256<double> middle = Vector256.Create(mean);
        for (int i = 0; i + 1 < fours.Length; i += 2)
        {
            low += Square(fours[i], middle);
            high += Square(fours[i + 1], middle);
        }

        Count(fours);
        Bin(tile);
        Rank(tile, firstRow);
        return new(answered, mean, Sum(low, high));
    }

    private static Vector256<double> Number(Vector256<double> value) => value & Vector256.Equals(value, value);

    private static Vector256<double> One(Vector256<double> value) =>
        Vector256<double>.One & Vector256.Equals(value, value);

    private static Vector256<double> Square(Vector256<double> value, Vector256<double> mean)
    {
        Vector256<double> apart = Number(value - mean);
        return apart * apart;
    }

    private static double Sum(Vector256<double> low, Vector256<double> high) =>
        (low[0] + low[1] + (low[2] + low[3])) + (high[0] + high[1] + (high[2] + high[3]));

    private void Count(ReadOnlySpan<Vector256<double>> fours)
    {
        for (int i = 0; i < limits.Length; i++)
        {
            Vector256<double> limit = Vector256.Create(limits[i]);
            Vector256<double> under = default;
            Vector256<double> over = default;
            foreach (Vector256<double> value in fours)
            {
                under += Vector256<double>.One & Vector256.LessThan(value, limit);
                over += Vector256<double>.One & Vector256.GreaterThan(value, limit);
            }

            below[i] += (long)Sum(under, default);
            above[i] += (long)Sum(over, default);
        }
    }

    private void Bin(ReadOnlySpan<double> tile)
    {
        if (bins is not null)
        {
            foreach (double value in tile)
            {
                if (!double.IsNaN(value))
                {
                    bins.Add(value);
                }
            }
        }
    }

    private void Rank(ReadOnlySpan<double> tile, long firstRow)
    {
        if (lowest is null || highest is null)
        {
            return;
        }

        for (int i = 0; i < tile.Length; i++)
        {
            if (tile[i] < lowest.Worst)
            {
                lowest.Add(firstRow + i, tile[i]);
            }

            if (-tile[i] < highest.Worst)
            {
                highest.Add(firstRow + i, -tile[i]);
            }
        }
    }
}
