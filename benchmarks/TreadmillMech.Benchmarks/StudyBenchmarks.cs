using BenchmarkDotNet.Attributes;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Studies;

namespace TreadmillMech.Benchmarks;

/// <summary>Derivatives by every input, and drawing at random, against plain points.</summary>
[MemoryDiagnoser]
public class StudyBenchmarks
{
    private const int Draws = 100_000;

    private readonly UncertaintyOptions options = new() { Draws = Draws, MostThreads = 1 };
    private UncertainInput[] unsure = [];
    private MachineNumbers<Real> plain;
    private MachineKinds kinds;
    private Study study = null!;

    [GlobalSetup]
    public void Prepare()
    {
        Demand demand = Cases.Demand(Gait.Running);
        Scenario scenario = Scenario.Of(Cases.Machine, demand);
        (plain, kinds) = (scenario.Numbers, scenario.Kinds);
        study = Study.Of(Cases.Machine, demand);
        Input[] inputs = [Inputs.DeckFriction, Inputs.DriveRollerFriction, Inputs.RestTension, Inputs.PersonMass];
        unsure =
        [
            .. inputs.Select(input =>
            {
                double usual = plain.AsSpan()[input.Index];
                return UncertainInput.Normal(
                    input,
                    PhysicalValue.Of(usual, input.Unit),
                    PhysicalValue.Of(0.03 * usual, input.Unit)
                );
            }),
        ];
    }

    /// <summary>One point for each input.</summary>
    [Benchmark(Baseline = true)]
    public double APointForEachInput()
    {
        double sum = 0;
        for (int i = 0; i < Inputs.All.Count; i++)
        {
            OperatingPointModel.Run(in plain, in kinds, out OutputNumbers<Real> y);
            sum += y.BeltMargin;
        }

        return sum;
    }

    /// <summary>Exact derivatives by every input.</summary>
    [Benchmark]
    public int Gradient() => study.Sensitivity(Outputs.BeltMargin).Value.Rows.Count;

    /// <summary>A drawing; the time is that of a draw.</summary>
    [Benchmark(OperationsPerInvoke = Draws)]
    public double Drawing() => study.Sample(Outputs.BeltMargin, unsure, 1, options).Value.Mean.Si;
}
