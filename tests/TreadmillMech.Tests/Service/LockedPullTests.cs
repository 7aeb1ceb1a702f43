using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class LockedPullTests
{
    // Python, by the loop balance: rollers 50 and 45 mm on a 2 mm belt, 1.35 m apart, 1080 N at rest, friction 0.3. The
    // middle of the top strand lies at s = 0.25070 from a front drive and at 0.74930 from a rear one.
    private const double SlidesAtFront = 778.9006571713365;
    private const double SlidesAtRear = 1216.2477621908981;

    private static readonly Estimate<Force> Rest = new(Force.FromNewtons(1080), Force.FromNewtons(43.2));

    [Theory]
    [InlineData(DriveEnd.Front, SlidesAtFront)]
    [InlineData(DriveEnd.Rear, SlidesAtRear)]
    public void ThePullTellsTheFriction(DriveEnd end, double newtons)
    {
        Treadmill machine = Machines.Plain with { DriveEnd = end };
        Assert.True(
            RollerFriction.FromLockedPull(machine, Force.FromNewtons(newtons), Rest).Is(out Estimate<double> friction)
        );
        Assert.Equal(0.3, friction.Value, 1e-12);
    }

    [Fact]
    public void ItsUncertaintyIsThatOfScaleAndTension()
    {
        Assert.True(
            RollerFriction
                .FromLockedPull(Machines.Plain, Force.FromNewtons(SlidesAtFront), Rest)
                .Is(out Estimate<double> friction)
        );
        Assert.Equal(UncertaintyByDifferences(), friction.StandardUncertainty, 1e-8);
    }

    [Fact]
    public void APullThatEmptiesTheSlackSideContradictsTheTension()
    {
        Answer<Estimate<double>> answer = RollerFriction.FromLockedPull(Machines.Plain, Force.FromNewtons(1500), Rest);
        Assert.Equal(Reason.ReadingsContradict, answer.Missing.Why);
        Assert.Equal(1080, answer.Missing.Available);
    }

    [Fact]
    public void AFrictionNoRollerHasIsNoAnswer()
    {
        Answer<Estimate<double>> answer = RollerFriction.FromLockedPull(Machines.Plain, Force.FromNewtons(5), Rest);
        Assert.Equal(Reason.NotInRange, answer.Missing.Why);
    }

    [Fact]
    public void ASprungRollerNeedsTheStiffness()
    {
        Treadmill sprung = Machines.Plain with
        {
            TailRoller = Machines.Plain.TailRoller with { HubStiffness = ForcePerLength.FromNewtonsPerMillimeter(500) },
        };
        Answer<Estimate<double>> answer = RollerFriction.FromLockedPull(sprung, Force.FromNewtons(600), Rest);
        Assert.Equal(Reason.InputUnknown, answer.Missing.Why);
        Assert.Equal("BeltStiffness", answer.Missing.About);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(5001)]
    public void APullOutsideItsRangeIsRefused(double newtons) =>
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            RollerFriction.FromLockedPull(Machines.Plain, Force.FromNewtons(newtons), Rest)
        );

    /// <summary>A margin needs belt stiffness, tension, deck and roller friction: the last comes from the pull.</summary>
    [Fact]
    public void InAVisitItGivesTheLadderItsMargins()
    {
        Treadmill machine = Machines.Known with { DriveRoller = Machines.Plain.DriveRoller };
        Assert.True(Visits.Review(machine, Happened.RollerDry).Ladder[0].Margin.Is(out Figure? unread));
        Assert.True(unread.StandardUncertainty > 0.25 * unread.Value);
        VisitSheet sheet = Visits.Review(
            machine,
            Happened.RollerDry,
            Happened.Locked(SlidesAtFront, SlidContact.RunningBelt)
        );
        Assert.True(sheet.Ladder[0].Margin.Is(out Figure? margin));
        Assert.True(Visits.Review(Machines.Known, Happened.RollerDry).Ladder[0].Margin.Is(out Figure? known));
        Assert.True(margin.StandardUncertainty < 0.1 * margin.Value);

        // The pull is the one at 0.3 and 1080 N, the prior has its centre at 0.3 and the given tension at 1080 N: nothing pulls.
        Assert.Equal(known.Value, margin.Value, 1e-4 * known.Value);
        ReadingRow row = Assert.Single(sheet.Readings, r => r.Name == "Friction of belt on drive roller");
        Assert.Equal(0.3, row.AsFound!.Value, 1e-5);
    }

    [Fact]
    public void ACleanedRollerHasAnotherFriction()
    {
        Treadmill machine = Machines.Known with { DriveRoller = Machines.Plain.DriveRoller };
        VisitSheet sheet = Visits.Review(
            machine,
            Happened.Locked(400, SlidContact.RunningBelt),
            Happened.Cleaned(CleanedPlace.Rollers)
        );

        // Of the cleaned roller only the band is known.
        Assert.True(sheet.Ladder[0].Margin.Is(out Figure? margin));
        Assert.True(margin.StandardUncertainty > 0.15 * margin.Value);
        Assert.Contains("friction of belt on drive roller now", sheet.NotTold);
    }

    [Fact]
    public void ADriveBeltThatSlidFirstTellsNothingOfTheRoller()
    {
        Treadmill machine = Machines.Known with { DriveRoller = Machines.Plain.DriveRoller };
        VisitSheet sheet = Visits.Review(machine, Happened.Locked(400, SlidContact.DriveBelt));
        Assert.Contains(sheet.Readings, r => r.Name == "Locked pull at which the drive belt slid");
        Assert.Contains("friction of belt on drive roller now", sheet.NotTold);
        Assert.True(sheet.Ladder[0].Margin.Is(out Figure? margin));
        Assert.True(margin.StandardUncertainty > 0.15 * margin.Value);
        VisitSheet direct = Visits.Review(
            machine with
            {
                DriveBelt = null,
            },
            Happened.Locked(400, SlidContact.DriveBelt)
        );
        Assert.Equal("locked pull", Assert.Single(direct.Refused).Name);
    }

    private static double UncertaintyByDifferences()
    {
        const double Wrap = 3.145296359410386;
        const double Share = 0.2507036663605196;
        static double Friction(double pull, double rest) =>
            Math.Log((rest + (pull * Share)) / (rest - (pull * (1 - Share)))) / Wrap;
        double ofPull = (Friction(SlidesAtFront + 0.01, 1080) - Friction(SlidesAtFront - 0.01, 1080)) / 0.02;
        double ofRest = (Friction(SlidesAtFront, 1080.01) - Friction(SlidesAtFront, 1079.99)) / 0.02;
        return Math.Sqrt(Math.Pow(ofPull * 0.02 * SlidesAtFront, 2) + Math.Pow(ofRest * 43.2, 2));
    }
}
