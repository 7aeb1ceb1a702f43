using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class VisitSafetyTests
{
    [Fact]
    public void OilOnTopTakesTheMachineOutOfService()
    {
        VisitSheet sheet = Visits.Review(Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Oil));
        Assert.Equal(Verdict.OutOfService, sheet.Verdict);
        Visits.Says("Out of service", sheet.VerdictText);
        Visits.Says("nobody steps on it", sheet.SafetyNow[0]);
        Visits.Says("Nobody steps on the machine", sheet.OwnerPage[0]);
        Visits.Says("Degrease", sheet.NextSteps[0].Action);
    }

    [Fact]
    public void CleanedAgainItMayBeUsed() =>
        Assert.Equal(
            Verdict.Use,
            Visits
                .Review(
                    Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Oil),
                    Happened.Cleaned(CleanedPlace.BeltTop),
                    Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Dry),
                    Happened.Holds
                )
                .Verdict
        );

    [Fact]
    public void APersonAboveThePlateIsNotTested()
    {
        Treadmill machine = Machines.Plain with
        {
            Plate = Machines.Plain.Plate! with { LargestUserMass = Mass.FromKilograms(110) },
        };
        VisitSheet sheet = Visits.Review(machine);
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Finding finding = sheet.About(Subject.User);
        Assert.Equal(118, finding.Number!.Value);
        Assert.Equal(110, finding.Limit!.Value);
        Assert.Equal("maker's plate", finding.Limit.Source);
        Visits.Says("Do not test or use the machine with this person", finding.Next!.Action);
        Visits.Says("people within the mass on its plate", sheet.OwnerPage[0]);
    }

    [Fact]
    public void NoRetestIsAskedOfAPersonAboveThePlate()
    {
        Treadmill machine = Machines.Plain with
        {
            Plate = Machines.Plain.Plate! with { LargestUserMass = Mass.FromKilograms(110) },
        };
        NextStep step = Visits.Review(machine, Visits.ReadyToTurn).About(Subject.RunningBelt).Next!;
        Visits.Says("repeat the slip test under a test demand within the maker's plate", step.Action);
    }

    [Fact]
    public void ASpeedBeyondThePlateIsNotTested()
    {
        Treadmill machine = Machines.Plain with
        {
            Plate = Machines.Plain.Plate! with { HighestSpeed = Speed.FromMetersPerSecond(2.5) },
        };
        VisitSheet sheet = Visits.Review(machine, Visits.ReadyToTurn);
        Finding finding = sheet.About(Subject.User);
        Assert.Equal(Severity.Attend, finding.Severity);
        Assert.Equal(2.5, finding.Limit!.Value);
        Visits.Says("Test at a speed within the maker's plate", finding.Next!.Action);
        Visits.Says("within the maker's plate", sheet.About(Subject.RunningBelt).Next!.Action);
    }

    [Fact]
    public void ACircuitBeyondItsRatingRestrictsUse()
    {
        VisitSheet sheet = Visits.Review(Happened.Mains(LoadState.Loaded, 15.5));
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Finding finding = sheet.About(Subject.Supply);
        Assert.Equal(15, finding.Limit!.Value);
        Visits.Says("more than its branch circuit is rated for", finding.Statement);
    }

    // 80 % of 15 A is 12 A (US NEC 210.19, 210.20).
    [Theory]
    [InlineData(12.1, true)]
    [InlineData(11.9, false)]
    public void ALoadedCircuitIsLookedAtAndNoBiggerBreakerFitted(double amperes, bool found)
    {
        VisitSheet sheet = Visits.Review(Happened.Mains(LoadState.Loaded, amperes));
        Assert.NotEqual(found, sheet.Silent(Subject.Supply));
        if (found)
        {
            Finding finding = sheet.About(Subject.Supply);
            Assert.Equal(12, finding.Limit!.Value, 1e-9);
            Visits.Says("Fit no bigger breaker", finding.Next!.Action);
            Visits.Says("qualified person", finding.Next.Action);
            Visits.Says("below 12 A", finding.Next.Expect);
        }
    }

    [Theory]
    [InlineData(5, "drifts to the right", "Tighten the right bolt by 0.125 turn")]
    [InlineData(-5, "drifts to the left", "Tighten the left bolt by 0.125 turn")]
    public void ADriftingBeltIsTightenedOnTheSideItRunsTowards(double millimeters, string statement, string action)
    {
        // 5 mm in 10 passes: 0.148 turns as a string (see the tracking advice), in eighths 0.125.
        Finding finding = Visits.Review(Happened.Drift(millimeters, 10)).About(Subject.Tracking);
        Visits.Says(statement, finding.Statement);
        Visits.Says(action, finding.Next!.Action);
        Visits.Says("standing still", finding.Next.Action);
    }

    [Fact]
    public void WithTheTurnsUsedUpTheOtherSideIsLoosened() =>
        Visits.Says(
            "Loosen the left bolt",
            Visits.Review(Happened.Turned(2), Happened.Drift(5, 10)).About(Subject.Tracking).Next!.Action
        );

    [Fact]
    public void AMillimeterInTenPassesIsStraightAndATurnAsksForANewCount()
    {
        Assert.True(Visits.Review(Happened.Drift(0.9, 10)).Silent(Subject.Tracking));
        Assert.True(Visits.Review(Happened.Drift(5, 10), Happened.Turned(0, 0.125)).Silent(Subject.Tracking));
    }

    [Fact]
    public void TheUsualCautionsStandOnEverySheet()
    {
        foreach (VisitSheet sheet in (VisitSheet[])[Visits.Review(), Visits.Review(Visits.ReadyToTurn)])
        {
            string all = string.Join('\n', sheet.SafetyNow);
            Visits.Says("measure that the controller's capacitors are dead", all);
            Visits.Says("only while the belt stands still", all);
            Visits.Says("hands, hair and cloth", all);
            Visits.Says("safety key", all);
            Visits.Says("never a customer or patient, and never above the plate's mass", all);
            Visits.Says("not a statement of conformity", sheet.MakerFirst);
        }
    }

    [Fact]
    public void TheVisitIsRequired() => Assert.Throws<ArgumentNullException>("visit", () => VisitReview.Of(null!));
}
