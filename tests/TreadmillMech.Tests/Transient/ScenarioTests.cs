using System.Globalization;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Transient;

/// <summary>What happens in the usual scenarios.</summary>
public sealed class ScenarioTests
{
    [Fact]
    public void ALooseBeltSlipsUnderAHeavyRunnerAndATightOneDoesNot()
    {
        DrivePlan plan = DrivePlan.Steady(Typed.Seconds(4));
        DriveSummary loose = Typed.At(3, 600).Through(plan).Summary();
        DriveSummary tight = Typed.At(3, 1500).Through(plan).Summary();
        Assert.True(loose.SlipShare.DecimalFractions > 0.1);
        Assert.True(loose.Slide.Meters > 0.1);
        Assert.Equal(0, tight.SlipShare.DecimalFractions);
        Assert.True(tight.Slide.Meters < 1e-9);
        Assert.True(loose.MeanSpeed < tight.MeanSpeed);
    }

    [Fact]
    public void ARampLeadsToItsSpeed()
    {
        DriveRun run = Typed
            .At(1)
            .Through(
                DrivePlan.Ramp(
                    Typed.Seconds(8),
                    Typed.Seconds(1),
                    Speed.FromMetersPerSecond(3),
                    Acceleration.FromMetersPerSecondSquared(1)
                )
            );
        Assert.Equal(3, run[run.Count - 1].SetSpeed.MetersPerSecond, 9);
        Assert.Equal(1.5, run[300].SetSpeed.MetersPerSecond, 9);
        Assert.InRange(run.Summary(Typed.Seconds(5), Typed.Seconds(8)).MeanSpeed.MetersPerSecond, 2.98, 3.02);
    }

    [Fact]
    public void ThePulledKeyLetsTheBeltRunDownToRest()
    {
        DriveRun run = Typed.At(2.5).Through(DrivePlan.CoastDown(Typed.Seconds(6), Typed.Seconds(1)));
        Assert.Contains(run.Events, e => e.Kind == DriveEventKind.KeyPulled && Math.Abs(e.Time.Seconds - 1) < 1e-9);
        Assert.Contains(run.Events, e => e.Kind == DriveEventKind.StepsEnd);
        // The person who is still in stride may push the belt on once more.
        DriveEvent stop = run.Events.First(e => e.Kind == DriveEventKind.BeltStops);
        Assert.InRange(stop.Time.Seconds, 1.5, 5);
        Assert.InRange(run[run.Count - 1].BeltSpeed.MetersPerSecond, -0.01, 0.01);
        Assert.Equal(0, run[run.Count - 1].Current.Amperes, 1e-6);
    }

    [Fact]
    public void AHeavyBrakingStepDipsDeeperThanTheGait()
    {
        DriveRun usual = Typed.At(3).Through(DrivePlan.Steady(Typed.Seconds(3)));
        DriveRun braked = Typed.At(3).Through(DrivePlan.BrakingStep(Typed.Seconds(3), Typed.Seconds(2), 0.8));
        Assert.Equal(usual[390].BeltSpeed.MetersPerSecond, braked[390].BeltSpeed.MetersPerSecond, 12);
        Assert.True(braked.Summary().Dip.Value > usual.Summary(Typed.Seconds(2), Typed.Seconds(3)).Dip.Value);
        Assert.True(braked.Summary().PeakPull > usual.Summary().PeakPull);
    }

    [Fact]
    public void AStumbleBrakesLongerThanABrakingStep()
    {
        DriveSummary step = Typed
            .At(3, 2000)
            .Through(DrivePlan.BrakingStep(Typed.Seconds(3), Typed.Seconds(2), 0.5))
            .Summary();
        DriveSummary stumble = Typed
            .At(3, 2000)
            .Through(DrivePlan.Stumble(Typed.Seconds(3), Typed.Seconds(2), 0.5, 1.3))
            .Summary();
        Assert.True(stumble.Dip.Value > step.Dip.Value);
    }

    // The motor's pull at its limit of 20 A: 0.35 x 20 / 0.026 x 100/30 = 897 N without its friction, 885 N with all of it;
    // nothing moves a belt that is held by more.
    [Fact]
    public void AJamBeyondTheMotorsPullStallsTheBelt()
    {
        DriveRun run = Typed
            .At(1, 4000)
            .Through(DrivePlan.Stall(Typed.Seconds(4), Typed.Seconds(1), Force.FromNewtons(1500)));
        Assert.Contains(run.Events, e => e.Kind == DriveEventKind.BeltStops);
        Assert.Contains(run.Events, e => e.Kind == DriveEventKind.CurrentLimitReached);
        Assert.Equal(20, run[run.Count - 1].Current.Amperes, 1e-3);
        Assert.InRange(run[run.Count - 1].Pull.Newtons, 884, 898);
        Assert.InRange(run[run.Count - 1].BeltSpeed.MetersPerSecond, 0, 0.01);
    }

