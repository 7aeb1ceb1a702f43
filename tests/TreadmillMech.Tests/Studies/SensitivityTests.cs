using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.Model;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>Derivatives against converged central differences of the plain model; ties and jumps are told.</summary>
public sealed class SensitivityTests
{
    [Fact]
    public void DerivativesAreThoseOfConvergedCentralDifferences()
    {
        Random random = new(21);
        int compared = 0;
        int asked = 0;
        for (int i = 0; i < 12; i++)
        {
            MachineKinds kinds = RandomMachines.Kinds(random);
            Scenario scenario = new()
            {
                Numbers = RandomMachines.Numbers(random, in kinds),
                Kinds = kinds,
                CanBrake = true,
            };
            foreach (Output output in Outputs.All)
            {
                if (!Sensitivity.Of(in scenario, output).Is(out Sensitivity? found) || output == Outputs.NoticeBits)
                {
                    continue;
                }

                foreach (
                    SensitivityRow row in found.Rows.Where(row => row.Kind == SlopeKind.Smooth && row.Derivative.Found)
                )
                {
                    asked++;
                    if (Difference(in scenario, output, row.Input) is not { } expected)
                    {
                        continue;
                    }

                    compared++;
                    MachineNumbers<Real> numbers = scenario.Numbers;
                    double size = Math.Max(1e-3, Math.Abs(numbers.AsSpan()[row.Input.Index]));
                    double scale = Math.Abs(expected) + (1e-4 * Math.Abs(found.Value.Si) / size);
                    Assert.True(
                        Math.Abs(row.Derivative.Value.Si - expected) <= 1e-6 * scale,
                        $"machine {i}, {output.Name} by {row.Input.Name}: {row.Derivative.Value.Si:R} against {expected:R}, {kinds}"
                    );
                }
            }
        }

        Assert.True(compared > 5000 && compared > 0.95 * asked, $"{compared} of {asked} converged");
    }

    [Fact]
    public void AtATieOfTwoHumpsEachSideHasItsOwnDerivative()
    {
        (Scenario below, Scenario above) = Tie();
        Scenario tie = below;
        tie.Set(Inputs.DeckFriction, 0.5 * (below.Numbers.DeckFriction + above.Numbers.DeckFriction));
        SensitivityRow row = Sensitivity.Of(in tie, Outputs.PeakPull).Value[Inputs.DeckFriction];
        Assert.Equal(SlopeKind.OneSided, row.Kind);
        Assert.Equal(row.Right, row.Derivative);
        const double Step = 1e-5;
        double left = (At(in tie, 0) - At(in tie, -Step)) / Step;
        double right = (At(in tie, Step) - At(in tie, 0)) / Step;
        Assert.Equal(left, row.Left.Value.Si, 1e-4 * Math.Abs(left));
        Assert.Equal(right, row.Right.Value.Si, 1e-4 * Math.Abs(right));
        Assert.True(right - left > 1, $"{left} and {right}");
        Assert.Equal(0.01 * row.Right.Value.Si, row.Effect(0.01).Value.Si, 12);
        Assert.Equal(-0.01 * row.Left.Value.Si, row.Effect(-0.01).Value.Si, 12);

        Scenario beside = tie;
        beside.Set(Inputs.DeckFriction, tie.Numbers.DeckFriction + 1e-4);
        Assert.Equal(SlopeKind.Smooth, Sensitivity.Of(in beside, Outputs.PeakPull).Value[Inputs.DeckFriction].Kind);

        static double At(in Scenario scenario, double step)
        {
            Scenario moved = scenario;
            moved.Set(Inputs.DeckFriction, scenario.Numbers.DeckFriction + step);
            return OperatingPoint.Of(in moved).Number(Outputs.PeakPull).Value;
        }
    }

    [Fact]
    public void WhereWalkingTurnsIntoRunningTheOutputJumps()
    {
        Study study = Study.Of(Example.Machine, Example.Runner with { Speed = Speed.FromMetersPerSecond(2) });
        SensitivityRow row = study.Sensitivity(Outputs.PeakFootForce).Value[Inputs.BeltSpeed];
        Assert.Equal(SlopeKind.Jump, row.Kind);
        Assert.Equal(new(Reason.NotInRange, "BeltSpeed"), row.Derivative.Missing);
    }

