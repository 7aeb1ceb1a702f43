using System.Diagnostics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using TreadmillMech.Model.Transient;
using TreadmillMech.Numbers;
using TreadmillMech.Numbers.Integration;
using TreadmillMech.Parts;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Peers;

/// <summary>The invented machine of the tests in a case of drive.py, by each of the solvers.</summary>
internal sealed class Work(string name)
{
    private readonly double tension = name == "slip" ? 600 : 1000;
    private readonly double speed = name == "walk" ? 1 : 3;

    /// <summary>Length of the stored reference; times are told for each simulated second.</summary>
    private double Seconds => name == "walk" ? 1.5 : 1;

    internal Outcome Do(string solver, double number) =>
        solver switch
        {
            "rosenbrock" => One(number),
            "lanes" => Eight(number),
            "rk4" => RungeKutta4((int)number, own: true),
            "mathnet" => RungeKutta4((int)number, own: false),
            _ => throw new ArgumentOutOfRangeException(nameof(solver)),
        };

    private DriveSimulation Simulation(double scale = 1)
    {
        Treadmill machine = Example.Machine with
        {
            RestTension = Force.FromNewtons(tension * scale),
            Motor = Example.Machine.Motor! with
            {
                VoltageLimit = ElectricPotential.FromVolts(180),
                CurrentLimit = ElectricCurrent.FromAmperes(20),
            },
            Supply = null,
        };
        Demand demand = new()
        {
            Person = new() { Mass = Mass.FromKilograms(90) },
            Speed = Speed.FromMetersPerSecond(speed),
        };
        DriveDynamics dynamics = new()
        {
            MotorInertia = MassMomentOfInertia.FromKilogramSquareMeters(0.01),
            ArmatureInductance = ElectricInductance.FromHenries(0.002),
            Controller = new()
            {
                Sensor = SpeedSensor.DriveRoller,
                Gain = ElectricCurrent.FromAmperes(40),
                IntegralTime = Duration.FromSeconds(0.3),
            },
            DeckStaticFriction = 0.3,
        };
        return DriveSimulation.Of(machine, demand, dynamics).Value;
    }

    private DrivePlan Plan(double tolerance) =>
        new()
        {
            Duration = Duration.FromSeconds(Seconds),
            Interval = Duration.FromSeconds(Seconds / 10),
            Tolerance = tolerance,
        };

    private Outcome One(double tolerance)
    {
        DriveSimulation simulation = Simulation();
        DrivePlan plan = Plan(tolerance);
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        DriveRun run = simulation.Run(plan).Value;
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        return new(time / Seconds, run.Steps + run.RejectedSteps, bytes, Speeds(run));
    }

    private Outcome Eight(double tolerance)
    {
        // A sweep of tensions: every case takes its own steps.
        DriveSimulation[] simulations = [.. Enumerable.Range(0, 8).Select(i => Simulation(1 + (0.02 * i)))];
        DrivePlan plan = Plan(tolerance);
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        IReadOnlyList<Answer<DriveRun>> runs = DriveSimulation.RunAll(simulations, plan);
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        return new(time / runs.Count / Seconds, runs[0].Value.Steps, bytes, Speeds(runs[0].Value));
    }

    private static double[] Speeds(DriveRun run) =>
        [.. Enumerable.Range(1, 10).Select(i => run[i].BeltSpeed.MetersPerSecond)];

    // Even steps from edge to edge, at most a given size: what a fixed-step method needs to keep its order.
    private Outcome RungeKutta4(int stepsASecond, bool own)
    {
        DriveCase one = Simulation().Case(Plan(1e-6));
        DriveSystem<Real> system = new(one.Kinds) { Numbers = one.Numbers };
        double[] plain = new double[DriveStates.Count];
        one.Begin(plain);
        Real[] state = [.. plain.Select(x => (Real)x)];
        RungeKuttaStep<Real> step = new(DriveStates.Count);
        List<double> speeds = [];
        double time = 0;
        long steps = 0;
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        TimeSpan start = Environment.CpuUsage.TotalTime;
        while (time < Seconds - 1e-9)
        {
            system.Acting = one.Acting;
            double nextRow = (speeds.Count + 1) * Seconds / 10;
            double end = Math.Min(one.Edge, nextRow);
            int count = Math.Max(1, (int)Math.Ceiling((end - time) * stepsASecond));
            steps += count;
            if (own)
            {
                double size = (end - time) / count;
                for (int i = 0; i < count; i++)
                {
                    step.Take(ref system, time + (i * size), size, state, state);
                }
            }
            else
            {
                Real[] argument = new Real[DriveStates.Count];
                Real[] rates = new Real[DriveStates.Count];
                DriveSystem<Real> held = system;
                Vector<double>[] all = RungeKutta.FourthOrder(
                    Vector<double>.Build.Dense(state.Length, i => state[i]),
                    time,
                    end,
                    count + 1,
                    (t, y) =>
                    {
                        for (int i = 0; i < argument.Length; i++)
                        {
                            argument[i] = y[i];
                        }

                        held.Rates(t, argument, rates);
                        return Vector<double>.Build.Dense(rates.Length, i => rates[i]);
                    }
                );
                for (int i = 0; i < state.Length; i++)
                {
                    state[i] = all[^1][i];
                }
            }

            time = end;
            if (Math.Abs(time - nextRow) < 1e-9)
            {
                speeds.Add(state[DriveStates.Belt]);
            }

            if (time >= one.Edge - 1e-12)
            {
                one.Cross(time, state[DriveStates.Belt]);
            }
        }

        // So long a run is interrupted on a busy machine: time of the processor, not of the clock.
        double elapsed = (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
        bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        return new(elapsed / Seconds, steps, bytes, [.. speeds]);
    }
}
