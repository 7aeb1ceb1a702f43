using System.Globalization;
using nietras.SeparatedValues;
using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet.Writing;

/// <summary>Margins as comma separated values. A machine without an answer has empty fields and a reason.</summary>
internal sealed class CsvMargins : IMarginWriter
{
    private const string Why = "Why";
    private static readonly string[] Headers = [.. FleetOutputs.All.Select(FleetOutputs.WithUnit)];
    private readonly SepWriter writer;

    internal CsvMargins(string path)
    {
        writer = Sep.New(',').Writer(options => options with { Escape = true }).ToFile(path);
    }

    public Task WriteAsync(Chunk chunk, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        Write(chunk);
        return Task.CompletedTask;
    }

    public ValueTask DisposeAsync()
    {
        writer.Dispose();
        return ValueTask.CompletedTask;
    }

    private void Write(Chunk chunk)
    {
        for (int row = 0; row < chunk.Count; row++)
        {
            using SepWriter.Row line = writer.NewRow();
            line[FleetColumn.Machine].Set(chunk.Machines[row]);
            line["Status"].Set(chunk.Outcomes[row].ToString());
            for (int i = 0; i < Headers.Length; i++)
            {
                double value = chunk.Results[i][row];
                if (double.IsNaN(value))
                {
                    line[Headers[i]].Set("");
                }
                else
                {
                    line[Headers[i]].Set(string.Create(CultureInfo.InvariantCulture, $"{value:G6}"));
                }
            }

            line[Why].Set(chunk.Trouble(row));
        }
    }
}
