namespace TreadmillMech.Service;

/// <summary>A limit that a finding was judged by, with where it comes from.</summary>
/// <param name="Name">What it limits, in words.</param>
/// <param name="Value">The limit, in the unit.</param>
/// <param name="Unit">The unit; empty for a plain number.</param>
/// <param name="Source">Where it comes from, or "common practice, no source".</param>
public sealed partial record Threshold(string Name, double Value, string Unit, string Source)
{
    /// <summary>The same limit of a share, in per cent.</summary>
    internal Threshold InPercent() => new(Name, 100 * Value, "%", Source);

    /// <summary>The limit with its unit and source.</summary>
    public override string ToString() => $"{new Figure(Name, Value, Unit)} ({Source})";
}
