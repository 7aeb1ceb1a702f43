using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>What a batch tells about its rows as a whole.</summary>
public sealed class BatchSummary
{
    private readonly ColumnSummary[] columns;
    private readonly long[] statuses;

    internal BatchSummary(long rows, long[] statuses, ColumnSummary[] columns)
    {
        Rows = rows;
        this.statuses = statuses;
        this.columns = columns;
    }

    /// <summary>How many rows there were, answered or not.</summary>
    public long Rows { get; }

    /// <summary>The outputs, in the order they were asked for.</summary>
    public IReadOnlyList<ColumnSummary> Columns => columns;

    /// <summary>One output.</summary>
    /// <param name="output">The output.</param>
    /// <exception cref="ArgumentException">It was not asked for.</exception>
    public ColumnSummary this[Output output] =>
        Array.Find(columns, one => one.Output == output)
        ?? throw new ArgumentException(
            $"{output?.Name} is not in this batch, which has {string.Join(", ", columns.Select(one => one.Output.Name))}.",
            nameof(output)
        );

    /// <summary>How many rows have a status. The counts of all statuses add up to the rows.</summary>
    /// <param name="status">The status.</param>
    public long Count(RowStatus status) => (int)status < statuses.Length ? statuses[(int)status] : 0;

    /// <summary>The counts in words, invariant.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Rows} rows: {string.Join(", ", Enum.GetValues<RowStatus>().Where(s => Count(s) > 0).Select(s => string.Create(CultureInfo.InvariantCulture, $"{Count(s)} {s}")))}"
        );
}
