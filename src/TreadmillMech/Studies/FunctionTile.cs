using System.Runtime.Intrinsics;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>A function that a user wrote, for many draws.</summary>
internal sealed unsafe class FunctionTile<TMeasurement>(TMeasurement measurement) : TrialTile
    where TMeasurement : IMeasurement
{
    public override void Dispose() { }

    internal override void Run(ReadOnlySpan<nint> columns, Span<double> results)
    {
        if (Vector512.IsHardwareAccelerated)
        {
            Run<Lanes>(columns, results);
        }
        else
        {
            Run<FourLanes>(columns, results);
        }
    }

    private void Run<T>(ReadOnlySpan<nint> columns, Span<double> results)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        Span<T> inputs = columns.Length <= 32 ? stackalloc T[columns.Length] : new T[columns.Length];
        for (int row = 0; row < results.Length; row += T.Width)
        {
            for (int i = 0; i < columns.Length; i++)
            {
                inputs[i] = T.Load((double*)columns[i] + row);
            }

            T result = measurement.Evaluate<T>(inputs);
            for (int k = 0; k < T.Width && row + k < results.Length; k++)
            {
                results[row + k] = double.IsFinite(result[k]) ? result[k] : double.NaN;
            }
        }
    }
}
