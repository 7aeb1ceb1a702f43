using System.Globalization;
using System.Numerics;
using Parquet;
using Parquet.Schema;

namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>A fleet in Apache Parquet, a row group at a time: memory goes with the largest group, not with the file.</summary>
internal sealed class ParquetFleet : IFleetReader
{
    private readonly ParquetReader reader;
    private readonly FleetColumn[] columns;
    private readonly DataField[] fields;
    private readonly DataField machine;
    private int group;
    private long rows;

    private ParquetFleet(ParquetReader reader)
    {
        this.reader = reader;
        fields = reader.Schema.GetDataFields();
        (int place, columns) = FleetColumn.ReadAll([.. fields.Select(field => field.Name)]);
        machine = fields[place];
        if (!IsText(machine))
        {
            throw new FleetRefusedException($"{machine.Name}: expected text, not {machine.ClrType.Name}");
        }
    }

    public IReadOnlyList<FleetColumn> Columns => columns;

    public string LineWord => "row";

    public double Done => reader.RowGroupCount == 0 ? 1 : (double)group / reader.RowGroupCount;

    internal static async Task<ParquetFleet> OpenAsync(string path, CancellationToken cancellation)
    {
        try
        {
            return new(await ParquetReader.CreateAsync(path, null, cancellation).ConfigureAwait(false));
        }
        catch (Exception broken)
            when (broken is InvalidDataException or InvalidOperationException or EndOfStreamException)
        {
            throw new FleetRefusedException($"{path}: not an Apache Parquet file ({broken.Message})");
        }
    }

    public async Task<bool> NextAsync(Chunk chunk, CancellationToken cancellation)
    {
        if (group == reader.RowGroupCount)
        {
            return false;
        }

        using ParquetRowGroupReader part = reader.OpenRowGroupReader(group++);
        int count = checked((int)part.RowCount);
        chunk.Reserve(count);
        chunk.Count = count;
        string?[] names = new string?[count];
        await part.ReadAsync(machine, names.AsMemory(), null, cancellation).ConfigureAwait(false);
        for (int row = 0; row < count; row++)
        {
            chunk.Lines[row] = rows + row + 1;
            chunk.Machines[row] = names[row]?.Trim() ?? "";
            if (chunk.Machines[row].Length == 0)
            {
                chunk.Blame(row, $"{FleetColumn.Machine}: empty");
            }
        }

        for (int i = 0; i < columns.Length; i++)
        {
            await NumbersAsync(part, chunk, i, cancellation).ConfigureAwait(false);
        }

        rows += count;
        return true;
    }

    public ValueTask DisposeAsync() => reader.DisposeAsync();

    // The package tells text by either type, as its options are.
    private static bool IsText(DataField field) =>
        field.ClrType == typeof(string) || field.ClrType == typeof(ReadOnlyMemory<char>);

    private Task NumbersAsync(ParquetRowGroupReader part, Chunk chunk, int column, CancellationToken cancellation)
    {
        DataField field = fields[columns[column].Place];
        return field.ClrType switch
        {
            Type type when type == typeof(double) => NumbersAsync<double>(part, field, chunk, column, cancellation),
            Type type when type == typeof(float) => NumbersAsync<float>(part, field, chunk, column, cancellation),
            Type type when type == typeof(int) => NumbersAsync<int>(part, field, chunk, column, cancellation),
            Type type when type == typeof(long) => NumbersAsync<long>(part, field, chunk, column, cancellation),
            _ when IsText(field) => TextAsync(part, field, chunk, column, cancellation),
            Type other => throw new FleetRefusedException($"{field.Name}: expected numbers, not {other.Name}"),
        };
    }

    private static async Task NumbersAsync<T>(
        ParquetRowGroupReader part,
        DataField field,
        Chunk chunk,
        int column,
        CancellationToken cancellation
    )
        where T : struct, INumber<T>
    {
        if (field.IsNullable)
        {
            T?[] values = new T?[chunk.Count];
            await part.ReadAsync<T>(field, values.AsMemory(), null, cancellation).ConfigureAwait(false);
            for (int row = 0; row < values.Length; row++)
            {
                Take(chunk, row, column, values[row] is { } value ? double.CreateChecked(value) : null);
            }
        }
        else
        {
            T[] values = new T[chunk.Count];
            await part.ReadAsync<T>(field, values.AsMemory(), null, cancellation).ConfigureAwait(false);
            for (int row = 0; row < values.Length; row++)
            {
                Take(chunk, row, column, double.CreateChecked(values[row]));
            }
        }
    }

    private static async Task TextAsync(
        ParquetRowGroupReader part,
        DataField field,
        Chunk chunk,
        int column,
        CancellationToken cancellation
    )
    {
        string?[] values = new string?[chunk.Count];
        await part.ReadAsync(field, values.AsMemory(), null, cancellation).ConfigureAwait(false);
        for (int row = 0; row < values.Length; row++)
        {
            string text = values[row]?.Trim() ?? "";
            if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value))
            {
                Take(chunk, row, column, value);
            }
            else
            {
                chunk.Refuse(row, column, text);
            }
        }
    }

    private static void Take(Chunk chunk, int row, int column, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            chunk.Set(row, column, number);
        }
        else
        {
            chunk.Refuse(row, column, value is { } odd ? odd.ToString("R", CultureInfo.InvariantCulture) : "");
        }
    }
}
