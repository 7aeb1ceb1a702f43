using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Sentences that were wrong for some visit once.</summary>
public sealed class VisitWordsTests
{
    [Fact]
    public void AFilmOfLubricantOnTheRollerIsCleanedLikeOil()
    {
        VisitSheet sheet = Visits.Review([
            Happened.Wiped(WipedPlace.DriveRoller, WipedTrace.Film),
            .. Visits.ReadyToTurn.Skip(1),
        ]);
        Assert.False(sheet.AdvisesATurnOfBoth());
        Visits.Says("Clean the drive roller", sheet.About(Subject.Rollers).Next!.Action);
    }

    [Fact]
    public void DustOnTheRollerIsCleanedBeforeATurn()
    {
        VisitSheet sheet = Visits.Review([
            Happened.Wiped(WipedPlace.DriveRoller, WipedTrace.Dust),
            .. Visits.ReadyToTurn.Skip(1),
        ]);
        Finding finding = sheet.About(Subject.RunningBelt);
        Visits.Says("Clean the drive roller", finding.Next!.Action);
        Assert.DoesNotContain(finding.For, f => f.Contains("roller is clean", StringComparison.Ordinal));
    }

    // 1.9 of 2 turns given, 24 turns of thread left: the turns of the visit end, not the thread.
    [Fact]
    public void TheEndOfTheTurnsIsNotCalledTheEndOfTheThread()
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, Happened.Turned(1.9), Happened.Slips]);
        Assert.DoesNotContain("end of their thread", SheetText.Of(sheet), StringComparison.Ordinal);
        Assert.False(sheet.AdvisesATurnOfBoth());
    }

    // Twenty times 0.1 turn is two turns, whatever the last bit of the sum says.
    [Fact]
    public void TurnsInTenthsAddUpToTwo()
    {
        VisitSheet sheet = Visits.Review([
            Happened.RollerDry,
            Happened.Slips,
            .. Enumerable.Repeat(Happened.Turned(0.1), 20),
            Happened.Slips,
        ]);
        Visits.Says("suspected", sheet.About(Subject.DriveBelt).Statement);
    }

    [Fact]
    public void WhereTheRatioClearsTheDriveBeltItIsNotSuspected()
    {
        VisitSheet sheet = Visits.Review([
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.Slips,
            Happened.Turned(2),
            Happened.SpeedsUnder(0, 0.06),
            Happened.Slips,
        ]);
        Assert.True(sheet.Silent(Subject.DriveBelt));
        Visits.Says("the drive belt holds", sheet.About(Subject.RunningBelt).Next!.Action);
    }

    [Fact]
    public void WhereBothSlipTheDriveBeltsOwnSlipIsGiven()
    {
        Finding finding = Visits
            .Review(Happened.RollerDry, Happened.SpeedsEmpty(), Happened.SpeedsUnder(0.03, 0.07), Happened.Slips)
            .About(Subject.DriveBelt);
        Assert.Equal(3, finding.Number!.Value, 1e-9);
        Assert.Equal(2, finding.Limit!.Value, 1e-9);
        Assert.Equal("%", finding.Limit.Unit);
        Visits.Says("running belt slips as well", finding.Statement);
    }

    [Fact]
    public void AMachineWithoutADriveBeltNeedsNoRatioAndHasNoneToSuspect()
    {
        Treadmill direct = Machines.Plain with { DriveBelt = null };
        Assert.True(Visits.Review(direct, Happened.RollerDry, Happened.Slips).AdvisesATurnOfBoth());
        VisitSheet sheet = Visits.Review(direct, Happened.RollerDry, Happened.Turned(2), Happened.Slips);
        Visits.Says("coupling of motor and roller is to be suspected", sheet.About(Subject.DriveBelt).Statement);
    }

    // Cleaning alone is half a service: a dry deck is not thereby worn.
    [Fact]
    public void ADeckThatWasOnlyCleanedIsLubricatedBeforeItIsCalledWorn()
    {
        Finding finding = Visits
            .Review(Happened.Pull(0.36), Happened.Cleaned(CleanedPlace.Deck), Happened.Pull(0.35))
            .About(Subject.Deck);
        Assert.DoesNotContain("belt and deck are worn", finding.Statement, StringComparison.Ordinal);
        Visits.Says("lubricate the foot zone with 15 mL", finding.Next!.Action);
    }

    // An efficiency of 0.65 +- 0.1 differs by more than a service does.
    [Fact]
    public void WearIsNotToldFromTwoMethods()
    {
        Finding finding = Visits
            .Review(
                Happened.Watts(LoadState.Unloaded, 150),
                Happened.Watts(LoadState.Loaded, 1350),
                Happened.Cleaned(CleanedPlace.Deck),
                Happened.Oiled(15),
                Happened.Pull(0.33)
            )
            .About(Subject.Deck);
        Visits.Says("still high", finding.Statement);
    }

    [Fact]
    public void AWearFindingStatesItsLimitInTheUnitOfItsNumber()
    {
        Finding finding = Visits
            .Review(Happened.Pull(0.36), Happened.Cleaned(CleanedPlace.Deck), Happened.Oiled(15), Happened.Pull(0.34))
            .About(Subject.Deck);
        Assert.Equal("%", finding.Number!.Unit);
        Assert.Equal("%", finding.Limit!.Unit);
        Assert.Equal(15, finding.Limit.Value, 1e-9);
    }

    [Fact]
    public void TheVerdictNamesWhatRestrictsAndNotTheUser()
    {
        Treadmill machine = Machines.Plain with
        {
            Plate = Machines.Plain.Plate! with { LargestUserMass = Mass.FromKilograms(110) },
        };
        Visits.Says("drive belt is cracked", Visits.Review(machine, Happened.Looks(DriveBeltLook.Cracked)).VerdictText);
    }

    [Fact]
    public void TheOwnerIsNotToldOfATighteningThatDidNotHappen()
    {
        // The margin goes with the tension above its centrifugal part; between 1 and 1.15 nothing has been tightened.
        double centrifugal = 2.4 * Machines.Width * 9;
        double margin = Machines.Known.At(Visits.Heavy).BeltMargin.Value;
        double tension = centrifugal + ((1080 - centrifugal) * 1.07 / margin);
        VisitSheet sheet = Visits.Review(Machines.Known with { RestTension = Force.FromNewtons(tension) });
        Assert.Equal(Severity.Attend, sheet.About(Subject.RunningBelt).Severity);
        Assert.DoesNotContain(sheet.OwnerPage, l => l.Contains("has been tightened", StringComparison.Ordinal));
    }

    [Fact]
    public void OneLiftOfASlackBeltDoesNotContradictItself()
    {
        Finding finding = Visits.Review(Happened.Lift(50, 10)).About(Subject.Readings);
        Visits.Says("slack", finding.Statement);
        Assert.DoesNotContain("contradict", finding.Statement, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void ALoadedReadingBelowTheEmptyOneIsRefusedInEitherOrder(bool loadedFirst)
    {
        VisitEvent[] pair = [Happened.Mains(LoadState.Unloaded, 5), Happened.Mains(LoadState.Loaded, 3)];
        Assert.Equal("mains current", Assert.Single(Visits.Review(Ordered(pair)).Refused).Name);
        pair = [Happened.Watts(LoadState.Unloaded, 150), Happened.Watts(LoadState.Loaded, 120)];
        Assert.Equal("mains power", Assert.Single(Visits.Review(Ordered(pair)).Refused).Name);
        pair = [Happened.Motor(LoadState.Unloaded, 2), Happened.Motor(LoadState.Loaded, 1)];
        Assert.Equal("motor current", Assert.Single(Visits.Review(Ordered(pair)).Refused).Name);

        VisitEvent[] Ordered(VisitEvent[] events) => loadedFirst ? [events[1], events[0]] : events;
    }

    // 100 mm in one pass is 30 turns of a string: the first step stays a quarter turn.
    [Fact]
    public void AWildDriftIsNotAnsweredByManyTurns()
    {
        NextStep next = Visits.Review(Happened.Drift(100, 1)).About(Subject.Tracking).Next!;
        Visits.Says("Tighten the right bolt by 0.25 turn", next.Action);
        Visits.Says("compare both bolts' distance from the frame", next.Expect);
    }

    [Fact]
    public void ABeltThatDoesNotDriftNeedsNoTurnAndOneBoltCannotCentre()
    {
        TrackingAdvice straight = TrackingAdvice.Of(Machines.Plain, Happened.Drift(0, 10)).Value;
        Assert.Equal((0, 0), (straight.FirstTurns, straight.MostTurns));
        Treadmill oneBolt = Machines.Plain.WithTakeUp(t => t with { Bolts = 1 });
        Assert.Equal(Reason.NotOnThisMachine, TrackingAdvice.Of(oneBolt, Happened.Drift(5, 10)).Missing.Why);
    }

    [Fact]
    public void MoreTurnsThanABoltHasAreNoError()
    {
        VisitSheet sheet = Visits.Review(Machines.Known, [.. Enumerable.Repeat(Happened.Turned(5), 6)]);
        Assert.Equal(30, sheet.Budget.TurnsThisVisit);
        Assert.Equal(0, sheet.Budget.TurnsLeft);
        Assert.False(sheet.Budget.Tension.Found);
    }

    [Fact]
    public void AStepOfNoTurnIsRefusedWithItsRange()
    {
        ArgumentOutOfRangeException error = Assert.Throws<OutOfRangeException>(() =>
            VisitOptions.Default with
            {
                TurnStep = new("turns at a time", 0, "turn", "a test"),
            }
        );
        Assert.Contains("TurnStep: 0 is outside 0.01 to 2", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void AnEfficiencyThatIsNotAboveNothingIsSaidInOrder()
    {
        ArgumentOutOfRangeException error = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            DeckFriction.FromMainsPower(
                Mass.FromKilograms(80),
                Power.FromWatts(450),
                Power.FromWatts(150),
                Speed.FromMetersPerSecond(2),
                Ratio.Zero,
                new(-0.5, 0.1)
            )
        );
        Assert.StartsWith("efficiency: -0.5 is not above 0.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NobodyWipesARollerThatMayMove() =>
        Assert.All(
            Visits.Review().OneMoreReading.Where(p => p.Reading.Contains("wipe", StringComparison.OrdinalIgnoreCase)),
            p => Visits.Says("unplugged", p.Reading)
        );

    [Fact]
    public void AnOilyRollerIsCleanedBeforeTheBeltIsCentred() =>
        Visits.Says(
            "Clean the drive roller first",
            Visits.Review(Happened.RollerOily, Happened.Drift(5, 10)).About(Subject.Tracking).Next!.Action
        );

    // Measured at the present bolt position, the tension now needs no stiffness; that of the beginning does.
    [Fact]
    public void ALiftAfterTheTurnsTellsTheTensionNowButNotAsFound()
    {
        VisitSheet sheet = Visits.Review([Happened.Turned(0.5), Happened.Lift(25, 120)]);
        Assert.True(sheet.Budget.Tension.Found);
        ReadingRow row = sheet.Readings.Single(r => r.Name.StartsWith("Strand tension", StringComparison.Ordinal));
        Assert.Null(row.AsFound);
        Assert.NotNull(row.AsLeft);
    }

    [Fact]
    public void ALiftBeforeTheTurnsTellsTheTensionAsFoundButNotNow()
    {
        VisitSheet sheet = Visits.Review([Happened.Lift(25, 120), Happened.Turned(0.5)]);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BeltStiffness"), sheet.Budget.Tension.Missing);
        ReadingRow row = sheet.Readings.Single(r => r.Name.StartsWith("Strand tension", StringComparison.Ordinal));
        Assert.NotNull(row.AsFound);
        Assert.Null(row.AsLeft);
    }

    [Fact]
    public void AMachineOnWhichNothingWasTestedIsNotPraised()
    {
        VisitSheet sheet = Visits.Review();
        Visits.Says("slip was not tested", sheet.VerdictText);
        Visits.Says("it was not tested with a person on it", sheet.OwnerPage[0]);
    }
}
