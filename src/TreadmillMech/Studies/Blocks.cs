using System.Runtime.ExceptionServices;

namespace TreadmillMech.Studies;

/// <summary>Work in numbered blocks on several threads; what a block does depends on nothing but its number.</summary>
internal static class Blocks
{
    /// <summary>Runs every block once.</summary>
    /// <param name="count">How many blocks.</param>
    /// <param name="threads">Most threads; null for all there are.</param>
    /// <param name="progress">Told the share that is done, never less than before.</param>
    /// <param name="work">What to do for a block.</param>
    /// <param name="cancellation">Ends the work early.</param>
    internal static void Run(
        int count,
        int? threads,
        IProgress<double>? progress,
        Action<int> work,
        CancellationToken cancellation
    )
    {
        Lock gate = new();
        int done = 0;
        ParallelOptions options = new() { MaxDegreeOfParallelism = threads ?? -1, CancellationToken = cancellation };
        try
        {
            Parallel.For(
                0,
                count,
                options,
                block =>
                {
                    work(block);
                    if (progress is not null)
                    {
                        lock (gate)
                        {
                            done++;
                            progress.Report((double)done / count);
                        }
                    }
                }
            );
        }
        catch (AggregateException several) when (several.InnerExceptions.Count > 0)
        {
            // What a caller's own function throws reaches the caller as it is.
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }
    }
}
