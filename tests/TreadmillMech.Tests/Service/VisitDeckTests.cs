using TreadmillMech.Parts;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class VisitDeckTests
{
    /// <summary>
    /// A scale read to a thousandth: the half division of 0.2 N leaves 0.28 N of 212 N, 0.15 %. The prior, 0.45 wide, pulls the
    /// logarithm of the friction by ln(0.36/0.22) (0.0015/0.45)^2, 5e-6 of it; that of the drag, some 36 N and 0.5 wide, by
    /// ln(36/25) (0.2/25/0.5)^2 of 25 N, 4e-6 of the friction.
    /// </summary>
    private const double PullOfPriors = 1e-5;

    private static readonly VisitEvent[] Service = [Happened.Cleaned(CleanedPlace.Deck), Happened.Oiled(15)];

    [Fact]
    public void ADryDeckIsCleanedAndLubricatedWithItsDoseAndTheFallExpected()
    {
        VisitSheet sheet = Visits.Review(Finely(0.36));
        Finding finding = sheet.About(Subject.Deck);
        Assert.Equal(Severity.Attend, finding.Severity);
        Assert.Equal(0.36, finding.Number!.Value, PullOfPriors);
        Visits.Says("Clean deck and underside", finding.Next!.Action);
        Visits.Says("15 mL (maker's plate)", finding.Next.Action);

        // 0.18 over 0.36.
        Visits.Says("falls to 50 %", finding.Next.Expect);
        Visits.Says("less than 15 %", finding.Next.StopAt);
        Assert.Empty(finding.Against);
    }

    [Fact]
    public void AFrictionHardlyAboveTheLimitSaysItMayBeInOrder() =>
        Assert.Single(Visits.Review(Happened.Pull(0.252)).About(Subject.Deck).Against);

    [Fact]
    public void ADeckInOrderNeedsNothing()
    {
        Finding finding = Visits.Review(Happened.Pull(0.2)).About(Subject.Deck);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Null(finding.Next);
        Visits.Says("needs no lubricant", finding.Statement);
    }

    // Current down by a tenth after cleaning and lubricating: worn out; by half: was dry (common practice).
    [Theory]
    [InlineData(0.36, 0.33, "belt and deck are worn")]
    [InlineData(0.5, 0.3, "still high")]
    public void AfterServiceTheFallTellsWearFromDryness(double found, double left, string says)
    {
        Finding finding = Visits.Review([Happened.Pull(found), .. Service, Happened.Pull(left)]).About(Subject.Deck);
        Visits.Says(says, finding.Statement);
        Visits.Says("Add no more lubricant", finding.Next!.Action);
    }

    [Fact]
    public void AServiceThatCuredIsNotedInTheTable()
    {
        VisitSheet sheet = Visits.Review([Finely(0.36), .. Service, Finely(0.18)]);
        Visits.Says("in order after the service", sheet.About(Subject.Deck).Statement);
        ReadingRow row = Assert.Single(sheet.Readings, r => r.Name == "Deck friction");
        Assert.Equal(0.36, row.AsFound!.Value, PullOfPriors);
        Assert.Equal(0.18, row.AsLeft!.Value, PullOfPriors);
    }

    [Fact]
    public void AWaxedDeckGetsNoLubricant()
    {
        Treadmill waxed = Machines.Plain with { Deck = Machines.Plain.Deck with { PreWaxed = true } };
        string action = Visits.Review(waxed, Happened.Pull(0.36)).About(Subject.Deck).Next!.Action;
        Visits.Says("Add no lubricant: this deck comes waxed", action);
        Assert.DoesNotContain("mL", action, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(WipedPlace.BeltUnderside)]
    [InlineData(WipedPlace.DriveRoller)]
    [InlineData(WipedPlace.BeltTop)]
    public void WhereThereIsOilNoneIsAdded(WipedPlace place)
    {
        VisitSheet sheet = Visits.Review(Happened.Wiped(place, WipedTrace.Oil), Happened.Pull(0.36));
        Visits.Says("before any lubricant", sheet.About(Subject.Deck).Next!.Action);
    }

    [Fact]
    public void AnUnknownDoseIsTheMakers()
    {
        Treadmill bare = Machines.Plain with { Plate = null, Deck = new() };
        Visits.Says("maker's manual", Visits.Review(bare, Happened.Pull(0.36)).About(Subject.Deck).Next!.Action);
    }

    // 0.65 x 500 W / 2 m/s over 118 kg x 9.80665: 0.1404.
    [Fact]
    public void MainsPowerTellsTheFrictionWhereNothingBetterDoes()
    {
        Finding finding = Visits
            .Review(Happened.Watts(LoadState.Unloaded, 150), Happened.Watts(LoadState.Loaded, 650))
            .About(Subject.Deck);
        Figure told = finding.Number!;

        // By an efficiency of 0.65; the losses of controller and motor taken apart come to somewhat less.
        double byHand = 0.65 * 500 / 2 / (118 * 9.80665);
        Assert.InRange(
            byHand,
            told.Value - (2 * told.StandardUncertainty!.Value),
            told.Value + (2 * told.StandardUncertainty.Value)
        );
        Assert.True(told.StandardUncertainty > 0.05 * told.Value);
    }

    [Fact]
    public void APullIsBelievedBeforeMainsPower()
    {
        Finding finding = Visits
            .Review(Finely(0.2), Happened.Watts(LoadState.Unloaded, 150), Happened.Watts(LoadState.Loaded, 650))
            .About(Subject.Deck);

        // Of power, at least 5 % uncertain and a third lower, no more than 0.35 (0.24 N/118 N/0.05)^2 of it comes in.
        Assert.Equal(0.2, finding.Number!.Value, 0.2 * 0.35 * Math.Pow(0.24 / 118 / 0.05, 2));
    }

    private static PullReading Finely(double friction) =>
        Happened.Pull(friction) with
        {
            RelativeUncertainty = UnitsNet.Ratio.FromDecimalFractions(0.001),
        };

    // A belt that slips at a run, though its contacts held 3.8 kN: only a deck as no deck is would explain both.
    [Fact]
    public void AFrictionThatNoDeckHasIsNotTakenFromAllReadings()
    {
        Visit visit = Visits.Make(
            Machines.Plain with
            {
                TailRoller = Machines.Plain.TailRoller with
                {
                    HubStiffness = ForcePerLength.FromNewtonsPerMillimeter(500),
                },
            },
            Happened.Slips,
            Happened.Speeds(LoadState.Unloaded, 345, 115, 3),
            Happened.Speeds(LoadState.Loaded, 340, 112.767, 2.94174),
            Happened.Locked(3834.16, SlidContact.Nothing)
        ) with
        {
            TestDemand = new()
            {
                Person = new() { Mass = Mass.FromKilograms(126.252) },
                Speed = Speed.FromMetersPerSecond(4.36896),
            },
        };
        Assert.True(VisitEstimate.Of(visit).Value.DeckFrictionNow.Value.Value > Deck.MostFriction);
        Assert.DoesNotContain(VisitReview.Of(visit).Readings, r => r.Kind == ReadingKind.DeckFriction);
    }
}
