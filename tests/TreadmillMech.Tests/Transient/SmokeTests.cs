using System.Diagnostics;
using System.Globalization;
using TreadmillMech.Model.Transient;
using TreadmillMech.Tests.OperatingPoints;

namespace TreadmillMech.Tests.Transient;

public sealed class SmokeTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(1.0, 1000, 1e-6)]
    [InlineData(3.0, 1000, 1e-6)]
    [InlineData(3.0, 1000, 1e-4)]
    [InlineData(3.0, 600, 1e-6)]
    public void Steady(double speed, double tension, double tolerance)
    {
        Demand demand = OperatingPoints.Example.Runner with { Speed = UnitsNet.Speed.FromMetersPerSecond(speed) };
        var machine = Bench.Machine(demand, tension);
        DriveRecord r = Bench.Run(machine, Bench.Kinds, Bench.Dynamics, Bench.Steady(speed, 6, tolerance));
        DriveRecord r2 = r;
        double best = 1e9;
        for (int i = 0; i < 4; i++)
        {
            var kinds = Bench.Kinds; var dyn = Bench.Dynamics;
            DriveCase one = new(in machine, in kinds, in dyn, Bench.Steady(speed, 6, tolerance));
            DriveRunner<Real> runner = new([one]);
            long t0 = Stopwatch.GetTimestamp();
            runner.Run(null, default);
            best = Math.Min(best, Stopwatch.GetElapsedTime(t0).TotalMilliseconds);
        }
        var v = r.Column(DriveStates.Belt);
        double[] vs = v.ToArray()[400..];
        double mean = vs.Average();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"steps {r.Steps} rejected {r.Rejected} rows {r.Rows} ms/s {best / 6} failure {r.Failure} at {r.ReachedTime}"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"mean {mean} dip {(mean - vs.Min()) / mean} rise {(vs.Max() - mean) / mean} current {r.Column(DriveStates.Current).ToArray()[400..].Average()} slide {r.Column(DriveStates.Slide)[^1]}"));
        int n = r.Rows - 1;
        double worst = 0;
        for (int i = 0; i <= n; i++)
        {
            double bal = r.Column(DriveColumns.Stored)[i] - r.Column(DriveColumns.Stored)[0] - r.Column(DriveStates.Supplied)[i] + r.Column(DriveStates.Lost)[i] + r.Column(DriveStates.Given)[i];
            worst = Math.Max(worst, Math.Abs(bal));
        }
        output.WriteLine($"energy supplied {r.Column(DriveStates.Supplied)[n]} lost {r.Column(DriveStates.Lost)[n]} given {r.Column(DriveStates.Given)[n]} worst {worst}");
        foreach (var e in r.Events[..Math.Min(8, r.EventCount)]) output.WriteLine($"{e.Time} {e.Kind}");
        output.WriteLine($"op point {OperatingPoints.Example.Machine.At(demand).MeanCurrent}");
    }
}
