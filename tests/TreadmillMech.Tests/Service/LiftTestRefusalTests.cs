using TreadmillMech.Service.Estimation;

namespace TreadmillMech.Tests.Service;

public sealed class LiftTestRefusalTests
{
    [Fact]
    public void WithoutALiftNothingIsObserved()
    {
        Answer<TensionEstimate> found = LiftTest.Evaluate(Machines.Plain, []);
        Assert.Equal(Reason.NotObservable, found.Missing.Why);
        Assert.Equal("RestTension", found.Missing.About);
    }

    // The same lift once with 100 N and once with 200 N: at 2 % each these are dozens of deviations apart.
    [Fact]
    public void LiftsThatDisagreeAreSaidToContradict()
    {
        LiftAtTurns[] lifts = [LiftBench.Reading(0.03, 100), LiftBench.Reading(0.03, 200)];
        Answer<TensionEstimate> found = LiftTest.Evaluate(Machines.Plain, lifts);
        Assert.Equal(Reason.ReadingsContradict, found.Missing.Why);
        Assert.True(found.Missing.Available > found.Missing.Needed);
    }

    // Half of the span's weight alone is 7.1 N: a bar that carries 10 N at 50 mm holds up hardly more than the belt.
    [Fact]
    public void ABeltThatLiesOnTheBarByItsWeightAloneIsSlack()
    {
        Answer<TensionEstimate> found = LiftTest.Evaluate(Machines.Plain, [LiftBench.Reading(0.05, 10)]);
        Assert.Equal(Reason.SlackBelt, found.Missing.Why);
        Assert.True(found.Missing.Available <= 0);
    }

    [Fact]
    public void MachineAndListAreRequired()
    {
        Assert.Throws<ArgumentNullException>("machine", () => LiftTest.Evaluate(null!, []));
        Assert.Throws<ArgumentNullException>("lifts", () => LiftTest.Evaluate(Machines.Plain, null!));
    }
}
