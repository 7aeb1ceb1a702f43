using System.Collections.Immutable;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class QuarterTurnsTests
{
    private static readonly Demand Heavy = new()
    {
        Person = new() { Mass = Mass.FromKilograms(100) },
        Speed = Speed.FromMetersPerSecond(3),
    };

    // By hand: 2 cos a x 0.3125 mm / L, cos a from sin a = (26 - 23.5)/1350, L = 2849.230 mm + pi x 2 mm.
    [Fact]
    public void AQuarterTurnOfM8ElongatesTheBeltByTwoHundredthsOfAPercent()
    {
        double cos = Math.Sqrt(1 - Math.Pow(2.5 / 1350, 2));
        double expected = 2 * cos * 0.3125 / (2849.230 + (Math.PI * 2));
        Close.To(expected, QuarterTurns.Strain(Machines.Plain, 0.25), 1e-6);
        Close.Within(0.00022, QuarterTurns.Strain(Machines.Plain, 0.25), 5e-6);
    }

    [Fact]
    public void SlantedBoltsTightenByTheirCosine()
    {
        Treadmill slanted = Machines.Plain.WithTakeUp(t => t with { BoltAngle = Angle.FromDegrees(60) });
        Close.To(0.5, QuarterTurns.Strain(slanted, 1) / QuarterTurns.Strain(Machines.Plain, 1));
        Close.To(-1, QuarterTurns.Strain(Machines.Plain, -1) / QuarterTurns.Strain(Machines.Plain, 1));
    }

    [Fact]
    public void WithoutTheStiffnessTheElongationIsToldAndNothingElse()
    {
        Treadmill machine = Machines.Known with { Belt = Machines.Plain.Belt };
        ImmutableArray<LadderStep> ladder = QuarterTurns.Ladder(machine, Heavy, 1);
        Assert.Equal([0, 0.25, 0.5, 0.75, 1], ladder.Select(s => s.Turns));
        Assert.True(ladder[0].Tension.Found && ladder[0].Margin.Found);
        Assert.All(ladder.Skip(1), s => Assert.True(s.StrainAdded.Value > 0));
        Assert.All(ladder.Skip(1), s => Assert.Equal(new(Reason.InputUnknown, "BeltStiffness"), s.Tension.Missing));
        Assert.All(ladder.Skip(1), s => Assert.Equal(new(Reason.InputUnknown, "BeltStiffness"), s.Margin.Missing));
    }

    // EA 360 kN, two turns: 2 x 2.5 mm of loop over 2855.5 mm: 630 N, by hand.
    [Fact]
    public void TwoTurnsMoreAreSeveralHundredNewtons()
    {
        LadderStep last = QuarterTurns.Ladder(Machines.Known, Heavy, 2)[^1];
        double cos = Math.Sqrt(1 - Math.Pow(2.5 / 1350, 2));
        double gain = 360_000 * 2 * cos * 2.5 / (2849.230 + (Math.PI * 2));
        Close.To(1080 + gain, last.Tension.Value.Value, 1e-6);
        Assert.InRange(gain, 600, 700);
    }

    [Fact]
    public void MarginAndTensionRiseWithEveryQuarter()
    {
        ImmutableArray<LadderStep> ladder = QuarterTurns.Ladder(Machines.Known, Heavy, 2);
        Assert.Equal(9, ladder.Length);
        foreach ((LadderStep lower, LadderStep higher) in ladder.Zip(ladder.Skip(1)))
        {
            Assert.True(higher.Margin.Value.Value > lower.Margin.Value.Value);
            Assert.True(higher.Tension.Value.Value > lower.Tension.Value.Value);
            Assert.True(higher.StrainAdded.Value > lower.StrainAdded.Value);
        }
    }

    // Grip goes with tension above the centrifugal part, demand does not: so does the margin (2 v^2 b x 2.4 kg/m2).
    [Fact]
    public void TheMarginGoesWithTheTensionThatPresses()
    {
        ImmutableArray<LadderStep> ladder = QuarterTurns.Ladder(Machines.Known, Heavy, 2);
        double centrifugal = 2.4 * 0.45 * 9;
        double expected =
            (ladder[^1].Tension.Value.Value - centrifugal) / (ladder[0].Tension.Value.Value - centrifugal);
        Close.To(expected, ladder[^1].Margin.Value.Value / ladder[0].Margin.Value.Value, 1e-9);
    }

    [Fact]
    public void AnUnknownRollerFrictionLeavesTheTensionKnown()
    {
        Treadmill machine = Machines.Known with { DriveRoller = Machines.Plain.DriveRoller };
        LadderStep last = QuarterTurns.Ladder(machine, Heavy, 0.5)[^1];
        Assert.True(last.Tension.Found);
        Assert.Equal(new(Reason.InputUnknown, "DriveRollerFriction"), last.Margin.Missing);
    }

    [Fact]
    public void TheStepIsThatOfTheOptionsAndTheRangeIsKept()
    {
        VisitOptions eighths = VisitOptions.Default with { TurnStep = new("turns at a time", 0.125, "turn", "a test") };
        Assert.Equal(3, QuarterTurns.Ladder(Machines.Plain, Heavy, 0.25, eighths).Length);
        Assert.Single(QuarterTurns.Ladder(Machines.Plain, Heavy, 0.2));
        Assert.Throws<OutOfRangeException>("turns", () => QuarterTurns.Ladder(Machines.Plain, Heavy, -0.1));
        Assert.Throws<OutOfRangeException>("turns", () => QuarterTurns.Ladder(Machines.Plain, Heavy, 10.5));
        Assert.Throws<ArgumentNullException>("machine", () => QuarterTurns.Ladder(null!, Heavy, 1));
        Assert.Throws<ArgumentNullException>("demand", () => QuarterTurns.Ladder(Machines.Plain, null!, 1));
    }

    [Fact]
    public void AThreadOfInchesElongatesByItsOwnLead()
    {
        Treadmill inches = Machines.Plain.WithTakeUp(t => t with { Thread = ScrewThread.Parse("3/8-16 UNC") });
        Close.To(25.4 / 16 / 1.25, QuarterTurns.Strain(inches, 1) / QuarterTurns.Strain(Machines.Plain, 1));
    }
}
