using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>
/// Visits of misuse, odd machines, contradicting symptoms and two faults at once, written down with what a technician of
/// long standing would do first, and what nobody may say. Every expectation is common practice, no source.
/// </summary>
public sealed class OddVisitTests
{
    // 1 to 3, 6 and 9. Inches for millimetres, a force and a current a thousand times too large, a drift of metres, the
    // socket of an unplugged machine: no machine has them, and they are refused where they are noted, by name.
    [Fact]
    public void WhatNoMachineHasIsRefusedWhereItIsNoted()
    {
        static void Named(string name, Func<VisitEvent> noted) =>
            Assert.Contains(
                name,
                Assert.ThrowsAny<ArgumentOutOfRangeException>(() => noted()).Message,
                StringComparison.Ordinal
            );
        Named("Height", static () => Happened.Lift(30 * 25.4, 150));
        Named("Force", static () => Happened.Lift(30, 150_000));
        Named("Current", static () => Happened.Motor(LoadState.Loaded, 4000));
        Named("DriftToRight", static () => Happened.Drift(9000, 40));
        Named(
            "Voltage",
            static () => new MainsVoltageReading { State = LoadState.Loaded, Voltage = ElectricPotential.FromVolts(2) }
        );
    }

    // 4. Watts in kilowatts: 0.7 W loaded and 0.2 W empty.
    [Fact]
    public void KilowattsReadAsWattsPraiseNoDeck()
    {
        VisitSheet sheet = Visits.Review(
            Happened.Watts(LoadState.Unloaded, 0.2),
            Happened.Watts(LoadState.Loaded, 0.7),
            Happened.Holds
        );
        Assert.DoesNotContain(
            sheet.Findings,
            f => f.Statement.Contains("in order", StringComparison.Ordinal) && f.Subject == Subject.Deck
        );
        Visits.Says("Repeat the reading of mains power", sheet.NextSteps[0].Action);
    }

    // 5. A pull in pounds-force noted as newtons: 4.45 times too small, friction 0.04.
    [Fact]
    public void AFrictionThatNoDeckHasPraisesNoDeck()
    {
        VisitSheet sheet = Visits.Review(
            new PullReading
            {
                Mass = Mass.FromKilograms(60),
                LoadedPull = Force.FromNewtons(4),
                EmptyPull = Force.FromNewtons(3.9),
            },
            Happened.Holds
        );
        Visits.Says("no deck has", sheet.About(Subject.Readings).Statement);
    }

