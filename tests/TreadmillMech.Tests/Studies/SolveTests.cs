using System.Collections.Immutable;
using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>Solutions against a dense scan of the plain model, and typed answers where there is none or more than one.</summary>
public sealed class SolveTests
{
    private static readonly Input[] Bolts = [Inputs.LeftTurns, Inputs.RightTurns];

    [Fact]
    public void TheTurnsForAMarginGiveThatMargin()
    {
        Study study = Study.Of(Example.Machine with { RestTension = Force.FromNewtons(800) }, Example.Runner);
        Solution found = study.Solve(Outputs.BeltMargin, 1.2, Bolts, 0, 3).Value;
        double turns = found.Value.As<double>();
        Treadmill tightened = Example.Machine with
        {
            RestTension = Force.FromNewtons(800),
            TakeUp = Example.Machine.TakeUp with { LeftTurns = turns, RightTurns = turns },
        };
        Assert.Equal(1.2, tightened.At(Example.Runner).BeltMargin.Value, 12);
        Assert.Equal(tightened.At(Example.Runner), found.Point);
        Assert.Equal(1.2, found.Reached.Si, 12);
        Assert.Equal("LeftTurns and RightTurns 0", $"{found}"[..26]);
    }

    // Friction from the mean pull, by the formula: (F - F0)/(m g).
    [Fact]
    public void AnUnknownInputIsFoundFromAReading()
    {
        Study study = Study.Of(Example.Machine with { Deck = new() }, Example.Runner);
        Assert.Equal(Reason.InputUnknown, study.Value(Inputs.DeckFriction).Missing.Why);
        Solution found = study.Solve(Outputs.MeanPull, Force.FromNewtons(150), Inputs.DeckFriction, 0.05, 0.5).Value;
        Assert.Equal((150 - 20) / (90 * 9.80665), found.Value.Si, 12);
        Assert.Equal(90 * 9.80665, found.Slope.Si, 9);
    }

