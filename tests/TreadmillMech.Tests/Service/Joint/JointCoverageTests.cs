using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Joint;

public sealed class JointCoverageTests(ITestOutputHelper output)
{
    [Fact]
    public void Lifts()
    {
        Coverage found = Coverage.Of(
            1,
            t => [t.Lift(0.03), t.Lift(0.05), t.Turn(1), t.Lift(0.03), t.Lift(0.05)],
            t =>
                [
                    (VisitQuantity.RestTensionAsFound, t.Tension),
                    (VisitQuantity.RestTensionNow, t.TensionNow),
                    (VisitQuantity.RelaxedForcePerWidth, 1000 * t.PerWidth),
                ]
        );
        output.WriteLine(found.ToString());
    }

    [Fact]
    public void Currents()
    {
        Coverage found = Coverage.Of(
            10_000,
            t =>
                [
                    t.Current(LoadState.Unloaded, 1.5, voltage: true),
                    t.Current(LoadState.Unloaded, 3, voltage: true),
                    t.Current(LoadState.Loaded, 3),
                ],
            t =>
                [
                    (VisitQuantity.DeckFrictionAsFound, t.Deck[0]),
                    (VisitQuantity.MotorConstant, t.Constant),
                    (VisitQuantity.NoLoadPull, t.NoLoadPull),
                ]
        );
        output.WriteLine(found.ToString());
    }

    [Fact]
    public void Everything()
    {
        Coverage found = Coverage.Of(
            20_000,
            t =>
                [
                    t.Lift(0.03),
                    t.Lift(0.05),
                    t.SlipTest(),
                    t.LockedPull(),
                    t.Current(LoadState.Unloaded, 1.5, voltage: true),
                    t.Current(LoadState.Unloaded, 3, voltage: true),
                    t.Current(LoadState.Loaded, 3),
                    t.Watts(LoadState.Loaded),
                    t.Turn(0.5),
                    t.Lift(0.03),
                    t.Service(),
                    t.Pull(60),
                    t.Current(LoadState.Loaded, 3),
                    t.SlipTest(),
                ],
            t =>
                [
                    (VisitQuantity.RestTensionNow, t.TensionNow),
                    (VisitQuantity.RelaxedForcePerWidth, 1000 * t.PerWidth),
                    (VisitQuantity.DeckFrictionAsFound, t.Deck[0]),
                    (VisitQuantity.DeckFrictionNow, t.Deck[1]),
                    (VisitQuantity.DriveRollerFrictionNow, t.Roller),
                    (VisitQuantity.DriveBeltTensionNow, t.DriveBelt),
                    (VisitQuantity.MotorConstant, t.Constant),
                    (VisitQuantity.NoLoadPull, t.NoLoadPull),
                    (VisitQuantity.BeltMargin, t.Margin),
                ]
        );
        output.WriteLine(found.ToString());
    }

    [Fact]
    public void Ladder()
    {
        Coverage found = Coverage.Of(
            40_000,
            t => Rungs(t),
            t => [(VisitQuantity.BeltMargin, t.Margin), (VisitQuantity.RestTensionNow, t.TensionNow)]
        );
        output.WriteLine(found.ToString());
    }

    private static IEnumerable<VisitEvent> Rungs(Truth truth)
    {
        for (int i = 0; i < 8; i++)
        {
            SlipTestReading test = truth.SlipTest();
            yield return test;
            if (!test.Slipped)
            {
                yield break;
            }

            yield return truth.Turn(0.25);
        }
    }
}
