using System.Collections.Immutable;
using System.Globalization;

namespace TreadmillMech.Service;

/// <summary>A possible cause with its probability, and what speaks for and against it.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Probability">Its probability by the readings, taken that one cause is behind them, 0 to 1.</param>
/// <param name="For">Evidence that raises it, the strongest first.</param>
/// <param name="Against">Evidence that lowers it, the strongest first.</param>
public sealed partial record RankedCause(
    Cause Cause,
    double Probability,
    ImmutableArray<string> For,
    ImmutableArray<string> Against
)
{
    /// <summary>Limits that the evidence was judged by.</summary>
    public ImmutableArray<Threshold> Limits
    {
        get => field.IsDefault ? [] : field;
        init;
    }

    /// <summary>The cause with its probability, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Cause}: {100 * Probability:0} %");
}
