using BenchmarkDotNet.Attributes;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Benchmarks;

/// <summary>One operating point, plain, typed, with a derivative, and eight at a time.</summary>
[MemoryDiagnoser]
public class OperatingPointBenchmarks
{
    private Demand demand = Cases.Demand(Gait.Walking);
    private MachineKinds kinds;
    private MachineNumbers<Real> plain;
    private MachineNumbers<Dual<Real>> withSlope;
    private MachineNumbers<Lanes> eight;
    private OperatingPoint point;

    /// <summary>How the person moves: walking has two feet on the belt at times, running never.</summary>
    [Params(Gait.Walking, Gait.Running)]
    public Gait Gait { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        demand = Cases.Demand(Gait);
        Scenario scenario = Scenario.Of(Cases.Machine, demand);
        kinds = scenario.Kinds;
        plain = scenario.Numbers;
        withSlope = plain.Lift<Dual<Real>>();
        withSlope.RestTension = Dual<Real>.Variable(plain.RestTension);
        eight = plain.Lift<Lanes>();
        eight.RestTension = new([1000, 1020, 1040, 1060, 1080, 1100, 1120, 1140]);
        eight.PersonMass = new([62, 66, 70, 74, 78, 82, 86, 90]);
        point = OperatingPoint.Of(Cases.Machine, demand);
    }

    /// <summary>The model on numbers that are ready.</summary>
    [Benchmark(Baseline = true)]
    public double PlainNumbers()
    {
        OperatingPointModel.Run(in plain, in kinds, out OutputNumbers<Real> output);
        return output.BeltMargin;
    }

    /// <summary>Machine and demand to one margin.</summary>
    [Benchmark]
    public double TypedOneMargin() => OperatingPoint.Of(Cases.Machine, demand).BeltMargin.Or(0);

    /// <summary>Machine and demand to every property.</summary>
    [Benchmark]
    public double TypedEverything() => Everything(OperatingPoint.Of(Cases.Machine, demand));

    /// <summary>Every property of a point that is there.</summary>
    [Benchmark]
    public double PropertiesAlone() => Everything(in point);

    /// <summary>Machine and demand to the numbers of the model, without the model.</summary>
    [Benchmark]
    public double ScenarioAlone() => Scenario.Of(Cases.Machine, demand).Numbers.RestTension;

    /// <summary>The model with the derivative by one input.</summary>
    [Benchmark]
    public double PlainWithDerivative()
    {
        OperatingPointModel.Run(in withSlope, in kinds, out OutputNumbers<Dual<Real>> output);
        return output.BeltMargin.Slope;
    }

    /// <summary>The model on eight different cases; the time is that of one.</summary>
    [Benchmark(OperationsPerInvoke = Lanes.Count)]
    public double EightSideBySide()
    {
        OperatingPointModel.Run(in eight, in kinds, out OutputNumbers<Lanes> output);
        return output.BeltMargin[0];
    }

    private static double Everything(in OperatingPoint p) =>
        p.LoopLength.Meters
        + p.DriveRollerWrap.Radians
        + p.StepFrequency.Hertz
        + p.DutyFactor
        + p.ContactTime.Seconds
        + p.PeakFootForce.Newtons
        + p.MotorSpeed.RadiansPerSecond
        + p.MeanPull.Value.Newtons
        + p.PeakPull.Value.Newtons
        + p.LeastPull.Value.Newtons
        + (double)p.DeckFrictionPower.Value.Watts
        + (double)p.PullPower.Value.Watts
        + p.RestTension.Value.Newtons
        + p.SlackTension.Value.Newtons
        + p.TightTension.Value.Newtons
        + p.BeltMargin.Value
        + p.BeltSlide.Value.Meters
        + p.DriveBeltMargin.Value
        + p.DriveBeltSlide.Value.Meters
        + p.DriveRollerHubLoad.Value.Newtons
        + p.TailRollerHubLoad.Value.Newtons
        + p.MotorHubLoad.Value.Newtons
        + p.MotorTorque.Value.NewtonMeters
        + p.MeanCurrent.Value.Amperes
        + p.PeakCurrent.Value.Amperes
        + p.RmsCurrent.Value.Amperes
        + p.MotorVoltage.Value.Volts
        + (double)p.MainsPower.Value.Watts
        + p.MainsCurrent.Value.Amperes
        + (double)p.FirstToSlip.Value
        + p.Notices.Count;
}
