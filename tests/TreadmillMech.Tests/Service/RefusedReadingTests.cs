using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

public sealed class RefusedReadingTests
{
    private static readonly MotorCurrentReading Empty = Happened.Motor(LoadState.Unloaded, 2);
    private static readonly MotorCurrentReading Loaded = Happened.Motor(LoadState.Loaded, 6);

    public static TheoryData<string, string> Refused =>
        new()
        {
            { "clamp", "alternating-current clamp" },
            { "zero", "not zeroed" },
            { "averaging", "averaging" },
            { "direct", "direct-current setting" },
            { "motor below", "below the unloaded one" },
            { "power below", "below the unloaded one" },
            { "pull below", "not above the empty one" },
            { "one speed", "One speed alone" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public void AReadingThatCannotBeRightIsNamedWithItsReason(string kind, string why)
    {
        (VisitEvent[] before, VisitEvent bad, string name) = Case(kind);
        VisitSheet sheet = Visits.Review([.. before, bad]);
        RefusedReading refused = Assert.Single(sheet.Refused);
        Assert.Equal(before.Length, refused.Event);
        Assert.Equal(name, refused.Name);
        Visits.Says(why, refused.Why);
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void ARefusedReadingInfluencesNothing(string kind, string why)
    {
        (VisitEvent[] before, VisitEvent bad, _) = Case(kind);
        VisitEvent[] after = [Happened.RollerDry, Happened.Pull(0.3), Happened.Slips];
        VisitSheet with = Visits.Review([.. before, .. after, bad]);
        VisitSheet without = Visits.Review([.. before, .. after]);
        Visits.Says(why, Assert.Single(with.Refused).Why);
        Assert.Empty(without.Refused);

        // But for the finding that names it.
        Finding named = Assert.Single(
            with.Findings,
            f =>
                f.Statement.EndsWith("not used.", StringComparison.Ordinal)
                && f.Next!.Action.StartsWith("Read again, as", StringComparison.Ordinal)
        );
        VisitSheet others = with with
        {
            Refused = [],
            Findings = with.Findings.Remove(named),
            NextSteps = with.NextSteps.Remove(named.Next!),
        };

        // The ranking knows that a reading was wrong, and so do the looks that are proposed by it.
        Assert.Equal(NotByCauses(without), NotByCauses(with));
        Assert.Equal(
            SheetText.Of(without),
            SheetText.Of(others with { Causes = without.Causes, OneMoreReading = without.OneMoreReading })
        );
    }

    private static IEnumerable<ReadingProposal> NotByCauses(VisitSheet sheet) =>
        sheet.OneMoreReading.Where(p => !p.Gain.StartsWith("The cause", StringComparison.Ordinal));

    [Fact]
    public void UphillALoadedCurrentMayBeBelowTheEmptyOne()
    {
        Visit visit = Visits.Make(Machines.Plain, Empty, Loaded with { Current = Empty.Current / 2 });
        Demand uphill = Visits.Heavy with { Grade = UnitsNet.Ratio.FromPercent(10) };
        Assert.Empty(VisitReview.Of(visit with { TestDemand = uphill }).Refused);
        Assert.Single(VisitReview.Of(visit).Refused);
    }

    [Fact]
    public void CurrentsAtOtherSpeedsAreNotCompared() =>
        Assert.Empty(Visits.Review(Empty, Happened.Motor(LoadState.Loaded, 1, speed: 1)).Refused);

    [Fact]
    public void CurrentsBeforeAndAfterAServiceAreNotCompared() =>
        Assert.Empty(Visits.Review(Empty, Happened.Oiled(10), Happened.Motor(LoadState.Loaded, 1.9)).Refused);

    private static (VisitEvent[] Before, VisitEvent Bad, string Name) Case(string kind) =>
        kind switch
        {
            "clamp" => ([Empty], Loaded with { Form = CurrentForm.Alternating }, "motor current"),
            "zero" => ([Empty], Loaded with { Zeroed = false }, "motor current"),
            "averaging" => (
                [],
                Happened.Mains(LoadState.Loaded, 14) with
                {
                    Response = MeterResponse.Averaging,
                },
                "mains current"
            ),
            "direct" => ([], Happened.Mains(LoadState.Loaded, 14) with { Form = CurrentForm.Direct }, "mains current"),
            "motor below" => ([Empty], Happened.Motor(LoadState.Loaded, 1.5), "motor current"),
            "power below" => (
                [Happened.Watts(LoadState.Unloaded, 150)],
                Happened.Watts(LoadState.Loaded, 120),
                "mains power"
            ),
            "pull below" => ([], Happened.Pull(-0.01), "dead-weight pull"),
            _ => (
                [Happened.SpeedsEmpty()],
                Happened.SpeedsUnder(0, 0.06) with
                {
                    Motor = null,
                    DriveRoller = null,
                },
                "speeds"
            ),
        };
}
