using Parquet;
using Parquet.Schema;
using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet.Writing;

/// <summary>Margins in Apache Parquet, a row group a chunk. A machine without an answer has nulls and a reason.</summary>
internal sealed class ParquetMargins : IMarginWriter
{
    private static readonly DataField Machine = new DataField<string>(FleetColumn.Machine);
    private static readonly DataField Status = new DataField<string>("Status");
    private static readonly DataField Why = new DataField<string>("Why");
    private static readonly DataField[] Numbers =
    [
        .. FleetOutputs.All.Select(output => new DataField<double?>(FleetOutputs.WithUnit(output))),
    ];

    private readonly FileStream stream;
    private readonly ParquetWriter writer;

    private ParquetMargins(FileStream stream, ParquetWriter writer) => (this.stream, this.writer) = (stream, writer);

    internal static async Task<ParquetMargins> OpenAsync(string path, CancellationToken cancellation)
    {
        ParquetSchema schema = new([Machine, Status, .. Numbers, Why]);
        FileStream stream = File.Create(path);
        ParquetWriter writer = await ParquetWriter
            .CreateAsync(schema, stream, null, false, cancellation)
            .ConfigureAwait(false);
        return new(stream, writer);
    }

    public async Task WriteAsync(Chunk chunk, CancellationToken cancellation)
    {
        int count = chunk.Count;
        using ParquetRowGroupWriter group = writer.CreateRowGroup();
        await group.WriteAsync(Machine, new ArraySegment<string>(chunk.Machines, 0, count)).ConfigureAwait(false);
        string[] words = [.. chunk.Outcomes.Take(count).Select(outcome => outcome.ToString())];
        await group.WriteAsync(Status, words).ConfigureAwait(false);
        double?[] values = new double?[count];
        for (int i = 0; i < Numbers.Length; i++)
        {
            for (int row = 0; row < count; row++)
            {
                values[row] = double.IsNaN(chunk.Results[i][row]) ? null : chunk.Results[i][row];
            }

            await group
                .WriteAsync<double>(Numbers[i], values.AsMemory(0, count), null, null, cancellation)
                .ConfigureAwait(false);
        }

        string[] reasons = [.. Enumerable.Range(0, count).Select(chunk.Trouble)];
        await group.WriteAsync(Why, reasons).ConfigureAwait(false);
        group.CompleteValidate();
    }

    public async ValueTask DisposeAsync()
    {
        await writer.DisposeAsync().ConfigureAwait(false);
        await stream.DisposeAsync().ConfigureAwait(false);
    }
}
