using FsCheck.Xunit;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Joint;

public sealed class JointEstimateTests
{
    [Fact]
    public void WithoutReadingsNothingIsTold()
    {
        VisitEstimate none = Of(Machines.Plain);
        Assert.Equal(Enum.GetValues<VisitQuantity>(), none.NotObserved);
        Assert.Empty(none.Misfits);
        Assert.Equal(0, none.MeasuredNumbers);
        Assert.Equal(Reason.NotObservable, none.BeltMargin.Missing.Why);
    }

    [Fact]
    public void ADirectDriveHasNoDriveBelt()
    {
        VisitEstimate direct = Of(Machines.Plain with { DriveBelt = null });
        Assert.Equal(Reason.NotOnThisMachine, direct.DriveBeltTensionNow.Missing.Why);
        Assert.Equal(Reason.NotOnThisMachine, direct.DriveBeltMargin.Missing.Why);
        Assert.False(direct.Correlation(VisitQuantity.DriveBeltMargin, VisitQuantity.BeltMargin).Found);
    }

    [Fact]
    public void TwoLiftsThatContradictEachOtherAreBothNamed()
    {
        VisitEstimate torn = Of(Machines.Plain, Happened.Lift(30, 100), Happened.Pull(0.2), Happened.Lift(30, 150));
        Assert.Equal([0, 2], torn.Contradicting.Select(m => m.Event));
        Assert.All(torn.Contradicting, m => Assert.Equal("lift test", m.Name));
        Assert.True(torn.FitProbability < 0.001);
        VisitEstimate whole = Of(Machines.Plain, Happened.Lift(30, 120), Happened.Pull(0.2), Happened.Lift(30, 123));
        Assert.Empty(whole.Contradicting);
        Assert.True(whole.FitProbability > 0.05);
    }

    [Fact]
    public void ASlipThatNothingElseExplainsIsNamed()
    {
        Treadmill gripping = Machines.Known with
        {
            DriveBelt = null,
            RestTension = Force.FromNewtons(3000),
            DriveRoller = Machines.Known.DriveRoller with { Friction = 0.5 },
        };
        Assert.Equal(
            ["tension at rest as described", "slip test, slipped"],
            Of(gripping, Happened.Slips).Contradicting.Select(m => m.Name)
        );
        Assert.Empty(Of(gripping, Happened.Holds).Contradicting);
    }

