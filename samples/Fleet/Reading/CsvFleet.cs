using nietras.SeparatedValues;

namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>A fleet in separated values: comma, semicolon or tab, found from the headers; decimal point.</summary>
internal sealed class CsvFleet : IFleetReader
{
    internal const int RowsAChunk = 32768;

    private readonly Stream stream;
    private readonly SepReader reader;
    private readonly FleetColumn[] columns;
    private readonly int machine;
    private readonly int fields;

    internal CsvFleet(Stream stream)
    {
        this.stream = stream;
        try
        {
            reader = Sep.Reader(options => options with { DisableColCountCheck = true, Unescape = true }).From(stream);
        }
        catch (ArgumentException twice)
        {
            // The reader names a header that is there twice.
            throw new FleetRefusedException($"The headers cannot be used: {twice.Message}");
        }

        fields = reader.Header.ColNames.Count;
        (machine, columns) = FleetColumn.ReadAll(reader.Header.ColNames);
    }

    public IReadOnlyList<FleetColumn> Columns => columns;

    public string LineWord => "line";

    public double Done => stream.Length == 0 ? 1 : (double)stream.Position / stream.Length;

    public Task<bool> NextAsync(Chunk chunk, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        chunk.Reserve(RowsAChunk);
        while (chunk.Count < RowsAChunk && reader.MoveNext())
        {
            SepReader.Row row = reader.Current;
            if (row.ColCount == 1 && row.Span.IsWhiteSpace())
            {
                continue;
            }

            Take(in row, chunk);
        }

        return Task.FromResult(chunk.Count > 0);
    }

    public ValueTask DisposeAsync()
    {
        reader.Dispose();
        return stream.DisposeAsync();
    }

    private void Take(in SepReader.Row row, Chunk chunk)
    {
        int place = chunk.Count++;
        chunk.Lines[place] = row.LineNumberFrom;
        chunk.Machines[place] = machine < row.ColCount ? row[machine].ToString().Trim() : "";
        if (row.ColCount != fields)
        {
            chunk.Blame(place, $"{row.ColCount} fields instead of {fields}");
        }
        else if (chunk.Machines[place].Length == 0)
        {
            chunk.Blame(place, $"{FleetColumn.Machine}: empty");
        }

        for (int i = 0; i < columns.Length; i++)
        {
            int at = columns[i].Place;
            if (at >= row.ColCount)
            {
                chunk.Values[i][place] = double.NaN;
            }
            else if (row[at].TryParse(out double value) && double.IsFinite(value))
            {
                chunk.Set(place, i, value);
            }
            else
            {
                chunk.Refuse(place, i, row[at].ToString().Trim());
            }
        }
    }
}