    [Fact]
    public void WithoutASolutionTheNearestOutputIsTold()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        Answer<Solution> none = study.Solve(Outputs.MeanPull, Force.FromNewtons(500), Inputs.DeckFriction, 0.05, 0.5);
        double most = (0.5 * 90 * 9.80665) + 20;
        Assert.Equal(Reason.NotInRange, none.Missing.Why);
        Assert.Equal("MeanPull", none.Missing.About);
        Assert.Equal(500, none.Missing.Needed);
        Assert.Equal(most, none.Missing.Available, 9);
        Assert.Equal("N", none.Missing.Unit);
    }

    [Fact]
    public void SeveralSolutionsAreCountedAndListed()
    {
        // Uphill the mean pull falls through zero: its root mean square has a least value between.
        Study study = Study.Of(Example.Machine, Example.Runner);
        Axis grades = Axis.Even(Inputs.Incline, Angle.FromRadians(-0.09), Angle.FromRadians(0.38), 4001);
        double[] rms = study.Sweep(grades, [Outputs.RmsPull])[Outputs.RmsPull].Si.ToArray();
        int lowest = Array.IndexOf(rms, rms.Min());
        Assert.InRange(lowest, 10, 3990);
        double wanted = rms[lowest] + (0.3 * (Math.Min(rms[0], rms[^1]) - rms[lowest]));
        Answer<Solution> one = study.Solve(
            Outputs.RmsPull,
            Force.FromNewtons(wanted),
            Inputs.Incline,
            grades[0],
            grades[4000]
        );
        Assert.Equal(new(Reason.SeveralSolutions, "Incline", 1, 2, "solutions"), one.Missing);
        ImmutableArray<Solution> both = study
            .Solutions(Outputs.RmsPull, Force.FromNewtons(wanted), Inputs.Incline, grades[0], grades[4000])
            .Value;
        double step = grades[1].Si - grades[0].Si;
        int left = Array.FindIndex(rms, value => value < wanted);
        int right = Array.FindLastIndex(rms, value => value < wanted);
        Assert.InRange(both[0].Value.Si, grades[left].Si - step, grades[left].Si);
        Assert.InRange(both[1].Value.Si, grades[right].Si, grades[right].Si + step);
    }

    // Two solutions that lie between neighbouring points of the scan are found by the turning point between them.
    [Fact]
    public void TwoSolutionsCloseTogetherAreFound()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        Axis grades = Axis.Even(Inputs.Incline, Angle.FromRadians(-0.09), Angle.FromRadians(0.38), 4001);
        double[] rms = study.Sweep(grades, [Outputs.RmsPull])[Outputs.RmsPull].Si.ToArray();
        double least = rms.Min();
        ImmutableArray<Solution> both = study
            .Solutions(Outputs.RmsPull, Force.FromNewtons(least + 1e-4), Inputs.Incline, grades[0], grades[4000])
            .Value;
        Assert.Equal(2, both.Length);
        Assert.InRange(both[1].Value.Si - both[0].Value.Si, 1e-6, 3e-3);
        Assert.All(both, one => Assert.Equal(least + 1e-4, one.Reached.Si, 9));
    }

    // At 2 m/s walking turns into running and the step frequency jumps; what lies in the jump is never reached.
    [Fact]
    public void AJumpOverWhatIsWantedIsNoSolution()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        Frequency walking = Frequency.FromHertz(1.550 * Math.Pow(2, 0.545));
        Frequency running = Frequency.FromHertz(3.024 * Math.Pow(0.5, 0.308));
        Assert.True(walking < running);
        Frequency between = (walking + running) / 2;
        Speed slow = Speed.FromMetersPerSecond(1);
        Speed fast = Speed.FromMetersPerSecond(4);
        Answer<Solution> none = study.Solve(Outputs.StepFrequencyUsed, between, Inputs.BeltSpeed, slow, fast);
        Assert.Equal(Reason.NotInRange, none.Missing.Why);
        Assert.True(study.Solve(Outputs.StepFrequencyUsed, running * 1.01, Inputs.BeltSpeed, slow, fast).Found);
    }

    // Below some tension there is no margin at all: the search starts at the edge of what can be answered.
    [Fact]
    public void ASolutionBesideRowsWithoutAnswerIsFound()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        Force low = Force.FromNewtons(0);
        Force high = Force.FromNewtons(3000);
        double tiny = 0.02;
        Solution found = study.Solve(Outputs.BeltMargin, tiny, Inputs.RestTension, low, high).Value;
        Assert.Equal(tiny, found.Reached.Si, 9);
        Assert.Equal(Reason.SlackBelt, study.With(Inputs.RestTension, low).Value(Outputs.BeltMargin).Missing.Why);
    }

    [Fact]
    public void AnotherUnknownInputAnswersAsTheOperatingPointDoes()
    {
        Study study = Study.Of(Example.Machine with { BeltDrag = null }, Example.Runner);
        Answer<Solution> none = study.Solve(Outputs.BeltMargin, 1.2, Bolts, 0, 3);
        Assert.Equal(study.Point.BeltMargin.Missing, none.Missing);
        Assert.Equal(new(Reason.InputUnknown, "BeltDrag"), none.Missing);
    }

    [Fact]
    public void AnInputThatIsNotOnTheMachineIsNamed()
    {
        Study study = Study.Of(Example.Machine with { DriveBelt = null }, Example.Runner);
        Shortfall missing = new(Reason.NotOnThisMachine, "DriveBelt");
        Input input = Inputs.DriveBeltTension;
        Assert.Equal(
            missing,
            study.Solve(Outputs.BeltMargin, 1.2, input, Force.FromNewtons(50), Force.FromNewtons(500)).Missing
        );
        Sweep sweep = study.Sweep(Axis.Of(input, Force.FromNewtons(100)), [Outputs.MeanPull]);
        Assert.Equal(missing, sweep[Outputs.MeanPull][0].Missing);
        Assert.True(double.IsNaN(sweep[Outputs.MeanPull].Si[0]));
        Assert.Throws<ArgumentException>(() => study.With(input, Force.FromNewtons(100)));
        Assert.Equal(
            missing,
            study
                .Propagate(
                    Outputs.MeanPull,
                    [UncertainInput.Normal(input, Force.FromNewtons(100), Force.FromNewtons(1))]
                )
                .Missing
        );
    }

    [Fact]
    public void WrongValuesAreNamed()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        ArgumentException unit = Assert.Throws<ArgumentException>(() =>
            study.Solve(Outputs.BeltMargin, 1.2, Inputs.BeltSpeed, Length.FromMeters(1), Length.FromMeters(2))
        );
        Assert.Contains("BeltSpeed is in [m/s]; 1 m is in [m]", unit.Message, StringComparison.Ordinal);
        ArgumentOutOfRangeException range = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            study.Solve(Outputs.BeltMargin, 1.2, Inputs.DeckFriction, -1, 1)
        );
        Assert.Contains("DeckFriction: -1 is outside 0.02 to 1", range.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => study.Solve(Outputs.BeltMargin, 1.2, Bolts, 2, 1));
        Assert.Throws<ArgumentException>(() => study.Solve(Outputs.BeltMargin, double.NaN, Bolts, 0, 1));
        Assert.Throws<ArgumentException>(() =>
            study.Solve(Outputs.BeltMargin, 1, [Inputs.LeftTurns, Inputs.BeltSpeed], 0, 1)
        );
        ArgumentException stranger = Assert.Throws<ArgumentException>(() =>
            study.Value(new Input("Colour", "c", "1", ""))
        );
        Assert.Contains("DeckFriction", stranger.Message, StringComparison.Ordinal);
    }
}
