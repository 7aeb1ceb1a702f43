using System.Globalization;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>Exact derivatives of an output by every input, ranked by elasticity.</summary>
/// <remarks>
/// The derivatives are taken at the worst phase of the stride, which moves with the input. Beside each point the model is
/// run a ten-millionth to either side: where the derivatives there differ, the point lies on a tie.
/// </remarks>
public sealed class Sensitivity
{
    // Of the input's size: how far beside the point the model is run.
    private const double Beside = 1e-7;

    // Of the input's range: the size of an input that is zero.
    private const double SizeOfZero = 1e-3;

    // Most that smooth derivatives of both sides differ: of themselves, and of the output over the input.
    private const double SameSlope = 1e-4;
    private const double SameSlopeOfOutput = 1e-5;

    // Of the output: a larger step is a jump.
    private const double Continuous = 1e-9;

    private Sensitivity(Output output, double value, SensitivityRow[] rows)
    {
        Output = output;
        Value = PhysicalValue.Of(value, output.Unit);
        Rows = rows;
    }

    /// <summary>The output.</summary>
    public Output Output { get; }

    /// <summary>Its value.</summary>
    public PhysicalValue Value { get; }

    /// <summary>One row for each input, the largest elasticity first; rows without one come last.</summary>
    public IReadOnlyList<SensitivityRow> Rows { get; }

    /// <summary>The row of an input.</summary>
    /// <param name="input">The input.</param>
    /// <exception cref="ArgumentNullException">The input is null.</exception>
    /// <exception cref="ArgumentException">The input is no row of the table.</exception>
    public SensitivityRow this[Input input]
    {
        get
        {
            Given.Row(input);
            return Rows.First(row => row.Input == input);
        }
    }

    /// <summary>The output and the inputs that matter most, with their elasticities; invariant.</summary>
    public override string ToString()
    {
        IEnumerable<string> most = Rows.Where(static row => row.Elasticity.Found)
            .Take(5)
            .Select(static row =>
                string.Create(CultureInfo.InvariantCulture, $"{row.Input.Name} {row.Elasticity.Value:+0.00;-0.00;0}")
            );
        return $"{Output.Name} {Value}: {string.Join(", ", most)}";
    }

    internal static Answer<Sensitivity> Of(in Scenario scenario, Output output)
    {
        Answer<double> answer = OperatingPoint.Of(in scenario).Number(output);
        if (!answer.Is(out double value))
        {
            return answer.Missing;
        }

        List<SensitivityRow> rows = [];
        List<Input> open = [];
        foreach (Input input in Inputs.All)
        {
            Shortfall lacks = Lacks(in scenario, output, input);
            if (lacks.Why == Reason.Found)
            {
                open.Add(input);
            }
            else
            {
                rows.Add(new(output, input, lacks));
            }
        }

        foreach (Input[] eight in open.Chunk(Lanes.Count))
        {
            rows.AddRange(Eight(in scenario, output, value, eight));
        }

        return new Sensitivity(
            output,
            value,
            [
                .. rows.OrderByDescending(row => row.Elasticity.Is(out double e) ? Math.Abs(e) : -1)
                    .ThenBy(row => row.Input.Index),
            ]
        );
    }

    private static Shortfall Lacks(in Scenario scenario, Output output, Input input)
    {
        Shortfall lacks = scenario.Lacks(input);
        bool onStiffness = (Scenario.OnStiffness & input.Bit) != 0 && (output.Needs & Inputs.BeltStiffness.Bit) != 0;
        return lacks.Why == Reason.Found && onStiffness ? scenario.Lacks(Inputs.BeltStiffness) : lacks;
    }

    /// <summary>Rows of up to eight inputs: the model is run once for all of them, and once to either side.</summary>
    private static List<SensitivityRow> Eight(in Scenario scenario, Output output, double value, Input[] inputs)
    {
        MachineNumbers<Real> numbers = scenario.Numbers;
        double[] at = [.. inputs.Select(input => numbers.AsSpan()[input.Index].Value)];
        double[] size =
        [
            .. inputs.Select((input, k) => Math.Max(Math.Abs(at[k]), SizeOfZero * (input.Range.To - input.Range.From))),
        ];
        Dual<Lanes> here = Run(in scenario, output, inputs, at);
        Dual<Lanes> below = Run(in scenario, output, inputs, [.. at.Select((x, k) => x - (Beside * size[k]))]);
        Dual<Lanes> above = Run(in scenario, output, inputs, [.. at.Select((x, k) => x + (Beside * size[k]))]);
        List<SensitivityRow> rows = [];
        for (int k = 0; k < inputs.Length; k++)
        {
            double step = Beside * size[k];
            bool down = at[k] - step >= inputs[k].Range.From;
            bool up = at[k] + step <= inputs[k].Range.To;
            double left = down ? below.Slope[k] : above.Slope[k];
            double right = up ? above.Slope[k] : below.Slope[k];
            double most = Math.Max(Math.Abs(left), Math.Abs(right));
            double leap = Math.Max(
                down ? Math.Abs(here.Value[k] - below.Value[k] - (step * left)) : 0,
                up ? Math.Abs(above.Value[k] - here.Value[k] - (step * right)) : 0
            );
            bool jumps = leap > Continuous * (Math.Abs(here.Value[k]) + (step * most));
            bool smooth =
                Math.Abs(right - left) <= (SameSlope * most) + (SameSlopeOfOutput * Math.Abs(here.Value[k]) / size[k]);
            SlopeKind kind =
                jumps ? SlopeKind.Jump
                : smooth ? SlopeKind.Smooth
                : SlopeKind.OneSided;
            if (kind == SlopeKind.Smooth)
            {
                (left, right) = (here.Slope[k], here.Slope[k]);
            }

            rows.Add(new(output, inputs[k], at[k], value, left, right, kind));
        }

        return rows;
    }

    /// <summary>The output in eight lanes, each with its own input moved to a place, and its derivative by it.</summary>
    private static Dual<Lanes> Run(in Scenario scenario, Output output, Input[] inputs, double[] places)
    {
        MachineNumbers<Dual<Lanes>> numbers = scenario.Numbers.Lift<Dual<Lanes>>();
        Span<double> values = stackalloc double[Lanes.Count];
        Span<double> slopes = stackalloc double[Lanes.Count];
        for (int k = 0; k < inputs.Length; k++)
        {
            ref Dual<Lanes> number = ref numbers.AsSpan()[inputs[k].Index];
            values.Fill(number.Value[0]);
            slopes.Clear();
            (values[k], slopes[k]) = (places[k], 1);
            number = new(new Lanes(values), new Lanes(slopes));
        }

        OperatingPointModel.Run(in numbers, in scenario.Kinds, out OutputNumbers<Dual<Lanes>> outputs);
        return outputs.AsSpan()[output.Index];
    }
}
