using BenchmarkDotNet.Attributes;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Studies;

namespace TreadmillMech.Benchmarks;

/// <summary>Many rows: a loop of single points against a batch; the times are those of a row.</summary>
[MemoryDiagnoser]
public class BatchBenchmarks
{
    private const int Rows = 65_536;

    private static readonly Input[] Columns =
    [
        Inputs.BeltSpeed,
        Inputs.PersonMass,
        Inputs.RestTension,
        Inputs.DeckFriction,
        Inputs.DriveRollerFriction,
    ];

    private readonly double[][] inputs = [.. Columns.Select(_ => new double[Rows])];
    private readonly double[][] results = [.. Outputs.All.Select(_ => new double[Rows])];
    private readonly BatchOptions alone = new() { MostThreads = 1 };
    private readonly BatchOptions two = new() { MostThreads = 2 };
    private MachineNumbers<Real> plain;
    private MachineKinds kinds;
    private Batch everything = null!;
    private Batch margin = null!;

    /// <summary>How the person moves: walking has two feet on the belt at times, running never.</summary>
    [Params(Gait.Walking, Gait.Running)]
    public Gait Gait { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        Demand demand = Cases.Demand(Gait);
        Scenario scenario = Scenario.Of(Cases.Machine, demand);
        (plain, kinds) = (scenario.Numbers, scenario.Kinds);
        Study study = Study.Of(Cases.Machine, demand);
        everything = study.Batch(Columns, Outputs.All).Value;
        margin = study.Batch(Columns, [Outputs.BeltMargin]).Value;
        Random random = new(1);
        for (int i = 0; i < Columns.Length; i++)
        {
            double usual = plain.AsSpan()[Columns[i].Index];
            for (int row = 0; row < Rows; row++)
            {
                inputs[i][row] = usual * (0.9 + (0.2 * random.NextDouble()));
            }
        }
    }

    /// <summary>The model on plain numbers, one row after the other.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public double Loop()
    {
        MachineNumbers<Real> x = plain;
        double sum = 0;
        for (int row = 0; row < Rows; row++)
        {
            for (int i = 0; i < Columns.Length; i++)
            {
                x.AsSpan()[Columns[i].Index] = inputs[i][row];
            }

            OperatingPointModel.Run(in x, in kinds, out OutputNumbers<Real> y);
            sum += y.BeltMargin;
        }

        return sum;
    }

    /// <summary>All outputs stored, one thread.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public long AllOutputs() => Run(everything, [.. results.Select(column => (Memory<double>)column)], alone);

    /// <summary>All outputs stored, two threads.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public long AllOutputsOnTwo() => Run(everything, [.. results.Select(column => (Memory<double>)column)], two);

    /// <summary>The summary of one output, nothing stored, one thread.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public long SummaryOfOne() => Run(margin, null, alone);

    private long Run(Batch batch, Memory<double>[]? to, BatchOptions options) =>
        batch.Run([.. inputs.Select(column => (ReadOnlyMemory<double>)column)], to, default, options).Rows;
}
