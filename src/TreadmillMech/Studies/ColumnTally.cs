using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>What is told about one output over rows: extremes, counts at limits, bins, ranked rows.</summary>
internal sealed class ColumnTally
{
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
        ReadOnlySpan<Vector512<double>> eights = MemoryMarshal.Cast<double, Vector512<double>>(tile);
        Vector512<double> sum = default;
        Vector512<double> count = default;
        Vector512<double> least = Vector512.Create(double.PositiveInfinity);
        Vector512<double> most = Vector512.Create(double.NegativeInfinity);
        foreach (Vector512<double> value in eights)
        {
            Vector512<double> there = Vector512.Equals(value, value);
            sum += value & there;
            count += Vector512<double>.One & there;
            least = Vector512.ConditionalSelect(Vector512.LessThan(value, least), value, least);
            most = Vector512.ConditionalSelect(Vector512.GreaterThan(value, most), value, most);
        }

        long answered = (long)Sum(count);
        if (answered == 0)
        {
            return default;
        }

        double mean = Sum(sum) / answered;
        for (int i = 0; i < Lanes.Count; i++)
        {
            (Least, Most) = (Math.Min(Least, least[i]), Math.Max(Most, most[i]));
        }

        Vector512<double> squares = default;
        foreach (Vector512<double> value in eights)
        {
            Vector512<double> apart = (value - Vector512.Create(mean)) & Vector512.Equals(value, value);
            squares += apart * apart;
        }

        Count(eights);
        Bin(tile);
        Rank(tile, firstRow);
        return new(answered, mean, Sum(squares));
    }

    // One order for every register width.
    private static double Sum(Vector512<double> v) => (v[0] + v[1] + (v[2] + v[3])) + (v[4] + v[5] + (v[6] + v[7]));

    private void Count(ReadOnlySpan<Vector512<double>> eights)
    {
        for (int i = 0; i < limits.Length; i++)
        {
            Vector512<double> limit = Vector512.Create(limits[i]);
            Vector512<double> under = default;
            Vector512<double> over = default;
            foreach (Vector512<double> value in eights)
            {
                under += Vector512<double>.One & Vector512.LessThan(value, limit);
                over += Vector512<double>.One & Vector512.GreaterThan(value, limit);
            }

            below[i] += (long)Sum(under);
            above[i] += (long)Sum(over);
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
