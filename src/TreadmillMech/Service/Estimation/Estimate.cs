namespace TreadmillMech.Service.Estimation;

/// <summary>A value found from readings, with its standard uncertainty.</summary>
/// <typeparam name="T">Type of the value.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="StandardUncertainty">Its standard uncertainty, one standard deviation.</param>
public readonly record struct Estimate<T>(T Value, T StandardUncertainty)
    where T : struct
{
    /// <summary>Value and standard uncertainty with five digits at most, invariant.</summary>
    public override string ToString() => $"{ResultText.Of(Value)} ± {ResultText.Of(StandardUncertainty)}";
}
