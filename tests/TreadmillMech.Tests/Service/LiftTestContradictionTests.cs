using TreadmillMech.Service.Estimation;

namespace TreadmillMech.Tests.Service;

/// <summary>Lifts that no belt makes are named as such, however far the fit must go to find out.</summary>
public sealed class LiftTestContradictionTests
{
    [Theory]
    [InlineData(0.6, 1, 0.03)]
    [InlineData(0.3, 1, 0.05)]
    [InlineData(2, 1, 0.03)]
    [InlineData(0.6, 3, 0.05)]
    [InlineData(3, 0.25, 0.03)]
    [InlineData(0.2, 5, 0.05)]
    public void AForceThatNoTurnExplainsContradicts(double share, double turns, double height)
    {
        LiftBench bench = new(1080, 8);
        LiftAtTurns odd = LiftBench.Reading(height, share * bench.Force(height, turns), turns);
        LiftAtTurns[] lifts = [bench.Lift(0.03), bench.Lift(0.05), odd];
        Assert.Equal(Reason.ReadingsContradict, LiftTest.Evaluate(Machines.Plain, lifts).Missing.Why);
    }

    // F l/(4 h) = 1000 x 1.35 / 0.02 = 67 kN: no frame carries that.
    [Fact]
    public void ATensionBeyondEveryMachineIsNoAnswer()
    {
        Shortfall missing = LiftTest.Evaluate(Machines.Plain, [LiftBench.Reading(0.005, 1000)]).Missing;
        Assert.Equal(Reason.NotInRange, missing.Why);
        Assert.Equal("RestTension", missing.About);
        Assert.True(missing.Available > missing.Needed);
    }
}