    // 7. The motor's revolutions a minute noted as radians a second: at a walk 1374 of them, 9.55 times too fast for the roller.
    [Fact]
    public void AMotorInRevolutionsIsNoSlippingDriveBelt()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.Speeds(LoadState.Unloaded, 1374, 48, 1.25),
            Happened.Speeds(LoadState.Loaded, 1360, 47.5, 1.24),
            Happened.Holds
        );
        NoStepSays(sheet, "slide the motor");
        Assert.Equal(Cause.WrongReading, sheet.Causes[0].Cause);
    }

    // 8. A plug read in degrees Fahrenheit: 72 "degrees" beside air of 22.
    [Fact]
    public void AHotPlugIsTakenSeriouslyEvenIfItsUnitIsDoubtful() =>
        Assert.Equal(Verdict.OutOfService, Visits.Review(Warm(WarmPlace.MainsPlug, 50), Happened.Holds).Verdict);

    // 10. Loaded current after unplugging: 0 A.
    [Fact]
    public void ALoadedCurrentOfNothingIsReadAgain()
    {
        VisitSheet sheet = Visits.Review(
            WithMotor,
            Happened.Motor(LoadState.Unloaded, 2),
            Happened.Motor(LoadState.Loaded, 0),
            Happened.Holds
        );
        Visits.Says("read again", sheet.NextSteps[0].Action);
    }

    // 11. Somebody held and slipped at the same turns, three times: nobody turns, the test is repeated.
    [Fact]
    public void ATestThatComesAndGoesIsRepeated()
    {
        VisitSheet sheet = Visits.Review([
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0.06),
            Happened.Slips,
            Happened.Holds,
            Happened.Slips,
        ]);
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
        Visits.Says("Repeat the slip test", sheet.NextSteps[0].Action);
    }

    // 12. Actions alone: a turn, oil, a cleaned deck, and nobody stepped on since.
    [Fact]
    public void WorkAloneIsNoProof()
    {
        VisitSheet sheet = Visits.Review(Happened.Cleaned(CleanedPlace.Deck), Happened.Oiled(15), Happened.Turned(0.5));
        Assert.Equal(Verdict.NotEnoughRead, sheet.Verdict);
        Visits.Says("does not tell", sheet.VerdictText);
        Assert.Contains(sheet.NextSteps, s => s.Action.Contains("One slip test", StringComparison.Ordinal));
    }

    // 13. It held, then the drive belt was replaced: the old test says nothing of the new belt.
    [Fact]
    public void ATestBeforeTheWorkIsNoProofAfterIt()
    {
        VisitSheet sheet = Visits.Review(Happened.Holds, new DriveBeltAction { Replaced = true });
        Assert.NotEqual(Verdict.Use, sheet.Verdict);
        Assert.Contains(sheet.NextSteps, s => s.Action.Contains("slip test", StringComparison.Ordinal));
    }

    // 14. One bolt, and it slips: one bolt is turned, and not "both".
    [Fact]
    public void OneBoltIsTurnedAlone()
    {
        VisitSheet sheet = Visits.Review(OneBolt, Visits.ReadyToTurn);
        Visits.Says("Tighten the take-up bolt by 0.25 turn", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "both take-up");
        NoStepSays(sheet, "equally");
    }

    // 15. One bolt and a drift: it cannot centre by left and right.
    [Fact]
    public void OneBoltCentresByTheManual()
    {
        VisitSheet sheet = Visits.Review(OneBolt, Happened.Drift(9, 40), Happened.Holds);
        Visits.Says("maker's manual", sheet.About(Subject.Tracking).Next!.Action);
        NoStepSays(sheet, "right bolt");
    }

    // 16. A drive belt on fixed centres is replaced: there is nothing to slide.
    [Theory]
    [InlineData(Tensioning.FixedCentres)]
    [InlineData(Tensioning.StretchFit)]
    public void ABeltThatCannotBeTensionedIsReplaced(Tensioning kind)
    {
        VisitSheet sheet = Visits.Review(Driven(kind), DriveSlips);
        Visits.Says("replaced, not tensioned", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "slide the motor");
        NoStepSays(sheet, "Tension the drive belt");
    }

    // 17. The same, found by squeal and slack span, not by speeds.
    [Fact]
    public void ASquealOnFixedCentresTensionsNothing()
    {
        VisitSheet sheet = Visits.Review(
            Driven(Tensioning.FixedCentres),
            There(Symptom.HighSqueal),
            There(Symptom.BurntRubber),
            Happened.Looks(DriveBeltLook.Sound),
            Happened.Locked(180, SlidContact.DriveBelt)
        );
        NoStepSays(sheet, "Tension the drive belt");
        NoStepSays(sheet, "slide the motor");
    }

    // 18. A pre-waxed deck that drags is given no oil; wax and board are the maker's matter.
    [Fact]
    public void APreWaxedDeckIsGivenNoOil()
    {
        Treadmill waxed = Machines.Plain with { Deck = Machines.Plain.Deck with { PreWaxed = true } };
        VisitSheet sheet = Visits.Review(waxed, Happened.Pull(0.38), Happened.Holds);
        Assert.Contains(sheet.Findings, f => f.Subject == Subject.Deck);
        NoStepSays(sheet, "lubricate the foot zone with");
        NoStepSays(sheet, "15 mL");
    }

    // 19. No drive belt at all: nobody hears of one.
    [Fact]
    public void AMotorOnTheRollerHasNoDriveBelt()
    {
        Treadmill direct = Machines.Plain with { DriveBelt = null };
        VisitSheet sheet = Visits.Review(direct, Happened.RollerDry, Happened.Slips);
        Assert.DoesNotContain("drive belt", string.Join(' ', sheet.NextSteps), StringComparison.OrdinalIgnoreCase);
    }

    // 20. Two faults: oil on top and a cracked drive belt. Nobody steps on, and both are named.
    [Fact]
    public void OfTwoDangersBothAreNamed()
    {
        VisitSheet sheet = Visits.Review(
            Happened.Wiped(WipedPlace.BeltTop, WipedTrace.Oil),
            Happened.Looks(DriveBeltLook.Cracked)
        );
        Assert.Equal(Verdict.OutOfService, sheet.Verdict);
        Assert.Contains(sheet.NextSteps, s => s.Action.Contains("Degrease", StringComparison.Ordinal));
        Assert.Contains(sheet.NextSteps, s => s.Action.Contains("Replace the drive belt", StringComparison.Ordinal));
    }

    // 21. Two faults: a dry deck and a belt that drifts. The deck is served, the belt is centred, nobody replaces.
    [Fact]
    public void ADryDeckAndADriftAreBothWorkedOn()
    {
        VisitSheet sheet = Visits.Review(Happened.Pull(0.38), Happened.Drift(9, 40), Happened.Holds);
        Assert.False(sheet.Silent(Subject.Deck));
        Visits.Says("right bolt", sheet.About(Subject.Tracking).Next!.Action);
        NoStepSays(sheet, "Replace");
    }

    // 22. Two faults: both belts slip. The drive belt comes first, and no take-up bolt is tightened before it.
    [Fact]
    public void OfTwoSlippingBeltsTheDriveBeltComesFirst()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0.1, 0.06),
            Happened.Slips
        );
        Visits.Says("slide the motor", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "Tighten both");
    }

    // 23. Two faults: a hot plug and a drive that shuts off. The plug is pulled; nothing is tried under load before.
    [Fact]
    public void AHotPlugBeforeADriveThatShutsOff()
    {
        VisitSheet sheet = Visits.Review(Warm(WarmPlace.MainsPlug, 60), There(Symptom.ShutsOff));
        Visits.Says("Switch off, unplug", sheet.NextSteps[0].Action);
    }

    // 24. Contradicting symptoms: it rumbles and it does not. Whoever heard it once is believed.
    [Fact]
    public void WhatWasHeardOnceIsBelieved()
    {
        VisitSheet sheet = Visits.Review(
            There(Symptom.Rumble),
            new SymptomReading { Symptom = Symptom.Rumble, Present = false },
            Happened.Holds
        );
        Assert.Equal(Verdict.Restrict, sheet.Verdict);
    }

    // 25. It squeals, smells of rubber, shuts off, dims, hunts and rumbles: nothing is turned; the machine is not used.
    [Fact]
    public void AMachineThatDoesEverythingIsNotTightened()
    {
        VisitSheet sheet = Visits.Review([
            .. Enum.GetValues<Symptom>().Where(s => s != Symptom.PulleyMoves).Select(There),
        ]);
        Assert.True(sheet.Verdict >= Verdict.Restrict);
        NoStepSays(sheet, "Tighten both");
        NoStepSays(sheet, "Replace the drive belt");
        Assert.Equal(
            sheet.NextSteps.Length,
            sheet.NextSteps.Select(s => s.Action).Distinct(StringComparer.Ordinal).Count()
        );
    }

    // 26. Everything absent, tried and held: nothing to do, it may be used.
    [Fact]
    public void AMachineWithoutAnySymptomThatHoldsMayBeUsed()
    {
        VisitSheet sheet = Visits.Review([
            .. Enum.GetValues<Symptom>().Select(s => new SymptomReading { Symptom = s, Present = false }),
            Happened.RollerDry,
            Happened.Holds,
        ]);
        Assert.Equal(Verdict.Use, sheet.Verdict);
        Assert.Empty(sheet.NextSteps);
    }

    // 27. Turned the wrong way: a bolt was loosened by one turn under a slip test that held before.
    [Fact]
    public void ABeltLoosenedByMistakeIsTestedAgain()
    {
        VisitSheet sheet = Visits.Review(Happened.RollerDry, Happened.Holds, Happened.Turned(-1));
        Assert.NotEqual(Verdict.Use, sheet.Verdict);
        NoStepSays(sheet, "Tighten both");
        Assert.Contains(sheet.NextSteps, s => s.Action.Contains("slip test", StringComparison.Ordinal));
    }

    // 28. Ten times the dose of lubricant, noted in the wrong unit, and the roller is wiped oily since.
    [Fact]
    public void ADeckThatSwimsIsCleanedNotTightened()
    {
        VisitSheet sheet = Visits.Review(Happened.Oiled(150), Happened.RollerOily, Happened.Slips);
        Visits.Says("clean", sheet.NextSteps[0].Action);
        NoStepSays(sheet, "Tighten both");
    }

    // 29. A hard bolt and a drift: the other side is loosened or the bolt is freed; nobody forces it.
    [Fact]
    public void AHardBoltIsNotForcedForTracking()
    {
        VisitSheet sheet = Visits.Review(
            new BoltReading { Feel = BoltFeel.Hard },
            Happened.Drift(9, 40),
            Happened.Holds
        );
        Assert.DoesNotContain(sheet.NextSteps, s => s.Action.StartsWith("Tighten", StringComparison.Ordinal));
        NoStepSays(sheet, "Tighten the right");
    }

    // 30. Test loads above the plate, walking and running: the next test is within it.
    [Fact]
    public void ATestBeyondThePlateIsNotAskedFor()
    {
        Treadmill light = Machines.Plain with
        {
            Plate = Machines.Plain.Plate! with { LargestUserMass = Mass.FromKilograms(100) },
        };
        VisitSheet sheet = Visits.Review(light, Happened.RollerDry, Happened.Slips);
        Assert.All(
            sheet.NextSteps.Where(s => s.Action.Contains("test demand", StringComparison.Ordinal)),
            s => Visits.Says("within the maker's plate", s.Action)
        );
    }

    private static Treadmill WithMotor { get; } =
        Machines.Plain with
        {
            Motor = new() { Constant = MotorConstant.FromVoltSecondsPerRadian(0.35) },
        };

    private static Treadmill OneBolt { get; } = Machines.Plain.WithTakeUp(static t => t with { Bolts = 1 });

    private static VisitEvent[] DriveSlips { get; } =
    [Happened.RollerDry, Happened.SpeedsEmpty(), Happened.SpeedsUnder(0.1, 0), Happened.Slips];

    private static Treadmill Driven(Tensioning kind) =>
        Machines.Plain with
        {
            DriveBelt = Machines.Plain.DriveBelt! with { Tensioning = kind },
        };

    private static SymptomReading There(Symptom symptom) => new() { Symptom = symptom, Present = true };

    private static TemperatureReading Warm(WarmPlace place, double rise) =>
        new()
        {
            Place = place,
            Temperature = Temperature.FromDegreesCelsius(22 + rise),
            Air = Temperature.FromDegreesCelsius(22),
        };

    private static void NoStepSays(VisitSheet sheet, string part) =>
        Assert.DoesNotContain(sheet.NextSteps, s => s.Action.Contains(part, StringComparison.OrdinalIgnoreCase));
}
