using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>An output of a machine under a demand.</summary>
internal sealed class MachineTrials : Trials
{
    private readonly Scenario scenario;
    private readonly Output output;
    private readonly Input[] moved;
    private readonly double[] ones;

    private MachineTrials(in Scenario scenario, Output output, Input[] inputs)
    {
        this.scenario = scenario;
        this.output = output;
        moved = inputs;
        ones = [.. inputs.Select(_ => 1.0)];
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

    internal override TrialTile Tile() => new MachineTile(RowKernel.Of(in scenario, moved, ones, [output]));
}