    // Which of two belts slipped nobody saw; on a direct drive there is but one.
    [Fact]
    public void ASlipThatIsNotLocatedTellsOfNoMargin()
    {
        VisitEvent[] ladder =
        [
            Happened.Slips,
            Happened.Turned(0.25),
            Happened.Slips,
            Happened.Turned(0.25),
            Happened.Slips,
        ];
        Assert.Equal(Reason.NotObservable, Of(Machines.Plain, ladder).BeltMargin.Missing.Why);
        VisitEvent[] located =
        [
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0.06),
            .. ladder,
            Happened.Turned(0.25),
        ];
        Treadmill direct = Machines.Plain with { DriveBelt = null };
        Assert.True(Of(direct, [.. ladder, Happened.Turned(0.25), Happened.Holds]).BeltMargin.Found);
        Assert.Equal(
            ["speeds, running belt slipped", "speeds, drive belt held"],
            Of(Machines.Plain, located).Misfits.Take(2).Select(m => m.Name)
        );
    }

    [Fact]
    public void AsFoundAndAsLeftAreTwoFrictions()
    {
        VisitEstimate served = Of(
            Machines.Plain,
            Happened.Pull(0.3),
            Happened.Cleaned(CleanedPlace.Deck),
            Happened.Oiled(15),
            Happened.Pull(0.16)
        );

        // The priors draw by a per cent or so.
        Close.To(0.3, served.DeckFrictionAsFound.Value.Value, 0.01);
        Close.To(0.16, served.DeckFrictionNow.Value.Value, 0.01);
        Assert.Equal(
            0,
            served.Correlation(VisitQuantity.DeckFrictionAsFound, VisitQuantity.DeckFrictionNow).Value,
            0.05
        );
    }

    // Gain of a turn by hand: 100 x 8000 N/m x 0.45 m x 2 x 1.25 mm / 2.8555 m = 315.2 N.
    [Fact]
    public void TurnsBeforeTheVisitCountForTheTensionAsDescribedAlone()
    {
        Treadmill machine = Machines.Plain with { Belt = Machines.Known.Belt, RestTension = Force.FromNewtons(900) };
        TakeUpAction before = Happened.Turned(1) with { By = TurnedBy.SomebodyBefore };
        VisitEstimate told = Of(machine, before);
        Close.To(900 + 315.2, told.RestTensionAsFound.Value.Value.Newtons, 0.01);
        Close.To(900 + 315.2, told.RestTensionNow.Value.Value.Newtons, 0.01);
        VisitEstimate now = Of(machine, Happened.Turned(1));
        Close.To(900, now.RestTensionAsFound.Value.Value.Newtons, 0.01);
        Close.To(900 + 315.2, now.RestTensionNow.Value.Value.Newtons, 0.01);
    }

    [Fact]
    public void ReadingsThatCannotBeUsedAreNamed()
    {
        VisitEstimate estimate = Of(
            Machines.Plain,
            Happened.Motor(LoadState.Loaded, 5) with
            {
                Zeroed = false,
            },
            new SpanFrequencyReading { Frequency = Frequency.FromHertz(100) },
            new CoastDownReading { From = Speed.FromMetersPerSecond(2), Time = Duration.FromSeconds(3) },
            Happened.Mains(LoadState.Loaded, 5)
        );
        Assert.Equal([0, 1, 2, 3], estimate.LeftOut.Select(r => r.Event));
        Assert.Empty(estimate.Misfits);
    }

    // By algebra: uphill at 15 %, friction 0.06 holds back 0.06 m g cos = 0.059 m g, the slope drives with 0.148 m g. A
    // drive that cannot brake then shows nothing, whether the friction is 0.06 or 0.01.
    [Theory]
    [InlineData(0.2, false)]
    [InlineData(2.4, true)]
    public void UphillADriveThatCarriesNothingTellsNoFriction(double loaded, bool carries)
    {
        Visit visit = Visits.Make(
            Machines.Plain with
            {
                Motor = new()
                {
                    Constant = MotorConstant.FromVoltSecondsPerRadian(0.35),
                    Resistance = ElectricResistance.FromOhms(0.9),
                    CanBrake = false,
                },
            },
            Happened.Motor(LoadState.Unloaded, 1.5),
            Happened.Motor(LoadState.Loaded, loaded),
            Happened.Watts(LoadState.Unloaded, 90),
            Happened.Watts(LoadState.Loaded, carries ? 130 : 15)
        );
        visit = visit with { TestDemand = visit.TestDemand with { Grade = Ratio.FromPercent(15) } };
        VisitEstimate estimate = VisitEstimate.Of(visit).Value;
        Assert.Equal(carries ? [] : [1, 3], estimate.LeftOut.Select(r => r.Event));
        Assert.Equal(!carries, estimate.NotObserved.Contains(VisitQuantity.DeckFrictionAsFound));
        Assert.Equal(!carries, VisitReview.Of(visit).Readings.All(r => r.Kind != ReadingKind.DeckFriction));
    }

    [Fact]
    public void AnIntervalIsTheValueTimesAndOverOneFactor()
    {
        VisitEstimate estimate = Of(Machines.Plain, Happened.Pull(0.2));
        QuantityInterval interval = estimate.Interval(VisitQuantity.DeckFrictionNow).Value;
        Estimate<double> friction = estimate.DeckFrictionNow.Value;
        Close.To(friction.Value * friction.Value, interval.Lower.Value * interval.Upper.Value);
        Close.To(
            Math.Exp(2 * 1.959964 * friction.StandardUncertainty / friction.Value),
            interval.Upper.Value / interval.Lower.Value,
            1e-6
        );
    }

    [Fact]
    public void AMissingVisitIsRefused() => Assert.Throws<ArgumentNullException>(() => VisitEstimate.Of(null!));

    [Fact]
    public void AQuantityThatIsNoneIsRefused()
    {
        VisitEstimate estimate = Of(Machines.Plain);
        Assert.Throws<ArgumentOutOfRangeException>(() => estimate.Interval((VisitQuantity)99));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            estimate.Correlation(VisitQuantity.BeltMargin, (VisitQuantity)99)
        );
    }

    /// <summary>Any visit gives finite numbers or says why not; nothing throws.</summary>
    [Property(Arbitrary = [typeof(RandomVisit)], MaxTest = 150)]
    public void AnyVisitIsAnswered(RandomVisit random)
    {
        Answer<VisitEstimate> answer = VisitEstimate.Of(random.Visit);
        if (!answer.Is(out VisitEstimate? estimate))
        {
            Assert.Equal(Reason.NotObservable, answer.Missing.Why);
            return;
        }

        foreach (VisitQuantity quantity in Enum.GetValues<VisitQuantity>())
        {
            if (estimate.Interval(quantity).Is(out QuantityInterval? interval))
            {
                Assert.True(interval.Best.Value > 0 && double.IsFinite(interval.Best.Value), $"{quantity} {interval}");
                Assert.True(interval.Lower.Value <= interval.Upper.Value, $"{quantity} {interval}");
            }
        }

        Assert.All(estimate.Misfits, m => Assert.True(double.IsFinite(m.Distance), m.ToString()));
        Assert.InRange(estimate.FitProbability, 0, 1);
        if (estimate.BestNextReading().Is(out System.Collections.Immutable.ImmutableArray<ProposedReading> proposed))
        {
            Assert.All(proposed, p => Assert.True(p.GainPerMinute > -1e-6, p.ToString()));
        }
    }

    private static VisitEstimate Of(Treadmill machine, params VisitEvent[] events) =>
        VisitEstimate.Of(Visits.Make(machine, events)).Value;
}
