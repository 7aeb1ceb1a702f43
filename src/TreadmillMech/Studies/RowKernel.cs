using System.Runtime.Intrinsics;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>The model over rows whose inputs lie in columns; one thread's, with its own working space.</summary>
internal abstract unsafe class RowKernel : IDisposable
{
    /// <summary>Most rows at once, and how far apart the columns of results lie.</summary>
    internal const int Tile = 256;

    /// <summary>Results start where a line of the cache does.</summary>
    internal const nuint Line = 64;

    /// <summary>The widest that the processor has; one row at a time without registers of 256 bits.</summary>
    /// <param name="scenario">The machine and the demand.</param>
    /// <param name="columns">The inputs that have a column.</param>
    /// <param name="units">What a one in each column is, SI.</param>
    /// <param name="outputs">The wanted outputs.</param>
    internal static RowKernel Of(in Scenario scenario, Input[] columns, ReadOnlySpan<double> units, Output[] outputs) =>
        Vector512.IsHardwareAccelerated ? new LaneKernel<Lanes>(in scenario, columns, units, outputs)
        : Vector256.IsHardwareAccelerated ? new LaneKernel<FourLanes>(in scenario, columns, units, outputs)
        : new PlainKernel(in scenario, columns, units, outputs);

    /// <summary>Computes some rows.</summary>
    /// <param name="columns">Starts of the columns of inputs.</param>
    /// <param name="first">The first row.</param>
    /// <param name="rows">How many, <see cref="Tile"/> at most.</param>
    /// <param name="results">
    /// Takes the outputs, one column after the other; rows beyond the last are filled up to a multiple of eight with anything.
    /// </param>
    /// <param name="statuses">Takes the statuses as numbers, likewise; nothing where all rows are answered.</param>
    /// <returns>Whether all rows are answered.</returns>
    internal abstract bool Run(ReadOnlySpan<nint> columns, int first, int rows, double* results, double* statuses);

    public abstract void Dispose();
}
