using System.Globalization;
using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>A value of an input that gives a wanted output.</summary>
public sealed class Solution
{
    internal Solution(
        IReadOnlyList<Input> inputs,
        double value,
        Output output,
        double reached,
        double slope,
        OperatingPoint point
    )
    {
        Inputs = inputs;
        Value = PhysicalValue.Of(value, inputs[0].Unit);
        Output = output;
        Reached = PhysicalValue.Of(reached, output.Unit);
        Slope = PhysicalValue.Of(slope, SlopeUnit.Of(output, inputs[0]));
        Point = point;
    }

    /// <summary>The inputs that were moved, together.</summary>
    public IReadOnlyList<Input> Inputs { get; }

    /// <summary>Their value.</summary>
    public PhysicalValue Value { get; }

    /// <summary>The output that was wanted.</summary>
    public Output Output { get; }

    /// <summary>What the output is there.</summary>
    public PhysicalValue Reached { get; }

    /// <summary>How fast the output changes with the input there.</summary>
    public PhysicalValue Slope { get; }

    /// <summary>The whole operating point there.</summary>
    public OperatingPoint Point { get; }

    /// <summary>Input and output in words, invariant.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Solver.Name(Inputs)} {Value} gives {Output.Name} {Reached}");
}
