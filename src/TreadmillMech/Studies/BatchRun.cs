using System.Buffers;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>The work of a batch: blocks of rows on several threads, and what is told of them put together in order.</summary>
internal sealed class BatchRun : IDisposable
{
    internal const int RowsABlock = 8192;

    private readonly Batch batch;
    private readonly BatchOptions options;
    private readonly BatchWorker[] workers;
    private readonly Spread[] spreads;
    private readonly Lock gate = new();
    private readonly ParallelOptions parallel;
    private Spread[] parts = [];
    private BatchWork work;
    private int next;
    private int done;
    private bool disposed;

    internal BatchRun(Batch batch, BatchOptions options)
    {
        this.batch = batch;
        this.options = options;
        foreach (Output output in options.Limits.Select(limit => limit.Output).Concat(options.Percentiles))
        {
            if (!batch.Outputs.Contains(output))
            {
                throw new ArgumentException(
                    $"{output?.Name} is not in this batch, which has {string.Join(", ", batch.Outputs.Select(one => one.Name))}.",
                    nameof(options)
                );
            }
        }

        int threads = Math.Min(options.MostThreads ?? Environment.ProcessorCount, Environment.ProcessorCount);
        parallel = new() { MaxDegreeOfParallelism = threads };
        workers = new BatchWorker[threads];
        workers[0] = new(batch, options);
        spreads = new Spread[batch.Outputs.Count];
    }

    internal long Rows { get; private set; }

    /// <summary>Runs the rows of a chunk.</summary>
    internal void Chunk(
        nint[] inputs,
        nint[] results,
        nint statuses,
        int rows,
        CancellationToken cancellation,
        BatchPass pass = BatchPass.Evaluate
    )
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        work = new(inputs, results, statuses, rows, pass == BatchPass.Evaluate ? Rows : Rows - rows, pass);
        int blocks = (int)(((long)rows + RowsABlock - 1) / RowsABlock);
        int outputs = batch.Outputs.Count;
        parts = ArrayPool<Spread>.Shared.Rent(Math.Max(1, blocks * outputs));
        (next, done) = (0, 0);
        try
        {
            if (workers.Length == 1 || blocks < 2)
            {
                Blocks(0, blocks, cancellation);
            }
            else
            {
                parallel.CancellationToken = cancellation;
                Parallel.For(
                    0,
                    Math.Min(workers.Length, blocks),
                    parallel,
                    thread => Blocks(thread, blocks, cancellation)
                );
            }

            if (pass == BatchPass.Evaluate)
            {
                Rows += rows;
                for (int block = 0; block < blocks; block++)
                {
                    for (int i = 0; i < outputs; i++)
                    {
                        spreads[i] = spreads[i].Then(in parts[(block * outputs) + i]);
                    }
                }
            }
        }
        finally
        {
            ArrayPool<Spread>.Shared.Return(parts);
            parts = [];
        }
    }

    /// <summary>The summary of a run at once, with its exact percentiles.</summary>
    internal BatchSummary Finish(CancellationToken cancellation)
    {
        Dictionary<double, double>[] percentiles = new Dictionary<double, double>[batch.Outputs.Count];
        if (options.Percentiles.Count > 0 && options.Shares.Count > 0)
        {
            ColumnTally[] tallies = Tallies();
            RankedBins?[] wanted = [.. tallies.Select(tally => RankedBins.Of(tally.Bins, options.Shares))];
            foreach (BatchWorker worker in workers.Where(worker => worker is not null))
            {
                worker.Collect(wanted);
            }

            // The rows are gone through once more, and the numbers of the bins that matter are kept.
            BatchWork first = work;
            Chunk(first.Inputs, first.Results, first.Statuses, first.Rows, cancellation, BatchPass.Collect);
            for (int i = 0; i < percentiles.Length; i++)
            {
                percentiles[i] = wanted[i]?.Values() ?? [];
            }
        }

        return Summary(percentiles);
    }

    internal BatchSummary Summary(Dictionary<double, double>?[] percentiles)
    {
        ObjectDisposedException.ThrowIf(disposed, this);
        ColumnTally[] tallies = Tallies();
        long[] statuses = new long[BatchWorker.Statuses];
        foreach (BatchWorker worker in workers.Where(worker => worker is not null))
        {
            for (int i = 0; i < statuses.Length; i++)
            {
                statuses[i] += worker.Counts[i];
            }
        }

        return new(
            Rows,
            statuses,
            [
                .. batch.Outputs.Select(
                    (output, i) => new ColumnSummary(output, in spreads[i], tallies[i], percentiles[i] ?? [])
                ),
            ]
        );
    }

    public void Dispose()
    {
        if (!disposed)
        {
            disposed = true;
            foreach (BatchWorker worker in workers)
            {
                worker?.Dispose();
            }
        }
    }

    private ColumnTally[] Tallies()
    {
        ColumnTally[] sum = BatchWorker.NewTallies(batch, options);
        foreach (BatchWorker worker in workers.Where(worker => worker is not null))
        {
            for (int i = 0; i < sum.Length; i++)
            {
                sum[i].Add(worker.Tallies[i]);
            }
        }

        return sum;
    }

    private void Blocks(int thread, int blocks, CancellationToken cancellation)
    {
        BatchWorker worker = workers[thread] ??= new(batch, options);
        int outputs = batch.Outputs.Count;
        for (
            int block = Interlocked.Increment(ref next) - 1;
            block < blocks;
            block = Interlocked.Increment(ref next) - 1
        )
        {
            cancellation.ThrowIfCancellationRequested();
            int from = block * RowsABlock;
            worker.Run(in work, from, Math.Min(work.Rows, from + RowsABlock), parts.AsSpan(block * outputs, outputs));
            if (options.Progress is not null)
            {
                lock (gate)
                {
                    done++;
                    options.Progress.Report((double)done / blocks);
                }
            }
        }
    }
}
