using TreadmillMech.Service;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Visits as a technician would write them down, and the first thing a good colleague would do.</summary>
public sealed class HandMadeVisitTests
{
    [Fact]
    public void OnlyThatItSlips() => First(Verdict.Restrict, "Wipe the drive roller", Happened.Slips);

    [Fact]
    public void SlipsAndTheRollerIsDry() =>
        First(Verdict.Restrict, "Read motor and roller speed", Happened.Slips, Happened.RollerDry);

    [Fact]
    public void InOddOrderEverythingIsThere() =>
        First(
            Verdict.Restrict,
            "Tighten both take-up bolts by 0.25 turn",
            Happened.SpeedsUnder(0, 0.06),
            Happened.Slips,
            Happened.SpeedsEmpty(),
            Happened.RollerDry
        );

    [Fact]
    public void AHardBoltIsFreedNotStretchedBeltsReplaced()
    {
        VisitSheet sheet = First(
            Verdict.Restrict,
            "screw it out",
            [new BoltReading { Feel = BoltFeel.Hard }, .. Visits.ReadyToTurn]
        );
        Assert.Equal(TurnLimit.HardBolt, sheet.Budget.Limit);
        Assert.DoesNotContain(sheet.NextSteps, s => s.Action.Contains("stretched", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void AtTheEndOfTheThreadTheBeltIsMeasured()
    {
        VisitSheet sheet = First(
            Verdict.Restrict,
            "no thread left",
            [new ThreadReading { Left = Length.FromMillimeters(0.2) }, .. Visits.ReadyToTurn]
        );
        Assert.Equal(TurnLimit.Thread, sheet.Budget.Limit);
    }

    [Fact]
    public void TighterThanItWasLeftItIsNotTightenedFurther()
    {
        Visit visit = Visits.Make(Machines.Known, Visits.ReadyToTurn) with
        {
            Earlier = [new() { Day = new(2025, 1, 7), RestTension = Force.FromNewtons(700) }],
        };
        VisitSheet sheet = VisitReview.Of(visit);
        Assert.Equal(TurnLimit.EarlierTension, sheet.Budget.Limit);
        Visits.Says("tighter than an earlier visit left it", sheet.NextSteps[0].Action);
        Assert.Contains(sheet.Findings, f => f.Limits.Any(l => l.Name == VisitOptions.Default.MostOverReference.Name));
    }

    [Fact]
    public void OilIsCleanedHoweverTightTheBelt() =>
        First(
            Verdict.Restrict,
            "Do not tighten. Clean the drive roller",
            Happened.RollerOily,
            Happened.Slips,
            Happened.Lift(30, 250)
        );

    [Fact]
    public void AHotRumblingBearingStandsBesideAnOverTightBelt()
    {
        VisitSheet sheet = First(
            Verdict.OutOfService,
            "turn both rollers by hand",
            Happened.Lift(30, 260),
            new BoltReading { Feel = BoltFeel.Hard },
            Warm(WarmPlace.TailRollerBearing, 50),
            There(Symptom.Rumble)
        );
        Assert.Equal(Cause.OverTightened, sheet.Causes[0].Cause);
        Finding bearing = sheet.About(Subject.Rollers);
        Assert.Equal(VisitOptions.Default.HotBearing, bearing.Limit);
        Assert.Contains(sheet.OwnerPage, line => line.Contains("bearing", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Symptom.Rumble, Verdict.Restrict)]
    [InlineData(Symptom.KnockEachTurn, Verdict.Restrict)]
    [InlineData(Symptom.BurntRubber, Verdict.Restrict)]
    [InlineData(Symptom.HotMotor, Verdict.Restrict)]
    [InlineData(Symptom.PulleyMoves, Verdict.OutOfService)]
    [InlineData(Symptom.Hunting, Verdict.Restrict)]
    [InlineData(Symptom.ShutsOff, Verdict.Restrict)]
    [InlineData(Symptom.BeltRunsAway, Verdict.Restrict)]
    [InlineData(Symptom.CurledEdge, Verdict.Restrict)]
    [InlineData(Symptom.LightsDim, Verdict.Use)]
    [InlineData(Symptom.WornDeck, Verdict.Use)]
    public void NoDangerIsLostBehindAnotherCause(Symptom symptom, Verdict verdict)
    {
        // Everything else tells of a slack belt that more tension cured.
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, Happened.Turned(0.5), Happened.Holds, There(symptom)]);
        Assert.Equal(Cause.RunningBeltSlack, sheet.Causes[0].Cause);
        Assert.Equal(verdict, sheet.Verdict);
        VisitSheet without = Visits.Review([.. Visits.ReadyToTurn, Happened.Turned(0.5), Happened.Holds]);
        Assert.True(sheet.NextSteps.Length > without.NextSteps.Length);

        // Looked for again and not there: it is no danger any more.
        VisitSheet gone = Visits.Review([
            .. Visits.ReadyToTurn,
            There(symptom),
            Happened.Turned(0.5),
            Happened.Holds,
            There(symptom) with
            {
                Present = false,
            },
        ]);
        Assert.Equal(Verdict.Use, gone.Verdict);
    }

    [Fact]
    public void AHotPlugIsOutOfServiceWhateverElseIsFound() =>
        First(
            Verdict.OutOfService,
            "extension cords",
            [.. Visits.ReadyToTurn, Warm(WarmPlace.MainsPlug, 45), Happened.Pull(0.35)]
        );

    [Fact]
    public void AReplacedDriveBeltThatHoldsIsNotReplacedAgain()
    {
        VisitSheet sheet = Visits.Review(
            There(Symptom.HighSqueal),
            There(Symptom.BurntRubber),
            Happened.Looks(DriveBeltLook.Glazed),
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0.08, 0),
            Happened.Slips,
            new DriveBeltAction { Replaced = true },
            Happened.Holds
        );
        Assert.Equal(Verdict.Use, sheet.Verdict);
        Assert.DoesNotContain(sheet.NextSteps, s => s.Action.StartsWith("Replace", StringComparison.Ordinal));
    }

    [Fact]
    public void AnAlternatingClampOnTheMotorIsNamedAndReadAgain()
    {
        VisitSheet sheet = First(
            Verdict.NotEnoughRead,
            "Read again, as said beside it: motor current",
            Happened.Motor(LoadState.Loaded, 6) with
            {
                Form = CurrentForm.Alternating,
            }
        );
        Assert.Single(sheet.Refused);
    }

    [Fact]
    public void LoadedBelowUnloadedIsNamedAndReadAgain() =>
        First(
            Verdict.NotEnoughRead,
            "Read again, as said beside it: motor current",
            Happened.Motor(LoadState.Unloaded, 5),
            Happened.Motor(LoadState.Loaded, 3)
        );

    [Fact]
    public void AUserAboveThePlateIsNotAskedOntoTheBelt()
    {
        Treadmill machine = Machines.Plain with
        {
            Plate = Machines.Plain.Plate! with { LargestUserMass = Mass.FromKilograms(100) },
        };
        VisitSheet sheet = VisitReview.Of(Visits.Make(machine, Happened.Slips));
        Visits.Says("Do not test or use", sheet.NextSteps[0].Action);
        Assert.DoesNotContain(
            sheet.NextSteps,
            s => s.Action.Contains("under the test demand", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void ReadingsThatContradictEachOtherAreNamedAndNotUsedTogether()
    {
        // The motor's readings tell of 0.38, the pull of 0.15: the motor constant is known from two points.
        VisitSheet sheet = Visits.Review(
            Happened.Pull(0.15),
            Point(0.8, 92.3, 30),
            Point(2.4, 276.9, 86),
            Happened.Motor(LoadState.Loaded, 16, 2.4)
        );
        Finding contradiction = sheet.About(Subject.Readings);
        Visits.Says("contradict each other", contradiction.Statement);
        Visits.Says("Read again", contradiction.Next!.Action);
        Assert.Equal(VisitOptions.Default.MisfitOfContradiction, contradiction.Limit);
        Assert.Contains(sheet.Findings, f => f.For.Contains("From dead-weight pull."));
    }

    [Fact]
    public void FrictionAndTensionComeFromAllReadingsWithTheirUncertainty()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.Lift(30, 110),
            Happened.Pull(0.2),
            Happened.Holds,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0)
        );
        Finding deck = sheet.About(Subject.Deck);
        Assert.Contains("From all readings together.", deck.For);
        ReadingRow margin = Assert.Single(sheet.Readings, r => r.Kind == ReadingKind.BeltMargin);
        Assert.True(margin.AsLeft!.StandardUncertainty > 0);
        Assert.True(sheet.Ladder.All(rung => rung.Margin.Found));
        Assert.Contains("friction of belt on drive roller now", sheet.NotTold);
        Assert.All(sheet.OneMoreReading, p => Assert.False(string.IsNullOrEmpty(p.Gain)));
    }

    [Fact]
    public void TheReadingThatHelpsMostComesWithItsGain()
    {
        Visit visit = Visits.Make(
            Machines.Plain,
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0),
            Happened.Pull(0.2)
        );
        ProposedReading best = VisitEstimate.Of(visit).Value.BestNextReading().Value[0];
        ReadingProposal first = VisitReview.Of(visit).OneMoreReading[0];
        Assert.Equal(best.Proposal.Reading, first.Reading);
        Assert.Contains("Margin known to", first.Gain, StringComparison.Ordinal);
    }