    [Fact]
    public void AStandingStartBeginsToStepWhenTheBeltMoves()
    {
        DriveRun run = Typed
            .At(1)
            .Through(
                DrivePlan.StandingStart(
                    Typed.Seconds(6),
                    Speed.FromMetersPerSecond(1),
                    Acceleration.FromMetersPerSecondSquared(0.5)
                )
            );
        DriveEvent steps = Assert.Single(run.Events, e => e.Kind == DriveEventKind.StepsBegin);
        int row = (int)Math.Floor(steps.Time.Seconds / 0.005);
        Assert.True(run[row].BeltSpeed.MetersPerSecond <= 0.1001);
        Assert.True(run[row + 1].BeltSpeed.MetersPerSecond >= 0.0999);
        Assert.Equal(90 * 9.80665, run[0].NormalForce.Newtons, 1e-9);
        Assert.InRange(run.Summary(Typed.Seconds(4), Typed.Seconds(6)).MeanSpeed.MetersPerSecond, 0.97, 1.03);
    }

    [Fact]
    public void ADriveThatCannotBrakeIsOverrunUphill()
    {
        Treadmill machine = Typed.Machine with
        {
            Deck = new() { Friction = 0.08 },
            Motor = Typed.Machine.Motor! with { CanBrake = false },
        };
        Demand uphill = Typed.Demand(1.5) with { Grade = Ratio.FromPercent(25) };
        DriveRun run = DriveSimulation
            .Of(machine, uphill, Typed.Dynamics)
            .Value.Through(DrivePlan.Steady(Typed.Seconds(3)));
        Assert.True(run.Summary(Typed.Seconds(2), Typed.Seconds(3)).MeanSpeed.MetersPerSecond > 1.6);
        Assert.All(run.Values(DriveRun.Columns.Single(c => c.Name == "current")), i => Assert.InRange(i, -1e-6, 20.1));
        Treadmill braking = machine with { Motor = machine.Motor! with { CanBrake = true } };
        DriveRun held = DriveSimulation
            .Of(braking, uphill, Typed.Dynamics)
            .Value.Through(DrivePlan.Steady(Typed.Seconds(3)));
        Assert.InRange(held.Summary(Typed.Seconds(2), Typed.Seconds(3)).MeanSpeed.MetersPerSecond, 1.47, 1.53);
        Assert.True(held.Summary(Typed.Seconds(2), Typed.Seconds(3)).MeanCurrent.Amperes < 0);
    }

    [Fact]
    public void TemperaturesAreToldWhereTheirDataAreKnown()
    {
        DriveRun cold = Typed.At(3).Through(DrivePlan.Steady(Typed.Seconds(1)));
        Assert.Equal(Reason.InputUnknown, cold.Summary().WindingTemperature.Missing.Why);
        Assert.Equal("MotorThermal", cold[10].WindingTemperature.Missing.About);
        DriveDynamics warm = Typed.Dynamics with { MotorThermal = Typed.Thermal };
        DriveRun run = DriveSimulation
            .Of(Typed.Machine, Typed.Demand(3), warm)
            .Value.Through(DrivePlan.Steady(Typed.Seconds(5)));
        Assert.True(run.Summary().WindingTemperature.Value.DegreesCelsius > 20.5);
        Assert.True(run.Summary().MagnetTemperature.Value < run.Summary().WindingTemperature.Value);
    }

