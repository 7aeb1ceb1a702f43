using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>The balance of the loop's length against a loop of springs.</summary>
[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class ElasticLoopTests
{
    private const double Length = 2.85;
    private const double Stiffness = 360_000;
    private const double Tension = 1000;

    // Solving the springs loses digits with their number: 1e-16 times the square of 1200.
    private const double Rounding = 1e-7;

    [Fact]
    public void TwelveHundredNodesAgreeOnThreeLoads()
    {
        ElasticLoop loop = new(1200, Length, Stiffness, Tension) { DriveHub = 1 / 3e6, UndrivenHub = 1 / 2e6 };
        loop.Load(130, 250);
        loop.Load(410, 180);
        loop.Load(800, 60);
        AssertAgrees(loop, (130, 250, 0), (410, 180, 0), (800, 60, 1));
    }

    [Property(MaxTest = 20)]
    public void AnyTwoLoadsAgree(Fraction first, Fraction second, Fraction pull, Fraction drive, Fraction undriven)
    {
        // One load ahead of the undriven roller as with a front drive, one behind it as with a rear drive.
        int ahead = (int)first.Between(1, 88);
        int behind = (int)second.Between(91, 178);
        double force = pull.Between(-300, 300);
        ElasticLoop loop = new(180, Length, Stiffness, Tension)
        {
            DriveHub = drive.Between(0, 1e-6),
            UndrivenHub = undriven.Between(0, 1e-6),
        };
        loop.Load(ahead, force);
        loop.Load(behind, 150);
        AssertAgrees(loop, (ahead, force, 0), (behind, 150, 1));
    }

    [Fact]
    public void ALoadOnTheUndrivenRollerCountsByHalf()
    {
        ElasticLoop loop = new(180, Length, Stiffness, Tension)
        {
            DriveHub = 2e-7,
            UndrivenHub = 5e-7,
            Undriven = 80,
        };
        loop.Load(80, 200);
        AssertAgrees(loop, (80, 200, 0.5));
    }

    [Fact]
    public void InertiaAllAlongTheLoopActsAtTheMeanShareOfOneHalf()
    {
        const double ratio = 2.57;
        double share = TractionLaws.LoadShare<Real>(30 * Length / 180, Length, 0.48, 0.72, 0);
        double demand = TractionLaws.SlipDemand<Real>(900, 900 * share, ratio);
        double grip = TractionLaws.Grip<Real>(Tension, 0, ratio);
        double slowing = TractionLaws.SlowingForce<Real>(demand, grip, ratio);
        Assert.True(slowing > 0);

        // The belt slows, so its mass pushes forwards, evenly along the loop: the roller then sits at its limit. The
        // part that sits on the roller itself counts by half to either side.
        const int nodes = 180;
        ElasticLoop loop = new(nodes, Length, Stiffness, Tension)
        {
            DriveHub = 0.48 / (4 * Stiffness),
            UndrivenHub = 0.72 / (4 * Stiffness),
        };
        loop.Load(30, 900);
        for (int node = 1; node < nodes; node++)
        {
            loop.Load(node, -slowing / (nodes - 1));
        }

        (double slack, double tight) = loop.Solve();
        Close.To(ratio, tight / slack, Rounding);
    }

    private static void AssertAgrees(ElasticLoop loop, params (int Node, double Force, double Passed)[] loads)
    {
        double driveLength = BeltLaws.CompliantLength<Real>(Stiffness, loop.DriveHub);
        double undrivenLength = BeltLaws.CompliantLength<Real>(Stiffness, loop.UndrivenHub);
        double pull = 0;
        double sharedPull = 0;
        foreach ((int node, double force, double passed) in loads)
        {
            pull += force;
            sharedPull +=
                force * TractionLaws.LoadShare<Real>(loop.Place(node), Length, driveLength, undrivenLength, passed);
        }

        (double slack, double tight) = loop.Solve();
        Close.To(slack, TractionLaws.SlackTension<Real>(Tension, pull, sharedPull), Rounding);
        Close.To(tight, TractionLaws.TightTension<Real>(Tension, sharedPull), Rounding);
    }
}
