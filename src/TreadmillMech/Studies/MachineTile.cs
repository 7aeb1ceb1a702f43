using System.Runtime.InteropServices;

namespace TreadmillMech.Studies;

/// <summary>An output of a machine for many draws.</summary>
internal sealed unsafe class MachineTile(RowKernel kernel) : TrialTile
{
    private readonly double* memory = (double*)
        NativeMemory.AlignedAlloc(2 * RowKernel.Tile * sizeof(double), RowKernel.Line);

    public override void Dispose()
    {
        NativeMemory.AlignedFree(memory);
        kernel.Dispose();
    }

    internal override void Run(ReadOnlySpan<nint> columns, Span<double> results)
    {
        kernel.Run(columns, 0, results.Length, memory, memory + RowKernel.Tile);
        new ReadOnlySpan<double>(memory, results.Length).CopyTo(results);
    }
}
