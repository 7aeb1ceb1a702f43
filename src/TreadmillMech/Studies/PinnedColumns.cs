using System.Buffers;
using System.Globalization;

namespace TreadmillMech.Studies;

/// <summary>Columns held in place while threads work on them.</summary>
internal sealed class PinnedColumns : IDisposable
{
    private readonly List<MemoryHandle> handles = [];

    internal unsafe PinnedColumns(
        Batch batch,
        IReadOnlyList<ReadOnlyMemory<double>> inputs,
        IReadOnlyList<Memory<double>> results,
        Memory<RowStatus> statuses
    )
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(results);
        Count("inputs", inputs.Count, batch.Columns.Count, nameof(inputs));
        if (results.Count > 0)
        {
            Count("results", results.Count, batch.Outputs.Count, nameof(results));
        }

        Rows = inputs[0].Length;
        for (int i = 0; i < inputs.Count; i++)
        {
            Length(batch.Columns[i].Name, inputs[i].Length, Rows, nameof(inputs));
        }

        for (int i = 0; i < results.Count; i++)
        {
            Length(batch.Outputs[i].Name, results[i].Length, Rows, nameof(results));
        }

        if (!statuses.IsEmpty)
        {
            Length("statuses", statuses.Length, Rows, nameof(statuses));
        }

        Inputs = [.. inputs.Select(column => Pin(column))];
        Results = [.. results.Select(column => Pin<double>(column))];
        Statuses = statuses.IsEmpty ? 0 : Pin<RowStatus>(statuses);
    }

    internal int Rows { get; }

    internal nint[] Inputs { get; }

    internal nint[] Results { get; }

    internal nint Statuses { get; }

    public void Dispose()
    {
        foreach (MemoryHandle handle in handles)
        {
            handle.Dispose();
        }
    }

    /// <summary>Refuses a column that has another length than the rows.</summary>
    internal static void Length(string name, int length, long rows, string argument)
    {
        if (length != rows)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{name} has {length} numbers; {rows} are needed."),
                argument
            );
        }
    }

    private static void Count(string what, int count, int needed, string argument)
    {
        if (count != needed)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"{what}: {count} columns; {needed} are needed."),
                argument
            );
        }
    }

    private unsafe nint Pin<T>(ReadOnlyMemory<T> column)
    {
        MemoryHandle handle = column.Pin();
        handles.Add(handle);
        return (nint)handle.Pointer;
    }
}