    // The mean pull is friction times weight, plus the drag: Amontons. On the level, hands free.
    [Fact]
    public void TheMeanPullsDerivativesAreThoseOfItsFormula()
    {
        Sensitivity pull = Study.Of(Example.Machine, Example.Runner).Sensitivity(Outputs.MeanPull).Value;
        const double Weight = 90 * 9.80665;
        Assert.Equal(Weight, pull[Inputs.DeckFriction].Derivative.Value.Si, 9);
        Assert.Equal("N", pull[Inputs.DeckFriction].Unit);
        Assert.Equal(0.2 * 9.80665, pull[Inputs.PersonMass].Derivative.Value.Si, 12);
        Assert.Equal("N/kg", pull[Inputs.PersonMass].Unit);
        Assert.Equal(1, pull[Inputs.BeltDrag].Derivative.Value.Si, 12);
        double total = (0.2 * Weight) + 20;
        Assert.Equal(0.2 * Weight / total, pull[Inputs.PersonMass].Elasticity.Value, 12);
        Assert.Equal(20 / total, pull[Inputs.BeltDrag].Elasticity.Value, 12);
        Assert.Equal(1.5, pull[Inputs.BeltDrag].Effect(Force.FromNewtons(1.5)).Value.As<Force>().Newtons, 12);
        Assert.Throws<ArgumentException>(() => pull[Inputs.BeltDrag].Effect(Length.FromMeters(1)));
    }

    [Fact]
    public void RowsAreRankedAndThoseWithoutADerivativeComeLast()
    {
        Sensitivity margin = Study
            .Of(Example.Machine with { DriveBelt = null, Motor = null, Supply = null }, Example.Runner)
            .Sensitivity(Outputs.BeltMargin)
            .Value;
        Assert.Equal(Inputs.All.Count, margin.Rows.Count);
        double[] ranks = [.. margin.Rows.Select(row => row.Elasticity.Is(out double e) ? Math.Abs(e) : -1)];
        Assert.Equal(ranks.OrderDescending(), ranks);
        Assert.Equal(new(Reason.NotOnThisMachine, "DriveBelt"), margin[Inputs.DriveBeltTension].Derivative.Missing);
        Assert.Equal(new(Reason.InputUnknown, "MotorConstant"), margin[Inputs.MotorConstant].Derivative.Missing);
        Assert.Equal(new(Reason.InputUnknown, "StepFrequency"), margin[Inputs.StepFrequency].Elasticity.Missing);
        Assert.Equal(new(Reason.InputUnknown, "MotorVoltageLimit"), margin[Inputs.MotorVoltageLimit].Left.Missing);
    }

    // With an unknown stiffness the tension at rest is known while no turns are given, what a turn does is not.
    [Fact]
    public void WhatATurnDoesNeedsTheStiffness()
    {
        Treadmill machine = Example.Machine with { Belt = Example.Machine.Belt with { RelaxedForcePerWidth = null } };
        Study study = Study.Of(machine, Example.Runner);
        Sensitivity margin = study.Sensitivity(Outputs.BeltMargin).Value;
        Shortfall stiffness = new(Reason.InputUnknown, "BeltStiffness");
        Assert.Equal(stiffness, margin[Inputs.LeftTurns].Derivative.Missing);
        Assert.True(margin[Inputs.RestTension].Derivative.Found);
        Assert.Equal(stiffness, study.With(Inputs.LeftTurns, 0.25).Value(Outputs.BeltMargin).Missing);
        Assert.Equal(
            stiffness,
            study.Propagate(Outputs.BeltMargin, [UncertainInput.Normal(Inputs.LeftTurns, 0, 0.1)]).Missing
        );
        Sweep turns = study.Sweep(Axis.Even(Inputs.LeftTurns, 0, 1, 3), [Outputs.BeltMargin]);
        Assert.True(turns[Outputs.BeltMargin][0].Found);
        Assert.Equal(stiffness, turns[Outputs.BeltMargin][1].Missing);
    }

