using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>One thread's share of a batch: rows in tiles that stay in the cache.</summary>
internal sealed unsafe class BatchWorker : IDisposable
{
    internal static readonly int Statuses = Enum.GetValues<RowStatus>().Length;

    private const int RowsATile = RowKernel.Tile;

    // Results beyond this many bytes go past the caches.
    private const long PastCaches = 16L << 20;
    private const nuint Line = RowKernel.Line;

    private readonly RowKernel kernel;
    private readonly double* tile;
    private readonly double* tileStatus;
    private readonly double[] units;
    private readonly bool otherUnits;
    private RankedBins?[]? collected;

    internal BatchWorker(Batch batch, BatchOptions options)
    {
        kernel = RowKernel.Of(in batch.Scenario, [.. batch.Columns], batch.InputUnits, [.. batch.Outputs]);
        Tallies = NewTallies(batch, options);
        units = [.. batch.OutputUnits];
        otherUnits = Array.Exists(units, unit => unit != 1);
        int outputs = batch.Outputs.Count;
        tile = (double*)NativeMemory.AlignedAlloc((nuint)((outputs + 1) * RowsATile * sizeof(double)), Line);
        tileStatus = tile + (outputs * RowsATile);
    }

    internal ColumnTally[] Tallies { get; }

    internal long[] Counts { get; } = new long[Statuses];

    public void Dispose()
    {
        NativeMemory.AlignedFree(tile);
        kernel.Dispose();
    }

    internal static ColumnTally[] NewTallies(Batch batch, BatchOptions options) =>
        [
            .. batch.Outputs.Select(output => new ColumnTally(
                [.. options.Limits.Where(limit => limit.Output == output).Select(limit => Si(output, limit.Value))],
                options.Percentiles.Contains(output),
                options.Ranked
            )),
        ];

    internal void Collect(RankedBins?[]? bins) => collected = bins;

    /// <summary>Rows from one to before another.</summary>
    internal void Run(in BatchWork work, int first, int end, Span<Spread> spreads)
    {
        spreads.Clear();
        for (int row = first; row < end; row += RowsATile)
        {
            int rows = Math.Min(RowsATile, end - row);
            bool answered =
                (work.Pass == BatchPass.Collect && !Again(in work))
                || kernel.Run(work.Inputs, row, rows, tile, tileStatus);
            if (work.Pass == BatchPass.Evaluate)
            {
                Tally(in work, row, rows, spreads);
                Write(in work, row, rows);
                Count(in work, row, rows, answered);
            }
            else
            {
                Keep(in work, row, rows);
            }
        }
    }

    private static double Si(Output output, PhysicalValue value) =>
        Given.Alike(output.Name, output.Unit, value, nameof(Limit));

    // Where the results were not stored, or are not in SI units, they are computed once more.
    private bool Again(in BatchWork work) => work.Results.Length == 0 || otherUnits;

    private void Keep(in BatchWork work, int row, int rows)
    {
        for (int i = 0; i < Tallies.Length; i++)
        {
            ReadOnlySpan<double> values = Again(in work)
                ? new(tile + (i * RowsATile), rows)
                : new((double*)work.Results[i] + row, rows);
            collected![i]?.Keep(values);
        }
    }

    private void Tally(in BatchWork work, int row, int rows, Span<Spread> spreads)
    {
        int padded = (rows + ColumnTally.Together - 1) / ColumnTally.Together * ColumnTally.Together;
        for (int i = 0; i < Tallies.Length; i++)
        {
            double* values = tile + (i * RowsATile);
            new Span<double>(values + rows, padded - rows).Fill(double.NaN);
            spreads[i] = spreads[i].Then(Tallies[i].Add(new(values, padded), work.FirstRow + row));
        }
    }

    private void Write(in BatchWork work, int row, int rows)
    {
        bool past = (long)work.Rows * work.Results.Length * sizeof(double) > PastCaches;
        for (int i = 0; i < work.Results.Length; i++)
        {
            double* values = tile + (i * RowsATile);
            for (int k = 0; units[i] != 1 && k < rows; k++)
            {
                values[k] /= units[i];
            }

            Copy(values, (double*)work.Results[i] + row, rows, past);
        }
    }

    private void Count(in BatchWork work, int row, int rows, bool answered)
    {
        Span<RowStatus> statuses = work.Statuses == 0 ? default : new((RowStatus*)work.Statuses + row, rows);
        if (answered)
        {
            Counts[(int)RowStatus.Answered] += rows;
            statuses.Clear();
            return;
        }

        for (int i = 0; i < rows; i++)
        {
            int status = (int)tileStatus[i];
            Counts[status]++;
            if (!statuses.IsEmpty)
            {
                statuses[i] = (RowStatus)status;
            }
        }
    }

    private static void Copy(double* values, double* target, int rows, bool past)
    {
        int i = 0;
        if (past && Vector512.IsHardwareAccelerated)
        {
            for (; i < rows && ((nuint)(target + i) % Line) != 0; i++)
            {
                target[i] = values[i];
            }

            for (; i + Vector512<double>.Count <= rows; i += Vector512<double>.Count)
            {
                Vector512.StoreAlignedNonTemporal(Vector512.Load(values + i), target + i);
            }
        }
        else if (past && Vector256.IsHardwareAccelerated)
        {
            for (; i < rows && ((nuint)(target + i) % (Line / 2)) != 0; i++)
            {
                target[i] = values[i];
            }

            for (; i + Vector256<double>.Count <= rows; i += Vector256<double>.Count)
            {
                Vector256.StoreAlignedNonTemporal(Vector256.Load(values + i), target + i);
            }
        }

        new ReadOnlySpan<double>(values + i, rows - i).CopyTo(new(target + i, rows - i));
    }
}
