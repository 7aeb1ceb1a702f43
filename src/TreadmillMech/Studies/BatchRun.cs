using System.Buffers;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>The work of a batch: blocks of rows on several threads, and what is told of them put together in order.</summary>
internal sealed class BatchRun : IDisposable
{
    internal const int RowsABlock = 8192;

    private readonly Batch batch;
    private readonly BatchOptions options;
    private readonly List<BatchWorker> workers = [];
    private readonly Stack<BatchWorker> idle = [];
    private readonly Spread[] spreads;
    private readonly Lock gate = new();
    private readonly ParallelOptions parallel;
    private Spread[] parts = [];
    private BatchWork work;
    private RankedBins?[]? collected;
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

        parallel = new() { MaxDegreeOfParallelism = options.MostThreads ?? -1 };
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
        done = 0;
        try
        {
            if (options.MostThreads == 1 || blocks < 2)
            {
                InTurn(blocks, cancellation);
            }
            else
            {
                parallel.CancellationToken = cancellation;
                Parallel.For(0, blocks, parallel, Take, (block, _, worker) => Block(worker, block, blocks), Leave);
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
            collected = wanted;
            foreach (BatchWorker worker in workers)
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
        foreach (BatchWorker worker in workers)
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
                worker.Dispose();
            }
        }
    }

    private ColumnTally[] Tallies()
    {
        ColumnTally[] sum = BatchWorker.NewTallies(batch, options);
        foreach (BatchWorker worker in workers)
        {
            for (int i = 0; i < sum.Length; i++)
            {
                sum[i].Add(worker.Tallies[i]);
            }
        }

        return sum;
    }

    private void InTurn(int blocks, CancellationToken cancellation)
    {
        BatchWorker worker = Take();
        for (int block = 0; block < blocks; block++)
        {
            cancellation.ThrowIfCancellationRequested();
            Block(worker, block, blocks);
        }

        Leave(worker);
    }

    private BatchWorker Block(BatchWorker worker, int block, int blocks)
    {
        int outputs = batch.Outputs.Count;
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

        return worker;
    }

    /// <summary>A worker for a thread; those that are there already are used again.</summary>
    private BatchWorker Take()
    {
        lock (gate)
        {
            if (idle.TryPop(out BatchWorker? free))
            {
                return free;
            }

            BatchWorker worker = new(batch, options);
            worker.Collect(collected);
            workers.Add(worker);
            return worker;
        }
    }

    private void Leave(BatchWorker worker)
    {
        lock (gate)
        {
            idle.Push(worker);
        }
    }
}
