namespace TreadmillMech.Peers;

/// <summary>A way to compute the outputs of rows.</summary>
internal abstract class Peer(Columns columns)
{
    protected Columns Columns { get; } = columns;

    /// <summary>Computes the rows from one to another, on one thread.</summary>
    internal abstract void Run(int from, int to);

    /// <summary>Computes the first rows on several threads.</summary>
    internal virtual void RunOn(int threads, int rows)
    {
        int part = ((rows / threads) + 7) / 8 * 8;
        Thread[] others = [.. Enumerable.Range(1, threads - 1).Select(k => new Thread(() => Of(k)))];
        Array.ForEach(others, thread => thread.Start());
        Of(0);
        Array.ForEach(others, thread => thread.Join());

        void Of(int k) => Run(part * k, Math.Min(rows, part * (k + 1)));
    }
}
