using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

/// <summary>A slip test tells of the machine as it was then: work on belts or rollers asks for a new one.</summary>
public sealed class VisitStaleTestTests
{
    public static TheoryData<string> Work => new() { "turn", "clean", "drive belt" };

    [Theory]
    [MemberData(nameof(Work))]
    public void AfterWorkTheNextStepIsARetestAndNoTurn(string work)
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, Done(work)]);
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Visits.Says("Repeat the slip test", sheet.NextSteps[0].Action);
        Assert.False(sheet.AdvisesATurnOfBoth());
    }

    [Theory]
    [MemberData(nameof(Work))]
    public void SlipFoundBySpeedsIsNotForgottenByWork(string work)
    {
        VisitSheet sheet = Visits.Review(Happened.SpeedsEmpty(), Happened.SpeedsUnder(0, 0.06), Done(work));
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Visits.Says("Repeat the slip test", sheet.NextSteps[0].Action);
    }

    [Fact]
    public void TwoTurnsWithoutARetestDoNotYetPointToTheDriveBelt() =>
        Assert.True(Visits.Review(Happened.RollerDry, Happened.Slips, Happened.Turned(2)).Silent(Subject.DriveBelt));

    [Theory]
    [InlineData("clean")]
    [InlineData("drive belt")]
    public void WhatOtherWorkCuredIsNotPutDownToASlackBelt(string work)
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, Done(work), Happened.Holds]);
        Finding finding = sheet.About(Subject.RunningBelt);
        Visits.Says("other work", finding.Statement);
        Assert.DoesNotContain("slack", finding.Statement, StringComparison.Ordinal);
        Assert.Null(finding.Next);
        Assert.Equal(Verdict.Use, sheet.Verdict);
    }

    [Fact]
    public void ABeltTakenBackBelowWhereItHeldIsTestedAgain()
    {
        VisitSheet sheet = Visits.Review([
            .. Visits.ReadyToTurn,
            Happened.Turned(1),
            Happened.Holds,
            Happened.Turned(-0.5),
        ]);
        Visits.Says("Repeat the slip test", sheet.About(Subject.RunningBelt).Next!.Action);
    }

    [Fact]
    public void NoReserveIsTightenedWhereOilIsFoundAfterwards()
    {
        VisitSheet sheet = Visits.Review([
            .. Visits.ReadyToTurn,
            Happened.Turned(0.25),
            Happened.Holds,
            Happened.RollerOily,
        ]);
        Assert.False(sheet.AdvisesATurnOfBoth());
        Visits.Says("Do not tighten", sheet.About(Subject.Rollers).Next!.Action);
    }

    [Fact]
    public void NoReserveIsTightenedBeforeTheRollerIsWiped()
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn.Skip(1), Happened.Turned(0.25), Happened.Holds]);
        Assert.False(sheet.AdvisesATurnOfBoth());
    }

    [Fact]
    public void SpeedsThatTellOfSlipAgainstATestThatHeldAreReadAgain()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0.06),
            Happened.Holds
        );
        Finding finding = sheet.About(Subject.Readings);
        Assert.Equal(Severity.Attend, finding.Severity);
        Visits.Says("repeat the slip test", finding.Next!.Action);
    }

    private static VisitEvent Done(string work) =>
        work switch
        {
            "turn" => Happened.Turned(0.25),
            "clean" => Happened.Cleaned(CleanedPlace.Rollers),
            _ => new DriveBeltAction { Replaced = false },
        };
}