    [Fact]
    public void AMissingOutputAnswersAsTheOperatingPointDoes()
    {
        Study bare = Study.Of(Example.Bare, Example.Runner);
        Assert.Equal(bare.Point.BeltMargin.Missing, bare.Sensitivity(Outputs.BeltMargin).Missing);
        Assert.Equal(Reason.InputUnknown, bare.Sensitivity(Outputs.BeltMargin).Missing.Why);
    }

    /// <summary>Two walkers beside a tie: the higher hump of the pull is the first for one and the second for the other.</summary>
    private static (Scenario Below, Scenario Above) Tie()
    {
        for (double speed = 0.9; speed < 2; speed += 0.1)
        {
            Scenario scenario = Scenario.Of(
                Example.Machine,
                Example.Walker with
                {
                    Speed = Speed.FromMetersPerSecond(speed),
                    Grade = Ratio.FromPercent(4),
                }
            );
            (double low, double high) = (0.03, 0.9);
            double first = Slope(in scenario, low);
            for (double next = low + 0.01; next < high; next += 0.01)
            {
                double slope = Slope(in scenario, next);
                if (Math.Abs(slope - first) > 0.02 * Math.Abs(first))
                {
                    return Narrowed(scenario, next - 0.01, next);
                }

                first = slope;
            }
        }

        throw new InvalidOperationException("No tie was found.");
    }

    private static (Scenario Below, Scenario Above) Narrowed(Scenario scenario, double low, double high)
    {
        double below = Slope(in scenario, low);
        for (int i = 0; i < 50; i++)
        {
            double middle = 0.5 * (low + high);
            bool same = Math.Abs(Slope(in scenario, middle) - below) < 0.5 * Math.Abs(Slope(in scenario, high) - below);
            (low, high) = same ? (middle, high) : (low, middle);
        }

        Scenario other = scenario;
        scenario.Set(Inputs.DeckFriction, low);
        other.Set(Inputs.DeckFriction, high);
        return (scenario, other);
    }

    private static double Slope(in Scenario scenario, double friction)
    {
        MachineNumbers<Dual<Real>> x = scenario.Numbers.Lift<Dual<Real>>();
        x.DeckFriction = Dual<Real>.Variable(friction);
        OperatingPointModel.Run(in x, in scenario.Kinds, out OutputNumbers<Dual<Real>> y);
        return y.PeakPull.Slope;
    }

    /// <summary>Five-point difference, where two steps of it agree.</summary>
    private static double? Difference(in Scenario scenario, Output output, Input input)
    {
        MachineNumbers<Real> numbers = scenario.Numbers;
        double at = numbers.AsSpan()[input.Index];
        double size = at == 0 ? 1e-3 * (input.Range.To - input.Range.From) : Math.Abs(at);
        double coarse = FivePoints(in scenario, output, input, at, 1e-3 * size);
        double fine = FivePoints(in scenario, output, input, at, 3e-4 * size);
        double value = OperatingPoint.Of(in scenario).Number(output).Value;
        double scale = Math.Abs(fine) + (1e-4 * Math.Abs(value) / Math.Max(1e-3, Math.Abs(at)));
        return Math.Abs(coarse - fine) <= 3e-7 * scale ? fine : null;
    }

    private static double FivePoints(in Scenario scenario, Output output, Input input, double at, double step)
    {
        double[] around = new double[5];
        for (int i = 0; i < around.Length; i++)
        {
            MachineNumbers<Real> moved = scenario.Numbers;
            moved.AsSpan()[input.Index] = at + ((i - 2) * step);
            OperatingPointModel.Run(in moved, in scenario.Kinds, out OutputNumbers<Real> y);
            around[i] = y.AsSpan()[output.Index];
        }

        return (around[0] - (8 * around[1]) + (8 * around[3]) - around[4]) / (12 * step);
    }
}