    [Fact]
    public void ACoastDownWithoutAnEarlierOneSaysWhyItIsNotJudged()
    {
        VisitSheet sheet = Visits.Review(
            new CoastDownReading { From = Speed.FromMetersPerSecond(2), Time = Duration.FromSeconds(1.6) }
        );
        Assert.Contains(sheet.NotTold, line => line.Contains("moment of inertia", StringComparison.Ordinal));
        ReadingRow row = Assert.Single(sheet.Readings, r => r.Kind == ReadingKind.Slowing);
        Assert.Equal(1.25, row.AsFound!.Value, 1e-12);
    }

    [Fact]
    public void CountedPassesTellTheDisplaysError()
    {
        // 20 passes of 2.8555 m in 16 s are 3.5694 m/s; the display says 3.2 m/s.
        VisitSheet sheet = Visits.Review(
            new PassesReading
            {
                State = LoadState.Unloaded,
                Passes = 20,
                Time = Duration.FromSeconds(16),
                Display = Speed.FromMetersPerSecond(3.2),
            }
        );
        Finding display = sheet.About(Subject.Speed);
        Assert.Equal(100 * ((3.2 / 3.5694) - 1), display.Number!.Value, 0.05);
        Visits.Says("reads low", display.Statement);
    }

    [Fact]
    public void AVisitAfterThisOneIsNotEarlier()
    {
        EarlierVisit later = new() { Day = new(2026, 5, 2) };
        Visit visit = Visits.Make(Machines.Plain) with { Day = new(2026, 5, 2), Earlier = [later] };
        Assert.Throws<ArgumentException>(() => visit with { Day = new(2026, 5, 1) });
        Assert.Throws<ArgumentException>(() => visit with { Earlier = [later with { Day = new(2026, 5, 3) }] });
    }

