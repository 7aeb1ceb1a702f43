using System.Runtime.Intrinsics;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>An output of a machine under a demand.</summary>
internal sealed class MachineTrials : Trials
{
    private readonly Scenario scenario;
    private readonly Output output;
    private readonly Input[] moved;
    private readonly RowRules rules;
    private readonly MachineNumbers<Lanes> estimates;

    private MachineTrials(in Scenario scenario, Output output, Input[] inputs)
    {
        this.scenario = scenario;
        this.output = output;
        moved = inputs;
        rules = new(in scenario, [output]);
        estimates = scenario.Numbers.Lift<Lanes>();
    }

    internal override string Name => output.Name;

    internal override string Unit => output.Unit;

    internal static Answer<Trials> Of(in Scenario scenario, Output output, UncertainSet set)
    {
        Scenario known = scenario;
        List<Input> rows = [];
        foreach (UncertainInput uncertain in set.Inputs)
        {
            Input input =
                uncertain.Input
                ?? throw new ArgumentException(
                    $"{uncertain.Name} is no input of the model. Allowed: {string.Join(", ", Inputs.All.Select(row => row.Name))}.",
                    nameof(set)
                );
            if (scenario.Refuses(input) is { Why: not Reason.Found } refused)
            {
                return refused;
            }

            rows.Add(input);
            known.Set(input, uncertain.Value.Si);
        }

        // A change of turns is nothing without a known stiffness, even where the estimate is no turn at all.
        bool onStiffness =
            (output.Needs & Inputs.BeltStiffness.Bit) != 0
            && rows.Exists(input => (Scenario.OnStiffness & input.Bit) != 0);
        Shortfall lacks = onStiffness ? known.Lacks(Inputs.BeltStiffness) : new(Reason.Found, "");
        return lacks.Why == Reason.Found ? new MachineTrials(in known, output, [.. rows]) : lacks;
    }

    internal override Answer<double> At(ReadOnlySpan<double> inputs)
    {
        Scenario here = scenario;
        for (int i = 0; i < inputs.Length; i++)
        {
            here.Set(moved[i], inputs[i]);
        }

        return OperatingPoint.Of(in here).Number(output);
    }

    internal override Lanes Slopes(ReadOnlySpan<Dual<Lanes>> inputs)
    {
        MachineNumbers<Dual<Lanes>> numbers = scenario.Numbers.Lift<Dual<Lanes>>();
        for (int i = 0; i < inputs.Length; i++)
        {
            numbers.AsSpan()[moved[i].Index] = inputs[i];
        }

        OperatingPointModel.Run(in numbers, in scenario.Kinds, out OutputNumbers<Dual<Lanes>> outputs);
        return outputs.AsSpan()[output.Index].Slope;
    }

    internal override void Eight(ReadOnlySpan<Lanes> inputs, Span<double> results)
    {
        MachineNumbers<Lanes> numbers = estimates;
        Vector512<double> permitted = Vector512<double>.AllBitsSet;
        for (int i = 0; i < inputs.Length; i++)
        {
            Bounds range = moved[i].Range;
            permitted &= ~Lanes.Less(inputs[i], range.From) & ~Lanes.Less(range.To, inputs[i]);
            numbers.AsSpan()[moved[i].Index] = inputs[i];
        }

        OperatingPointModel.Run(in numbers, in scenario.Kinds, out OutputNumbers<Lanes> outputs);
        Vector512<double> answered = permitted & Vector512.Equals(rules.Status(0, in numbers, in outputs), default);
        Vector512
            .ConditionalSelect(
                answered,
                NumbersAccess.At(in outputs, output.Index).Vector,
                Vector512.Create(double.NaN)
            )
            .CopyTo(results);
    }
}
