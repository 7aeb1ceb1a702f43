using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>
/// Visits written down before the rules were looked at, and what a technician of long standing would do first and would
/// never do. Every expectation is common practice, no source, unless it says otherwise.
/// </summary>
public sealed class TechnicianVisitTests
{
    [Fact]
    public void ADeckThatDragsIsServedBeforeABoltIsTurned()
    {
        VisitSheet sheet = Visits.Review([.. Visits.ReadyToTurn, Happened.Pull(0.38)]);
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Visits.Says("Clean deck and underside", sheet.NextSteps[0].Action);
        Visits.Says("Then repeat the slip test", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "Tighten both");
    }

    [Fact]
    public void AServedDeckThatDragsNoMoreLetsTheLadderGoOn()
    {
        VisitSheet sheet = Visits.Review(
            Happened.Pull(0.38),
            Happened.Cleaned(CleanedPlace.Deck),
            Happened.Oiled(15),
            Happened.Pull(0.18),
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0.06),
            Happened.Slips
        );
        Visits.Says("Tighten both take-up bolts by 0.25 turn", sheet.NextSteps[0].Action);
    }

    [Theory]
    [InlineData(DriveBeltLook.Glazed)]
    [InlineData(DriveBeltLook.Cracked)]
    public void ABeltThatIsDoneForIsReplacedNotTensioned(DriveBeltLook look)
    {
        VisitSheet sheet = Visits.Review([Happened.Looks(look), .. DriveSlips]);
        Visits.Says("Replace the drive belt", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "slide the motor");
    }

    [Fact]
    public void NoTensionHoldsALoosePulley()
    {
        VisitSheet seen = Visits.Review([There(Symptom.PulleyMoves), .. DriveSlips]);
        Assert.Equal(Verdict.OutOfService, seen.Verdict);
        NoStepSays(seen, "slide the motor");

        VisitSheet heard = Visits.Review([
            There(Symptom.KnockEachTurn),
            Happened.Looks(DriveBeltLook.Sound),
            .. DriveSlips,
        ]);
        Assert.Equal(Cause.PulleyLoose, heard.Causes[0].Cause);
        NoStepSays(heard, "slide the motor");
    }

    [Fact]
    public void TurnsThatSomebodyGaveInVainAreTakenBackToo()
    {
        VisitSheet sheet = Visits.Review([Happened.Turned(1.5) with { By = TurnedBy.SomebodyBefore }, .. DriveSlips]);
        Visits.Says("take the 1.5 turns given before the visit back", sheet.NextSteps[0].Action);
    }

    [Fact]
    public void WhereTheSpeedsClearedTheDriveBeltItIsNotSuspectedUnread()
    {
        List<VisitEvent> events = [.. Visits.ReadyToTurn];
        for (int step = 0; step < 8; step++)
        {
            events.Add(Happened.Turned(0.25));
            events.Add(Happened.Slips);
        }

        VisitSheet sheet = Visits.Review([.. events]);
        Visits.Says("Do not tighten further. Read the speeds", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "slide the motor");
        NoStepSays(sheet, "Tighten both");
    }

    [Fact]
    public void WhatHeldWithLessTensionIsTestedAgainBeforeATurn()
    {
        VisitSheet sheet = Visits.Review([
            .. Visits.ReadyToTurn,
            Happened.Turned(0.25),
            Happened.Holds,
            Happened.Turned(0.25),
            Happened.Slips,
        ]);
        Visits.Says("Repeat the slip test", sheet.NextSteps[0].Action);
        Assert.DoesNotContain(sheet.Causes[0].For, f => f.Contains("cured", StringComparison.Ordinal));
    }

    [Fact]
    public void WhatHeldBeforeTheLubricantAndSlipsAfterItIsLookedAtForOil()
    {
        VisitSheet sheet = Visits.Review(Happened.RollerDry, Happened.Holds, Happened.Oiled(45), Happened.Slips);
        Visits.Says("Wipe the drive roller with a dry white cloth again", sheet.NextSteps[0].Action);
        Assert.Contains(sheet.Causes[0].Cause, (Cause[])[Cause.OilOnDriveRoller, Cause.OverLubricated]);
    }

    [Fact]
    public void WhatSlidFirstInTheLockedPullIsWhatGivesWay()
    {
        VisitSheet sheet = Visits.Review(Happened.Slips, Happened.Locked(180, SlidContact.DriveBelt));
        Assert.Contains(sheet.Causes[0].Cause, (Cause[])[Cause.DriveBeltSlack, Cause.DriveBeltGlazed]);
        VisitSheet other = Visits.Review(Happened.Slips, Happened.Locked(180, SlidContact.RunningBelt));
        Assert.Equal(Cause.RunningBeltSlack, other.Causes[0].Cause);
    }

    [Fact]
    public void AnOilyTopIsOutOfUseUntilAClothStaysDry()
    {
        WipeReading oily = Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Oil);
        CleanAction cleaned = Happened.Cleaned(CleanedPlace.BeltTop);
        VisitSheet unwiped = Visits.Review(oily, cleaned);
        Assert.Equal(Verdict.OutOfService, unwiped.Verdict);
        Visits.Says("dry white cloth over the top", unwiped.NextSteps[0].Action);

        VisitSheet dry = Visits.Review(oily, cleaned, Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Dry));
        Assert.NotEqual(Verdict.OutOfService, dry.Verdict);
        Visits.Says("wipe it again before the next use", dry.About(Subject.RunningBelt).Statement);
    }

    [Fact]
    public void BoltsTurnedUnequallyAskForACountOfTheDrift()
    {
        VisitEvent[] events = [.. Visits.ReadyToTurn, Happened.Turned(0.5, 0), Happened.Holds];
        Visits.Says("left bolt was turned 0.5 turn further", Visits.Review(events).About(Subject.Tracking).Statement);
        Assert.True(Visits.Review([.. events, Happened.Drift(1, 50)]).Silent(Subject.Tracking));
        Assert.True(
            Visits.Review([.. Visits.ReadyToTurn, Happened.Turned(0.5), Happened.Holds]).Silent(Subject.Tracking)
        );
    }

    [Fact]
    public void ACrookedFrameIsLevelledBeforeABoltIsTurned()
    {
        VisitSheet sheet = Visits.Review(new LevelReading { Across = Ratio.FromPercent(1.2) }, Happened.Drift(-8, 50));
        Visits.Says("Level the frame", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "bolt by");
    }

    [Fact]
    public void WhatDriftsOnlyUnderSomebodyIsNotForTheBolts()
    {
        VisitSheet sheet = Visits.Review(
            Happened.Drift(0, 50),
            Happened.Drift(14, 50) with
            {
                State = LoadState.Loaded,
            }
        );
        Finding finding = sheet.About(Subject.Tracking);
        Visits.Says("only with somebody on it", finding.Statement);
        Assert.Null(finding.Next);
    }

    [Fact]
    public void ABeltThatIsTooTightIsCentredByLoosening()
    {
        VisitSheet sheet = Visits.Review(Happened.Lift(30, 250), Happened.Drift(9, 40), Happened.Holds);
        Assert.Equal(Cause.OverTightened, sheet.Causes[0].Cause);
        Visits.Says("Loosen the left bolt by 0.125 turn", sheet.About(Subject.Tracking).Next!.Action);
    }

    // A tension that no cause reaches is no less too much for it.
    [Fact]
    public void TheTighterTheSurer()
    {
        double At(double newtons) =>
            Visits
                .Review(Happened.Lift(30, newtons))
                .Causes.Single(static c => c.Cause == Cause.OverTightened)
                .Probability;
        Assert.InRange(At(400), At(250) - 1e-9, 1);
        Assert.InRange(At(250), 0.5, 1);
    }

    // Every second pass counted: half the speed. Nobody sets a display by that.
    [Fact]
    public void ADisplayIsNotSetByACountThatIsFarOff()
    {
        VisitSheet half = Visits.Review(Passes(10, 34.4, 1.67));
        Assert.Equal(Cause.WrongReading, half.Causes[0].Cause);
        Visits.Says("Set nothing before that", half.NextSteps[0].Action);
        NoStepSays(half, "set the displayed speed anew");

        // 6 km/h on the display, 3.73 noted: 6/3.73 = 1.609, kilometres in a mile.
        VisitSheet miles = Visits.Review(
            new SpeedReading
            {
                State = LoadState.Unloaded,
                Motor = RotationalSpeed.FromRadiansPerSecond(200),
                Belt = Speed.FromKilometersPerHour(3.73),
                Display = Speed.FromKilometersPerHour(6),
            }
        );
        Visits.Says("ratio of miles and kilometres", miles.About(Subject.Speed).Statement);
    }

    // 100 passes of a loop of 2.85 m in 10 s: 28.5 m/s.
    [Fact]
    public void PassesThatNoBeltRunsAreRefusedByName()
    {
        VisitSheet sheet = Visits.Review(Passes(100, 10, 1.67));
        Assert.Equal("counted passes", Assert.Single(sheet.Refused).Name);
        Assert.True(sheet.Silent(Subject.Speed));
    }

    // Roller's face with half the belt on it: 0.026 m x 60 rad/s = 1.56 m/s; the belt at 1.2 is a quarter slower.
    [Fact]
    public void AnEmptyBeltThatFallsBehindItsRollerIsNoMatterOfTheDisplay()
    {
        VisitSheet sheet = Visits.Review(
            Happened.Speeds(LoadState.Unloaded, 180, 60, 1.2) with
            {
                Display = Speed.FromMetersPerSecond(1.56),
            }
        );
        Assert.Equal(-23.1, sheet.About(Subject.Readings).Number!.Value, 0.1);
        Assert.True(sheet.Silent(Subject.Speed));
    }

    [Fact]
    public void ADriveAtItsLimitSaysNothingOfTheDisplay()
    {
        VisitSheet sheet = Visits.Review(
            There(Symptom.ShutsOff),
            Happened.Speeds(LoadState.Loaded, 300, 100, 2.4) with
            {
                Display = Speed.FromMetersPerSecond(3),
            }
        );
        Assert.True(sheet.Silent(Subject.Speed));
    }

    [Fact]
    public void MassAboveThePlateIsNamedWhereverItIsRead()
    {
        Visits.Says("(event 1)", Visits.Review(Happened.Pull(0.18, kilograms: 140)).About(Subject.User).Statement);
        Assert.True(Visits.Review(Happened.Pull(0.18, kilograms: 120)).Silent(Subject.User));
    }

    [Fact]
    public void AShortBrushIsNamedWithoutItsMakersLength()
    {
        BrushReading Brush(double millimeters) => new() { Left = Length.FromMillimeters(millimeters) };
        Visits.Says("maker's least length", Visits.Review(Brush(5)).About(Subject.Motor).Next!.Action);
        Assert.True(Visits.Review(Brush(12)).Silent(Subject.Motor));
    }

    [Fact]
    public void ADeepGrooveIsNamedBesideWhateverElseIsWrong()
    {
        VisitSheet sheet = Visits.Review(
            Happened.Looks(DriveBeltLook.Cracked),
            Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Oil),
            new GrooveReading { Depth = Length.FromMillimeters(1.5) }
        );
        Visits.Says("as a pair", sheet.About(Subject.Deck).Next!.Action);
        Assert.Equal(Verdict.OutOfService, sheet.Verdict);

        // Out of service, no reading is proposed that needs somebody on the belt, and no step without saying when.
        Assert.All(sheet.OneMoreReading, r => Visits.Says("machine unplugged", r.Reading));
        Assert.All(
            sheet.NextSteps.Where(s =>
                s.Cautions.Any(c => c.StartsWith("A test under load", StringComparison.Ordinal))
            ),
            s => Visits.Says("Nobody steps on before", s.Cautions[0])
        );
    }

    [Fact]
    public void WhereNoCauseStandsOutTheNextReadingIsTheStep()
    {
        VisitSheet squeal = Visits.Review(There(Symptom.HighSqueal));
        Visits.Says("look at the drive belt's ribs", squeal.NextSteps[0].Action);
    }

    // Nobody hands over a machine that no one tried; what stands still is looked at before it runs, and it runs before
    // somebody steps on.
    [Fact]
    public void WhatNobodyTriedIsNotDeclaredFit()
    {
        foreach (
            VisitEvent[] read in (VisitEvent[][])
                [
                    [],
                    [Happened.Watts(LoadState.Loaded, 700)],
                ]
        )
        {
            VisitSheet sheet = Visits.Review(read);
            Assert.Equal(Verdict.NotEnoughRead, sheet.Verdict);
            Visits.Says("does not tell|Not enough was read".Split('|')[Math.Min(read.Length, 1)], sheet.VerdictText);
            string[] fit = [.. sheet.Findings.Where(f => f.Subject == Subject.Fitness).Select(f => f.Next!.Action)];
            Visits.Says("Machine unplugged: a dry white cloth", fit[0]);
            Visits.Says("Run it empty", fit[1]);
            Visits.Says("One slip test", fit[2]);
            Assert.DoesNotContain("may be used", sheet.OwnerPage[0], StringComparison.Ordinal);
        }

        Assert.Equal(Verdict.Use, Visits.Review(Happened.Holds).Verdict);
    }

    [Fact]
    public void WhatWasLookedAtIsNotAskedForAgain()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Dry),
            Happened.Looks(DriveBeltLook.Sound),
            new SymptomReading { Symptom = Symptom.PulleyMoves, Present = false },
            Happened.SpeedsEmpty()
        );
        NoStepSays(sheet, "white cloth");
        NoStepSays(sheet, "drive belt's ribs");
        NoStepSays(sheet, "Run it empty");
        Visits.Says("look along both edges", sheet.NextSteps[0].Action);
        Visits.Says("One slip test", sheet.NextSteps[1].Action);
    }

    // 0.4 turn of M8x1.25 are 0.5 mm: what is left belongs to the tension.
    [Theory]
    [InlineData(0.5, "Loosen the left bolt by 0.125 turn")]
    [InlineData(12, "Tighten the right bolt by 0.125 turn")]
    public void NearTheEndOfTheThreadTheOtherSideIsLoosened(double millimetersLeft, string action)
    {
        VisitSheet sheet = Visits.Review(
            new ThreadReading { Left = Length.FromMillimeters(millimetersLeft) },
            Happened.Drift(9, 40),
            Happened.Holds
        );
        Visits.Says(action, sheet.About(Subject.Tracking).Next!.Action);
    }

    // A left-hand adjuster: clockwise loosens it. Where nobody looked, the manual is asked.
    [Theory]
    [InlineData(true, "Tightening is clockwise", "Loosening is anticlockwise")]
    [InlineData(false, "Tightening is anticlockwise", "Loosening is clockwise")]
    [InlineData(null, "ask the maker's manual", "ask the maker's manual")]
    public void EveryTurnSaysWhichWayRound(bool? clockwise, string tightening, string loosening)
    {
        Treadmill machine = Machines.Plain.WithTakeUp(t => t with { ClockwiseTightens = clockwise });
        VisitSheet Of(params VisitEvent[] events) => Visits.Review(machine, events);
        Visits.Says(tightening, Of(Visits.ReadyToTurn).NextSteps[0].Action);
        Visits.Says(tightening, Of(Happened.Drift(9, 40), Happened.Holds).About(Subject.Tracking).Next!.Action);
        Visits.Says(loosening, Of(Happened.Lift(30, 250), Happened.Holds).About(Subject.RunningBelt).Next!.Action);
        Visits.Says(
            loosening,
            Of(Happened.Lift(30, 250), Happened.Drift(9, 40), Happened.Holds).About(Subject.Tracking).Next!.Action
        );
        Visits.Says(loosening, Of([Happened.Turned(1), .. DriveSlips]).NextSteps[0].Action);
    }

    // A drive that starves shuts off as one that is overloaded; the socket is the cheaper look, and the likelier one once
    // its voltage was seen to fall. 106 of 120 V are 12 % less.
    [Fact]
    public void WhatShutsOffOnAWeakSupplyIsTracedToTheSocketFirst()
    {
        MainsVoltageReading Volts(LoadState state, double volts) =>
            new() { State = state, Voltage = ElectricPotential.FromVolts(volts) };
        foreach (
            VisitEvent[] weak in (VisitEvent[][])
                [
                    [There(Symptom.LightsDim)],
                    [Volts(LoadState.Unloaded, 120), Volts(LoadState.Loaded, 106)],
                ]
        )
        {
            VisitSheet sheet = Visits.Review([There(Symptom.ShutsOff), .. weak]);
            Assert.Equal(Verdict.Restrict, sheet.Verdict);
            Visits.Says("Take out extension cords", sheet.NextSteps[0].Action);
            Assert.Single(sheet.NextSteps, s => s.Action.Contains("extension cords", StringComparison.Ordinal));
            NoStepSays(sheet, "asks for the current");
        }

        Visits.Says("asks for the current", Visits.Review(There(Symptom.ShutsOff)).NextSteps[0].Action);
    }

    // Two meters on one work, one of a dry deck and one of a waxed one: nobody lifts the belt before both were read again.
    [Theory]
    [InlineData(330, 13)]
    [InlineData(2500, 3)]
    public void TwoMetersThatContradictEachOtherAreReadAgainFirst(double watts, double amperes)
    {
        VisitSheet sheet = Visits.Review(
            Machines.Known with
            {
                Motor = new() { Constant = MotorConstant.FromVoltSecondsPerRadian(0.35) },
            },
            Happened.Watts(LoadState.Unloaded, 200),
            Happened.Watts(LoadState.Loaded, watts),
            Happened.Motor(LoadState.Unloaded, 2),
            Happened.Motor(LoadState.Loaded, amperes),
            Happened.Holds
        );
        Finding contradicted = sheet.About(Subject.Readings);
        Assert.InRange(contradicted.Number!.Value, 12, 40);
        Assert.Equal(Cause.WrongReading, sheet.Causes[0].Cause);
        Visits.Says("Read again", sheet.NextSteps[0].Action);
    }

    [Fact]
    public void AHotPlugIsPulledFirst() =>
        Visits.Says(
            "Switch off, unplug",
            Visits
                .Review(
                    new TemperatureReading
                    {
                        Place = WarmPlace.MainsPlug,
                        Temperature = Temperature.FromDegreesCelsius(82),
                        Air = Temperature.FromDegreesCelsius(21),
                    }
                )
                .NextSteps[0]
                .Action
        );

    [Fact]
    public void HighFrictionAloneIsTriedByServiceBeforeParts()
    {
        VisitSheet sheet = Visits.Review(Happened.Wiped(WipedPlace.BeltUnderside, WipedTrace.Oil), Happened.Pull(0.36));
        NoStepSays(sheet, "as a pair");
    }

    [Fact]
    public void NoIntervalBeginsOnADayOnWhichNothingWasDone()
    {
        Visit bare = Visits.Make(Machines.Plain, Happened.Drift(0, 50)) with { Day = new(2026, 3, 14) };
        Assert.False(VisitReview.Of(bare).Due.Found);

        VisitSheet overdue = VisitReview.Of(
            bare with
            {
                Earlier =
                [
                    new()
                    {
                        Day = new(2024, 10, 1),
                        DeckFriction = 0.16,
                        Serviced = true,
                    },
                ],
            }
        );
        Visits.Says("past its common interval", overdue.About(Subject.Deck).Statement);
    }

    private static VisitEvent[] DriveSlips { get; } =
    [Happened.RollerDry, Happened.SpeedsEmpty(), Happened.SpeedsUnder(0.1, 0), Happened.Slips];

    private static SymptomReading There(Symptom symptom) => new() { Symptom = symptom, Present = true };

    private static PassesReading Passes(int passes, double seconds, double display) =>
        new()
        {
            State = LoadState.Unloaded,
            Passes = passes,
            Time = Duration.FromSeconds(seconds),
            Display = Speed.FromMetersPerSecond(display),
        };

    private static void NoStepSays(VisitSheet sheet, string part) =>
        Assert.DoesNotContain(sheet.NextSteps, s => s.Action.Contains(part, StringComparison.OrdinalIgnoreCase));
}
