using System.Buffers;

namespace TreadmillMech.Peers;

/// <summary>A column outside the collector's heap, as memory.</summary>
internal sealed unsafe class NativeColumn(double* start, int length) : MemoryManager<double>
{
    public override Span<double> GetSpan() => new(start, length);

    public override MemoryHandle Pin(int elementIndex = 0) => new(start + elementIndex);

    public override void Unpin() { }

    protected override void Dispose(bool disposing) { }
}
