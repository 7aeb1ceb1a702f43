using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>A value of an output at which the rows of a batch are parted: how many lie below, how many above.</summary>
/// <param name="Output">The output.</param>
/// <param name="Value">The value, of the output's dimension.</param>
public readonly record struct Limit(Output Output, PhysicalValue Value)
{
    /// <summary>The output and the limit, invariant.</summary>
    public override string ToString() => $"{Output.Name} {Value}";
}
