using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace TreadmillMech.Benchmarks;

/// <summary>The first point of a process, compiler included.</summary>
[MemoryDiagnoser]
[SimpleJob(RunStrategy.ColdStart, launchCount: 5, warmupCount: 0, iterationCount: 1)]
public class ColdStartBenchmarks
{
    private readonly Demand demand = Cases.Demand(Gait.Walking);

    /// <summary>Machine and demand to one margin.</summary>
    [Benchmark]
    public double FirstMargin() => OperatingPoint.Of(Cases.Machine, demand).BeltMargin.Or(0);
}
