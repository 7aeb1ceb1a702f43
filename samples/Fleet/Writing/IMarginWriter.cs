using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet.Writing;

/// <summary>Where the margins go, chunk after chunk: one row for every row that was read.</summary>
internal interface IMarginWriter : IAsyncDisposable
{
    Task WriteAsync(Chunk chunk, CancellationToken cancellation);

    /// <summary>Opens a file by its ending; null writes nothing.</summary>
    /// <exception cref="FleetRefusedException">The ending is unknown.</exception>
    internal static async Task<IMarginWriter> OpenAsync(string? path, CancellationToken cancellation) =>
        path is null
            ? new NoMargins()
            : Path.GetExtension(path).ToUpperInvariant() switch
            {
                ".CSV" => new CsvMargins(path),
                ".PARQUET" => await ParquetMargins.OpenAsync(path, cancellation).ConfigureAwait(false),
                string other => throw new FleetRefusedException($"{path}: expected .csv or .parquet, not {other}"),
            };
}
