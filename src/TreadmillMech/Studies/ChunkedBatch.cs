namespace TreadmillMech.Studies;

/// <summary>A batch that takes its rows in chunks and keeps nothing of them but the summary.</summary>
/// <remarks>
/// Not for several threads at once: the chunks come one after the other, each on all cores. The memory does not grow
/// with the number of rows. Counts, extremes, ranked rows and bounds of percentiles are the same for any size of the
/// chunks; means and deviations may differ in the last digits.
/// </remarks>
public sealed class ChunkedBatch : IDisposable
{
    private readonly Batch batch;
    private readonly BatchRun run;

    internal ChunkedBatch(Batch batch, BatchOptions options)
    {
        this.batch = batch;
        run = new(batch, options);
    }

    /// <summary>Rows taken so far.</summary>
    public long Rows => run.Rows;

    /// <summary>The next rows.</summary>
    /// <param name="inputs">The columns, all of one length, in the order of the batch.</param>
    /// <param name="results">Takes the columns of the outputs, as long; null where only the summary is wanted.</param>
    /// <param name="statuses">Takes the status of each row; empty where it is not wanted.</param>
    /// <param name="cancellation">Ends the work early; the stream must not be used further then.</param>
    /// <exception cref="ArgumentNullException">The list of columns is null.</exception>
    /// <exception cref="ArgumentException">There are more or fewer columns, or one has another length than the first.</exception>
    /// <exception cref="ObjectDisposedException">The stream was disposed of.</exception>
    /// <exception cref="OperationCanceledException">The work was ended early.</exception>
    public void Add(
        IReadOnlyList<ReadOnlyMemory<double>> inputs,
        IReadOnlyList<Memory<double>>? results = null,
        Memory<RowStatus> statuses = default,
        CancellationToken cancellation = default
    )
    {
        using PinnedColumns pinned = new(batch, inputs, results ?? [], statuses);
        run.Chunk(pinned.Inputs, pinned.Results, pinned.Statuses, pinned.Rows, cancellation);
    }

    /// <summary>The summary of the rows taken so far.</summary>
    /// <exception cref="ObjectDisposedException">The stream was disposed of.</exception>
    public BatchSummary Summary() => run.Summary(new Dictionary<double, double>[batch.Outputs.Count]);

    /// <summary>Gives back the working space.</summary>
    public void Dispose() => run.Dispose();
}
