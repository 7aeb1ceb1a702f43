using TreadmillMech.Samples.Fleet.Reading;

namespace TreadmillMech.Samples.Fleet.Writing;

/// <summary>Nobody wants the margins of every machine.</summary>
internal sealed class NoMargins : IMarginWriter
{
    public Task WriteAsync(Chunk chunk, CancellationToken cancellation) => Task.CompletedTask;

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
