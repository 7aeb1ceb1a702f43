using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

public sealed class VisitDriveBeltTests
{
    private static readonly VisitEvent[] Located =
    [
        Happened.RollerDry,
        Happened.SpeedsEmpty(),
        Happened.SpeedsUnder(0.05, 0),
        Happened.Slips,
    ];

    [Fact]
    public void ALocatedDriveBeltIsWorkedOnAndTheRunningBeltLeftAlone()
    {
        VisitSheet sheet = Visits.Review(Located);
        Finding finding = sheet.About(Subject.DriveBelt);
        Assert.Equal(5, finding.Number!.Value, 1e-9);
        Visits.Says("Do not tighten the running belt; slide the motor", finding.Next!.Action);
        Assert.Null(finding.Next.Undo);
        Assert.True(sheet.Silent(Subject.RunningBelt));
        Assert.False(sheet.AdvisesATurnOfBoth());
    }

    [Fact]
    public void TurnsGivenBeforeItWasLocatedAreTakenBack()
    {
        NextStep next = Visits
            .Review(
                Happened.RollerDry,
                Happened.SpeedsEmpty(),
                Happened.Turned(0.75),
                Happened.SpeedsUnder(0.05, 0),
                Happened.Slips
            )
            .About(Subject.DriveBelt)
            .Next!;
        Visits.Says("Take both take-up bolts back, equally, by at least 0.75 turn of the 0.75 turn given", next.Action);
    }

    // Common practice: two turns in all without cure point to the drive belt; then back off equal turns, one at least.
    [Fact]
    public void AfterTwoTurnsWithoutCureTheDriveBeltIsSuspectedAndATurnTakenBack()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.Slips,
            Happened.Turned(1),
            Happened.Slips,
            Happened.Turned(1),
            Happened.Slips
        );
        Finding finding = sheet.About(Subject.DriveBelt);
        Assert.Equal(Severity.Restrict, finding.Severity);
        Visits.Says("suspected", finding.Statement);
        Visits.Says("by at least 1 turn of the 2 turns given", finding.Next!.Action);
        Visits.Says("Tighten both take-up bolts by 1 turn again", finding.Next.Undo!);
        Visits.Says("would settle it", Assert.Single(finding.Against));
        Assert.False(sheet.AdvisesATurnOfBoth());
        Assert.Equal(0, sheet.Budget.TurnsLeft);
    }

    [Theory]
    [InlineData(Tensioning.SlidingMotor, "slide the motor")]
    [InlineData(Tensioning.SlackSideIdler, "idler and spring")]
    [InlineData(Tensioning.TightSideIdler, "idler and spring")]
    [InlineData(Tensioning.SprungMotor, "spring or pivot")]
    [InlineData(Tensioning.StretchFit, "replaced, not tensioned")]
    [InlineData(Tensioning.FixedCentres, "replaced, not tensioned")]
    public void WhatIsDoneGoesWithTheWayItIsTensioned(Tensioning tensioning, string what)
    {
        Treadmill machine = Machines.Plain with
        {
            DriveBelt = Machines.Plain.DriveBelt! with { Tensioning = tensioning },
        };
        Visits.Says(what, Visits.Review(machine, Located).About(Subject.DriveBelt).Next!.Action);
    }

    [Fact]
    public void ACrackedDriveBeltTakesTheMachineOutOfServiceUntilReplaced()
    {
        VisitSheet sheet = Visits.Review(Happened.Looks(DriveBeltLook.Cracked));
        Assert.Equal(Verdict.OutOfService, sheet.Verdict);
        Visits.Says("Replace the drive belt", sheet.About(Subject.DriveBelt).Next!.Action);
        Assert.Equal(
            Severity.Attend,
            Visits.Review(Happened.Looks(DriveBeltLook.Glazed)).About(Subject.DriveBelt).Severity
        );
        Assert.Empty(Faults(Happened.Looks(DriveBeltLook.Sound)));
        Assert.Empty(Faults(Happened.Looks(DriveBeltLook.Cracked), new DriveBeltAction { Replaced = true }));
        Assert.Single(Faults(Happened.Looks(DriveBeltLook.Cracked), new DriveBeltAction { Replaced = false }));
    }

    /// <summary>Findings but those that say what was not tried yet.</summary>
    private static IEnumerable<Finding> Faults(params VisitEvent[] events) =>
        Visits.Review(events).Findings.Where(static f => f.Subject != Subject.Fitness);
}