    [Fact]
    public void WhatIsNotKnownIsNamed()
    {
        Assert.Equal("RestTension", Missing(Typed.Machine with { RestTension = null }));
        Assert.Equal(
            "BeltStiffness",
            Missing(Typed.Machine with { Belt = new() { Width = Length.FromMillimeters(450) } })
        );
        Assert.Equal("MotorConstant", Missing(Typed.Machine with { Motor = null }));
        Assert.Equal(
            "MotorCurrentLimit",
            Missing(Typed.Machine with { Motor = Typed.Machine.Motor! with { CurrentLimit = null } })
        );
        Assert.Equal(
            "MotorVoltageLimit",
            Missing(Typed.Machine with { Motor = Typed.Machine.Motor! with { VoltageLimit = null } })
        );
        Assert.Equal(
            "DriveBeltTension",
            Missing(Typed.Machine with { DriveBelt = Typed.Machine.DriveBelt! with { Tension = null } })
        );
        DriveSimulation unknown = DriveSimulation
            .Of(Typed.Machine, Typed.Demand(1), Typed.Dynamics with { DeckStaticFriction = null })
            .Value;
        Answer<DriveRun> start = unknown.Run(
            DrivePlan.StandingStart(
                Typed.Seconds(1),
                Speed.FromMetersPerSecond(1),
                Acceleration.FromMetersPerSecondSquared(1)
            ),
            cancellation: TestContext.Current.CancellationToken
        );
        Assert.Equal("DeckStaticFriction", start.Missing.About);
        Assert.True(unknown.Through(DrivePlan.Steady(Typed.Seconds(0.1))).Complete);
    }

    [Fact]
    public void TheExportIsReadBackDigitForDigit()
    {
        DriveRun run = Typed.At(3).Through(DrivePlan.Steady(Typed.Seconds(0.2)));
        using StringWriter writer = new(CultureInfo.InvariantCulture);
        run.WriteCsv(writer);
        string[] lines = writer.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("time [s],belt speed [m/s],", lines[0], StringComparison.Ordinal);
        Assert.DoesNotContain("winding", lines[0], StringComparison.Ordinal);
        Assert.Equal(run.Count + 1, lines.Length);
        double[] speeds = run.Values(DriveRun.Columns[1]);
        for (int row = 0; row < run.Count; row++)
        {
            string[] cells = lines[row + 1].Split(',');
            Assert.Equal(lines[0].Split(',').Length, cells.Length);
            Assert.Equal(speeds[row], double.Parse(cells[1], CultureInfo.InvariantCulture));
        }
    }

    [Fact]
    public void ProgressIsToldAndCancellationIsHeard()
    {
        Heard heard = new();
        Typed.At(3).Run(DrivePlan.Steady(Typed.Seconds(10)), heard, TestContext.Current.CancellationToken);
        Assert.True(heard.Times.Count > 2);
        Assert.Equal(heard.Times.Order(), heard.Times);
        Assert.Equal(10, heard.Times[^1], 9);
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() =>
            Typed.At(3).Run(DrivePlan.Steady(Typed.Seconds(60)), null, source.Token)
        );
    }

    [Fact]
    public void ManyMachinesRunAsEachAlone()
    {
        DriveSimulation[] many = [.. Enumerable.Range(0, 11).Select(i => Typed.At(3, 700 + (50 * i)))];
        DrivePlan plan = DrivePlan.Steady(Typed.Seconds(1)) with { Tolerance = 1e-6 };
        IReadOnlyList<Answer<DriveRun>> runs = DriveSimulation.RunAll(
            many,
            plan,
            cancellation: TestContext.Current.CancellationToken
        );
        for (int i = 0; i < many.Length; i++)
        {
            DriveRun alone = many[i].Through(plan);
            Assert.Equal(alone[200].BeltSpeed.MetersPerSecond, runs[i].Value[200].BeltSpeed.MetersPerSecond, 1e-4);
        }
    }

    [Fact]
    public void ProgressOfManyMachinesIsToldAndTheirCancellationIsHeard()
    {
        DriveSimulation[] many = [.. Enumerable.Range(0, 10).Select(i => Typed.At(3, 900 + (50 * i)))];
        Counted counted = new();
        DrivePlan plan = DrivePlan.Steady(Typed.Seconds(0.3));
        DriveSimulation.RunAll(many, plan, counted, TestContext.Current.CancellationToken);
        Assert.Equal([8, 10], counted.Done);
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() =>
            DriveSimulation.RunAll(many, DrivePlan.Steady(Typed.Seconds(60)), null, source.Token)
        );
    }

    private sealed class Counted : IProgress<int>
    {
        internal List<int> Done { get; } = [];

        public void Report(int value) => Done.Add(value);
    }

    private static string Missing(Treadmill machine) =>
        DriveSimulation.Of(machine, Typed.Demand(3), Typed.Dynamics).Missing.About;

    private sealed class Heard : IProgress<Duration>
    {
        internal List<double> Times { get; } = [];

        public void Report(Duration value) => Times.Add(value.Seconds);
    }
}
