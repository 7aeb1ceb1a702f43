// Measures the library against itself: what units, derivatives and vector lanes cost or save at one operating point.
// The jobs are chosen on the command line, so that the classes need no attribute for them:
//
//   dotnet run -c Release --project benchmarks/TreadmillMech.Benchmarks -- --filter '*' --job short -i
//
// Ratios within one run tell; nanoseconds change with the machine and with what else runs on it.

using BenchmarkDotNet.Running;
using TreadmillMech.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(OperatingPointBenchmarks).Assembly).Run(args);
