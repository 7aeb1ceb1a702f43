using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace TreadmillMech.Benchmarks;

/// <summary>The first point of a process, compiler included.</summary>
[MemoryDiagnoser]
[SimpleJob(RunStrategy.ColdStart, launchCount: 5, warmupCount: 0, iterationCount: 1)]
public class ColdStartBenchmarks
{
    /// <summary>Machine and demand to one margin.</summary>
    [Benchmark]
    public double FirstMargin() => OperatingPoint.Of(Cases.Machine, Cases.Demand(Gait.Walking)).BeltMargin.Or(0);
}
