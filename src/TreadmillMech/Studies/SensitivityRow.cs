using TreadmillMech.Model;

namespace TreadmillMech.Studies;

/// <summary>What an output does when one input changes.</summary>
public sealed class SensitivityRow
{
    private readonly Output output;
    private readonly double left;
    private readonly double right;
    private readonly double at;
    private readonly double value;
    private readonly Shortfall missing;

    internal SensitivityRow(Output output, Input input, Shortfall missing)
    {
        this.output = output;
        Input = input;
        this.missing = missing;
    }

    internal SensitivityRow(
        Output output,
        Input input,
        double at,
        double value,
        double left,
        double right,
        SlopeKind kind
    )
    {
        this.output = output;
        Input = input;
        this.at = at;
        this.value = value;
        (this.left, this.right) = (left, right);
        Kind = kind;
        missing =
            kind == SlopeKind.Jump || !double.IsFinite(left) || !double.IsFinite(right)
                ? new(Reason.NotInRange, input.Name)
                : new(Reason.Found, "");
    }

    /// <summary>The input.</summary>
    public Input Input { get; }

    /// <summary>Whether the derivatives of both sides are the same.</summary>
    public SlopeKind Kind { get; }

    /// <summary>SI unit of the derivatives.</summary>
    public string Unit => SlopeUnit.Of(output, Input);

    /// <summary>
    /// Derivative, output for each unit of the input, both SI; where <see cref="Kind"/> is one-sided, that towards larger
    /// inputs. An input that is not known, not given, or not on this machine has none, and neither has a jump.
    /// </summary>
    public Answer<PhysicalValue> Derivative => Right;

    /// <summary>Derivative towards smaller inputs; where the input is at the least permitted value, that of the other side.</summary>
    public Answer<PhysicalValue> Left => Give(left);

    /// <summary>Derivative towards larger inputs; where the input is at the largest permitted value, that of the other side.</summary>
    public Answer<PhysicalValue> Right => Give(right);

    /// <summary>
    /// Per cent of output for each per cent of input; 0 for an input that is zero. Of one-sided derivatives the larger.
    /// </summary>
    public Answer<double> Elasticity
    {
        get
        {
            double relative = (Math.Abs(left) > Math.Abs(right) ? left : right) * at / value;
            return missing.Why != Reason.Found ? missing
                : double.IsFinite(relative) ? relative
                : new Shortfall(Reason.NotInRange, output.Name);
        }
    }

    /// <summary>What a small change of the input does to the output, by the derivative of its side.</summary>
    /// <param name="change">The change of the input.</param>
    /// <exception cref="ArgumentException">The change has another dimension than the input.</exception>
    public Answer<PhysicalValue> Effect(PhysicalValue change)
    {
        double number = Given.Alike(Input.Name, Input.Unit, change, nameof(change));
        return missing.Why != Reason.Found
            ? missing
            : PhysicalValue.Of(number * (number < 0 ? left : right), output.Unit);
    }

    /// <summary>The input with derivative and elasticity; invariant.</summary>
    public override string ToString() =>
        $"{Input.Name}: derivative {Derivative}, elasticity {((IShortText)Elasticity).Short}";

    private Answer<PhysicalValue> Give(double slope) =>
        missing.Why == Reason.Found ? PhysicalValue.Of(slope, Unit) : missing;
}
