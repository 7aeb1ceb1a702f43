namespace TreadmillMech.Studies;

/// <summary>The result of many draws at a time.</summary>
internal abstract class TrialTile : IDisposable
{
    /// <summary>One result a draw; NaN where there is no answer.</summary>
    /// <param name="columns">Starts of the columns of inputs, filled up to a multiple of eight.</param>
    /// <param name="results">Takes the results, a tile at most.</param>
    internal abstract void Run(ReadOnlySpan<nint> columns, Span<double> results);

    public abstract void Dispose();
}
