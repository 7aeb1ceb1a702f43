using TreadmillMech.Model;
using TreadmillMech.Studies;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Studies;

/// <summary>A sweep is the operating point of every row, in quantities and in plain numbers.</summary>
public sealed class SweepTests
{
    [Fact]
    public void EveryRowIsTheOperatingPointOfItsDemand()
    {
        Axis speeds = Axis.Even(Inputs.BeltSpeed, Speed.FromMetersPerSecond(0.5), Speed.FromMetersPerSecond(5), 19);
        Sweep sweep = Study.Of(Example.Machine, Example.Runner).Sweep(speeds, [Outputs.MeanPull, Outputs.PullPower]);
        IReadOnlyList<Speed> axis = sweep.First.As<Speed>();
        IReadOnlyList<Answer<Power>> powers = sweep[Outputs.PullPower].As<Power>();
        Assert.Equal(19, sweep.Rows);
        for (int row = 0; row < sweep.Rows; row++)
        {
            OperatingPoint expected = Example.Machine.At(Example.Runner with { Speed = axis[row] });
            Assert.Equal(expected, sweep.PointAt(row));
            Assert.Equal(expected.PullPower, powers[row]);
            Assert.Equal((double)expected.PullPower.Value.Watts, sweep[Outputs.PullPower].Si[row], 1e-9);
            Assert.Equal(Reason.Found, sweep[Outputs.PullPower].Status[row]);
        }
    }

    [Fact]
    public void TwoInputsGiveEveryPair()
    {
        Axis speeds = Axis.Of(Inputs.BeltSpeed, Speed.FromMetersPerSecond(1), Speed.FromMetersPerSecond(3));
        Axis masses = Axis.Even(Inputs.PersonMass, Mass.FromKilograms(50), Mass.FromKilograms(150), 3);
        Sweep sweep = Study.Of(Example.Machine, Example.Runner).SweepGrid(speeds, masses, [Outputs.BeltMargin]);
        Assert.Equal(6, sweep.Rows);
        for (int i = 0; i < 2; i++)
        {
            for (int j = 0; j < 3; j++)
            {
                Demand demand = Example.Runner with
                {
                    Speed = speeds[i].As<Speed>(),
                    Person = new() { Mass = masses[j].As<Mass>() },
                };
                Assert.Equal(
                    Example.Machine.At(demand).BeltMargin.Value,
                    sweep[Outputs.BeltMargin].Si[sweep.Row(i, j)]
                );
            }
        }

        Assert.Throws<ArgumentException>(() => Study.Of(Example.Machine, Example.Runner).SweepGrid(speeds, speeds));
    }

    [Fact]
    public void RowsWithoutAnAnswerAreKeptWithTheirReason()
    {
        Axis tensions = Axis.Even(Inputs.RestTension, Force.FromNewtons(0), Force.FromNewtons(2000), 21);
        Study study = Study.Of(Example.Machine, Example.Runner);
        Series slack = study.Sweep(tensions)[Outputs.SlackTension];
        Assert.Contains(Reason.SlackBelt, slack.Status.ToArray());
        Assert.Contains(Reason.Found, slack.Status.ToArray());
        for (int row = 0; row < tensions.Count; row++)
        {
            Treadmill machine = Example.Machine with { RestTension = tensions[row].As<Force>() };
            Answer<Force> expected = machine.At(Example.Runner).SlackTension;
            Assert.Equal(expected.Missing, slack[row].Missing);
            Assert.Equal(expected.Missing.Why, slack.Status[row]);
            Assert.Equal(!expected.Found, double.IsNaN(slack.Si[row]));
        }
    }

    [Fact]
    public void AnUnknownInputIsKnownWhereItIsSwept()
    {
        Study study = Study.Of(Example.Machine with { Deck = new() }, Example.Runner);
        Sweep swept = study.Sweep(Axis.Of(Inputs.DeckFriction, 0.2), [Outputs.BeltMargin]);
        Assert.Equal(Example.Machine.At(Example.Runner).BeltMargin.Value, swept[Outputs.BeltMargin].Si[0]);
        Sweep other = study.Sweep(Axis.Of(Inputs.PersonMass, Mass.FromKilograms(80)), [Outputs.BeltMargin]);
        Assert.Equal(new(Reason.InputUnknown, "DeckFriction"), other[Outputs.BeltMargin][0].Missing);
    }

    [Fact]
    public void ProgressRisesToTheEndAndACancelledSweepStops()
    {
        Study study = Study.Of(Example.Machine, Example.Runner);
        Axis speeds = Axis.Even(Inputs.BeltSpeed, Speed.FromMetersPerSecond(1), Speed.FromMetersPerSecond(4), 3000);
        Told told = new();
        study.Sweep(speeds, [Outputs.MeanPull], told, TestContext.Current.CancellationToken);
        Assert.Equal(told.Shares.Order(), told.Shares);
        Assert.Equal(1, told.Shares[^1]);
        Assert.True(told.Shares.Count > 5);
        using CancellationTokenSource stop = new();
        Told stopping = new(share =>
        {
            if (share > 0.2)
            {
                stop.Cancel();
            }
        });
        Assert.ThrowsAny<OperationCanceledException>(() => study.Sweep(speeds, null, stopping, stop.Token));
        Assert.True(stopping.Shares[^1] < 1);
    }

    [Fact]
    public void WrongAxesAreNamed()
    {
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Axis.Even(Inputs.LeftTurns, 0, 1, 1));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Axis.Even(Inputs.LeftTurns, 0, 100, 2));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Axis.Even(Inputs.LeftTurns, double.NaN, 1, 2));
        Assert.Throws<ArgumentException>(() => Axis.Of(Inputs.LeftTurns));
        Assert.Throws<ArgumentException>(() => Axis.Of(Inputs.LeftTurns, Length.FromMeters(0)));
        Assert.Throws<ArgumentException>(() => Axis.Of([Inputs.LeftTurns, Inputs.LeftTurns], 0));
        Assert.Throws<InvalidOperationException>(() => Axis.Of(Inputs.LeftTurns, 0).As<Length>());
        Sweep sweep = Known.Study.Sweep(Axis.Of(Inputs.LeftTurns, 0), [Outputs.MeanPull]);
        Assert.Throws<InvalidOperationException>(() => sweep[Outputs.MeanPull].As<Length>());
        Assert.Throws<ArgumentException>(() => sweep[Outputs.BeltMargin]);
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => sweep.PointAt(1));
    }
}
