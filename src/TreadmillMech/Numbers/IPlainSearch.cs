namespace TreadmillMech.Numbers;

/// <summary>A search that is done on plain numbers, one or eight at a time, never on derivatives.</summary>
internal interface IPlainSearch
{
    /// <summary>Fills the results from the arguments; at most <see cref="Dual{T}.MostPlain"/> of each.</summary>
    static abstract void Run<T>(ReadOnlySpan<T> arguments, Span<T> results)
        where T : struct, IReal<T>;
}