    [Fact]
    public void WhoHasCountedStatesHowCommonCausesAre()
    {
        Visit visit = Visits.Make(Machines.Plain, Happened.Slips);
        CauseWeights counted = new(
            new Dictionary<Cause, double> { [Cause.DriveBeltSlack] = 400 },
            "a workshop's own log"
        );
        VisitSheet sheet = VisitReview.Of(visit, VisitOptions.Default with { Weights = counted });
        Assert.Equal(Cause.RunningBeltSlack, VisitReview.Of(visit).Causes[0].Cause);
        Assert.Equal(Cause.DriveBeltSlack, sheet.Causes[0].Cause);
        Visits.Says("a workshop's own log", sheet.ChancesFrom);
        Assert.Equal(1, Enum.GetValues<Cause>().Sum(c => counted[c]), 1e-12);
    }

    [Fact]
    public void WeightsThatAreNoneAreRefused()
    {
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            new CauseWeights(new Dictionary<Cause, double> { [Cause.DeckDry] = -1 }, "x")
        );
        Assert.ThrowsAny<ArgumentException>(() => new CauseWeights(new Dictionary<Cause, double>(), " "));
        Assert.ThrowsAny<ArgumentException>(() =>
            new CauseWeights(Enum.GetValues<Cause>().ToDictionary(static c => c, static _ => 0.0), "x")
        );
    }

    private static VisitSheet First(Verdict verdict, string action, params VisitEvent[] events)
    {
        VisitSheet sheet = Visits.Review(events);
        Visits.Says(action, sheet.NextSteps[0].Action);
        Assert.Equal(verdict, sheet.Verdict);
        return sheet;
    }

    private static SymptomReading There(Symptom symptom) => new() { Symptom = symptom, Present = true };

    private static MotorCurrentReading Point(double speed, double motor, double volts) =>
        Happened.Motor(LoadState.Unloaded, 1.5, speed) with
        {
            Voltage = ElectricPotential.FromVolts(volts),
            MotorSpeed = RotationalSpeed.FromRadiansPerSecond(motor),
        };

    private static TemperatureReading Warm(WarmPlace place, double rise) =>
        new()
        {
            Place = place,
            Temperature = Temperature.FromDegreesCelsius(20 + rise),
            Air = Temperature.FromDegreesCelsius(20),
        };
}
