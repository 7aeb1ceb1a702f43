namespace TreadmillMech.Samples.Fleet.Reading;

/// <summary>A file of a fleet, read chunk after chunk.</summary>
internal interface IFleetReader : IAsyncDisposable
{
    /// <summary>The columns of the file.</summary>
    IReadOnlyList<FleetColumn> Columns { get; }

    /// <summary>What a row's number counts, for messages.</summary>
    string LineWord { get; }

    /// <summary>Share of the file that is read.</summary>
    double Done { get; }

    /// <summary>Reads the next rows; false where there are none.</summary>
    Task<bool> NextAsync(Chunk chunk, CancellationToken cancellation);

    /// <summary>Opens a file by its ending.</summary>
    /// <exception cref="FleetRefusedException">The ending is unknown, or the columns do not fit.</exception>
    internal static async Task<IFleetReader> OpenAsync(string path, CancellationToken cancellation) =>
        Path.GetExtension(path).ToUpperInvariant() switch
        {
            ".CSV" or ".TXT" or ".TSV" => new CsvFleet(File.OpenRead(path)),
            ".PARQUET" => await ParquetFleet.OpenAsync(path, cancellation).ConfigureAwait(false),
            string other => throw new FleetRefusedException($"{path}: expected .csv or .parquet, not {other}"),
        };
}
