using BenchmarkDotNet.Attributes;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Benchmarks;

/// <summary>Where the time of one operating point on plain numbers goes, stage by stage.</summary>
[MemoryDiagnoser]
public class StageBenchmarks
{
    private MachineKinds kinds;
    private MachineNumbers<Real> x;
    private Workings<Real> work;
    private OutputNumbers<Real> y;

    /// <summary>How the person moves: walking has two feet on the belt at times, running never.</summary>
    [Params(Gait.Walking, Gait.Running)]
    public Gait Gait { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        Scenario scenario = Scenario.Of(Cases.Machine, Cases.Demand(Gait));
        kinds = scenario.Kinds;
        x = scenario.Numbers;
        All();
    }

    [Benchmark(Baseline = true)]
    public void All()
    {
        Loop();
        Steps();
        Loads();
        Means();
        Grip();
        Hubs();
        DriveBelt();
        Motor();
        Slide();
    }

    [Benchmark]
    public void Loop() => LoopStage.Run(in x, in kinds, ref work, ref y);

    [Benchmark]
    public void Steps() => GaitStage.Run(in x, in kinds, ref work, ref y);

    [Benchmark]
    public void Loads() => LoadStage.Run(in x, in kinds, ref work, ref y);

    [Benchmark]
    public void Means() => MeanStage.Run(in x, ref work, ref y);

    [Benchmark]
    public void Grip() => GripStage.Run(in x, ref work, ref y);

    [Benchmark]
    public void Hubs() => HubStage.Run(in x, in kinds, ref work, ref y);

    [Benchmark]
    public void DriveBelt() => DriveBeltStage.Run(in x, in kinds, ref work, ref y);

    [Benchmark]
    public void Motor() => MotorStage.Run(in x, ref work, ref y);

    [Benchmark]
    public void Slide() => SlideStage.Run(in x, ref work, ref y);
}
