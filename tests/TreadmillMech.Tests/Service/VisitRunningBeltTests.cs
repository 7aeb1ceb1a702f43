using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class VisitRunningBeltTests
{
    [Fact]
    public void NothingWrongMayBeUsed()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0.004, 0.006),
            Happened.Holds,
            Happened.Pull(0.15)
        );
        Assert.Equal(Verdict.Use, sheet.Verdict);
        Assert.Empty(sheet.NextSteps);
        Assert.All(sheet.Findings, f => Assert.Equal(Severity.Note, f.Severity));
    }

    [Fact]
    public void ASlippingRunningBeltGetsAQuarterTurnWithWhatToExpectAndWhenToStop()
    {
        VisitSheet sheet = Visits.Review(Visits.ReadyToTurn);
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Finding finding = sheet.About(Subject.RunningBelt);
        Assert.Equal(6, finding.Number!.Value, 1e-9);
        Assert.Equal("%", finding.Number.Unit);
        Assert.Empty(finding.Against);
        NextStep next = finding.Next!;
        Visits.Says("Tighten both take-up bolts by 0.25 turn, equally, then repeat the slip test", next.Action);

        // 2 x 0.3125 mm over 2855.5 mm (see the quarter turns): 0.022 %.
        Visits.Says("elongates by 0.022 %", next.Expect);
        Visits.Says("Slip below 2 %", next.Expect);
        Visits.Says("2 turns in all", next.StopAt);
        Visits.Says("suddenly hard", next.StopAt);
        Visits.Says("back by 0.25 turn", next.Undo!);
        Assert.True(sheet.Silent(Subject.DriveBelt));
    }

    [Fact]
    public void WithoutALiftNoNewtonsAreInvented() =>
        Assert.DoesNotContain(" N", Visits.Review(Visits.ReadyToTurn).About(Subject.RunningBelt).Next!.Expect);

    [Fact]
    public void WithStiffnessAndFrictionsKnownTensionAndMarginAreTold()
    {
        NextStep next = Visits.Review(Machines.Known, Visits.ReadyToTurn).About(Subject.RunningBelt).Next!;

        // 1080 N and an eighth of the 630 N of two turns.
        Visits.Says("Strand tension about 1159 N", next.Expect);
        Visits.Says("Predicted margin", next.Expect);
    }

    public static TheoryData<string, string> Guards =>
        new()
        {
            { "wipe", "Wipe the drive roller" },
            { "ratio", "Read motor and roller speed" },
            { "lift", "lift test at 30 mm, or a slip test" },
        };

    [Theory]
    [MemberData(nameof(Guards))]
    public void WithoutAReadingThatMustComeFirstNoBoltIsTurned(string missing, string asked)
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn.Where(e => !Belongs(e, missing))]);
        NextStep next = sheet.About(Subject.RunningBelt).Next!;
        Visits.Says("Do not turn a bolt yet", next.Action);
        Visits.Says(asked, next.Action);
        Assert.False(sheet.AdvisesATurnOfBoth());
    }

    [Fact]
    public void ALiftStandsInForTheSlipTest()
    {
        VisitEvent[] events = [.. Visits.ReadyToTurn.Where(e => e is not SlipTestReading), Happened.Lift(30, 111)];
        Assert.True(Visits.Review(events).AdvisesATurnOfBoth());
    }

    [Fact]
    public void OilOnTheRollerIsCleanedAndNothingIsTightened()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerOily,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0.06),
            Happened.Slips
        );
        Assert.Equal(Severity.Restrict, sheet.About(Subject.Rollers).Severity);
        Visits.Says("Do not tighten. Clean the drive roller", sheet.About(Subject.Rollers).Next!.Action);
        Assert.False(sheet.AdvisesATurnOfBoth());
        Assert.True(sheet.Silent(Subject.RunningBelt));
    }

    [Fact]
    public void AtTheEndOfTheThreadNothingIsTightened()
    {
        Treadmill atEnd = Machines.Plain.WithTakeUp(t => t with { ThreadLeft = Length.FromMillimeters(0.3) });
        VisitSheet sheet = Visits.Review(atEnd, Visits.ReadyToTurn);
        Visits.Says("Do not tighten further", sheet.About(Subject.RunningBelt).Next!.Action);
        Assert.False(sheet.AdvisesATurnOfBoth());
        Assert.Equal(0.24, sheet.Budget.TurnsLeft, 1e-9);
        Visits.Says("thread left", sheet.Budget.LimitedBy);
    }

    [Fact]
    public void TheLadderOfSlipTestsSaysWhereItHolds()
    {
        VisitSheet sheet = Visits.Review([
            .. Visits.ReadyToTurn,
            Happened.Turned(0.25),
            Happened.Slips,
            Happened.Turned(0.5),
            Happened.Slips,
            Happened.Turned(0.25),
            Happened.Holds,
        ]);
        Finding finding = sheet.About(Subject.RunningBelt);
        Assert.Equal(Severity.Attend, finding.Severity);
        Visits.Says("slips at +0.75 turn and holds at +1 turn", finding.Statement);
        Assert.Equal(Verdict.Use, sheet.Verdict);
        Assert.Equal(1, sheet.Budget.TurnsThisVisit);
        Assert.Equal(1, sheet.Budget.TurnsLeft);
        Visits.Says("For reserve", finding.Next!.Action);
    }

    [Fact]
    public void EvidenceListsEveryRungOfTheLadder()
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, Happened.Turned(0.25), Happened.Slips]);
        Finding finding = sheet.About(Subject.RunningBelt);
        Assert.Contains(finding.For, f => f.Contains("At 0 turns on both bolts it slips", StringComparison.Ordinal));
        Assert.Contains(finding.For, f => f.Contains("At +0.25 turn on both bolts it slips", StringComparison.Ordinal));
    }

    [Fact]
    public void AVisitWithoutEventsProposesReadings()
    {
        VisitSheet sheet = Visits.Review();
        Assert.Equal(Verdict.NotEnoughRead, sheet.Verdict);
        Finding finding = sheet.About(Subject.Readings);
        Assert.Equal(Severity.Note, finding.Severity);
        Visits.Says("Nothing was read", finding.Statement);
        Assert.Contains(sheet.OneMoreReading, p => p.Reading.Contains("Lift test", StringComparison.Ordinal));
        Assert.Contains(sheet.OneMoreReading, p => p.Reading.Contains("wipe", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(sheet.OneMoreReading, p => p.Reading.Contains("Dead-weight pull", StringComparison.Ordinal));
        Assert.Contains(sheet.OneMoreReading, p => p.Reading.Contains("Speeds of motor", StringComparison.Ordinal));
        Assert.All(sheet.OneMoreReading, p => Assert.InRange(p.Minutes, 1, 10));
        Assert.Equal(9, sheet.Ladder.Length);
    }

    [Fact]
    public void APredictedMarginThatIsSmallAsksForATest()
    {
        VisitSheet sheet = Visits.Review(Machines.Known with { RestTension = Force.FromNewtons(300) });
        Finding finding = sheet.About(Subject.RunningBelt);
        Assert.True(finding.Number!.Value < finding.Limit!.Value);
        Visits.Says("Do not turn a bolt yet. Make one slip test", finding.Next!.Action);
    }

    private static bool Belongs(VisitEvent happened, string missing) =>
        missing switch
        {
            "wipe" => happened is WipeReading,
            "ratio" => happened is SpeedReading,
            _ => happened is SlipTestReading,
        };
}
