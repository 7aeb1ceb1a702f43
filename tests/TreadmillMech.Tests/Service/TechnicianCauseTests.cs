using TreadmillMech.Service;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>
/// What a technician of long standing would hold for the cause, and what he would not be led astray by. Every expectation is
/// common practice, no source, unless it says otherwise.
/// </summary>
public sealed class TechnicianCauseTests
{
    // Half a reading is no wrong one.
    [Fact]
    public void OneSpeedReadAloneIsNoSignOfAWrongReading()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.Holds,
            new SpeedReading { State = LoadState.Loaded, DriveRoller = RotationalSpeed.FromRadiansPerSecond(115) }
        );
        Assert.Single(sheet.Refused);
        Assert.True(Chance(sheet, Cause.WrongReading) < Chance(sheet, Cause.NothingWrong));
    }

    // 3.3 on the display over 3.0 of the belt: 10 % high.
    [Fact]
    public void TheBeltReadAloneBesideTheDisplayTellsItsError()
    {
        VisitSheet sheet = Visits.Review(Beside(3.3, 3));
        Assert.Equal(10, sheet.About(Subject.Speed).Number!.Value, 0.01);
        Assert.Equal(Cause.OutOfCalibration, sheet.Causes[0].Cause);
    }

    // A roller that all but stands still under a motor that runs slips no less than one that lags by a tenth.
    [Fact]
    public void TheMoreTheDriveSlipsTheSurer()
    {
        VisitEvent[] Slipping(double share) =>
            [
                Happened.RollerDry,
                Happened.Lift(30, 70),
                Happened.SpeedsEmpty(),
                Happened.SpeedsUnder(share, 0),
                Happened.Slips,
            ];
        double Drive(double share)
        {
            VisitSheet sheet = Visits.Review(Slipping(share));
            return Chance(sheet, Cause.DriveBeltSlack)
                + Chance(sheet, Cause.DriveBeltGlazed)
                + Chance(sheet, Cause.DriveBeltCracked)
                + Chance(sheet, Cause.PulleyLoose);
        }

        Assert.True(Drive(0.35) > 0.9 * Drive(0.1));
        Assert.True(Drive(0.35) > Chance(Visits.Review(Slipping(0.35)), Cause.RunningBeltSlack));
    }

    // What the display said while the belt slipped is no matter of the display, though the belt holds since.
    [Fact]
    public void ADisplayIsNotJudgedByABeltThatSlippedThen()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerDry,
            Happened.Slips,
            Beside(3, 2.6) with
            {
                State = LoadState.Loaded,
                DriveRoller = RotationalSpeed.FromRadiansPerSecond(115),
            },
            Happened.Turned(0.5),
            Happened.Holds
        );
        Assert.True(sheet.Silent(Subject.Speed));
    }

    [Fact]
    public void ADisplayIsNotJudgedByABeltThatTheUserDrives()
    {
        VisitSheet sheet = Visits.Review(
            There(Symptom.BeltRunsAway),
            Beside(3, 3.3) with
            {
                State = LoadState.Loaded,
                DriveRoller = RotationalSpeed.FromRadiansPerSecond(127),
            }
        );
        Assert.True(sheet.Silent(Subject.Speed));
        Assert.Equal(Cause.DriveOverrun, sheet.Causes[0].Cause);
    }

    // Of two rollers one was felt: the rumble may come from the other.
    [Fact]
    public void ACoolBearingClearsItsOwnRollerOnly()
    {
        TemperatureReading Felt(WarmPlace place) =>
            new()
            {
                Place = place,
                Temperature = Temperature.FromDegreesCelsius(31),
                Air = Temperature.FromDegreesCelsius(21),
            };
        VisitSheet one = Visits.Review(There(Symptom.Rumble), Felt(WarmPlace.TailRollerBearing));
        Assert.Equal(Cause.RollerBearing, one.Causes[0].Cause);
        VisitSheet both = Visits.Review(
            There(Symptom.Rumble),
            Felt(WarmPlace.TailRollerBearing),
            Felt(WarmPlace.DriveRollerBearing)
        );
        Assert.True(Chance(both, Cause.RollerBearing) < Chance(one, Cause.RollerBearing));
    }

    // A machine that shuts off under load has something wrong, though its motor is cool, deck and supply in order, and it keeps its
    // mean speed.
    [Fact]
    public void WhatShutsOffIsNotAllRight()
    {
        VisitSheet sheet = Visits.Review(
            There(Symptom.ShutsOff),
            Happened.Holds,
            Happened.Pull(0.17),
            Volts(LoadState.Unloaded, 120),
            Volts(LoadState.Loaded, 118),
            Warm(WarmPlace.MotorCase, 20),
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0)
        );
        Assert.Equal(Cause.ControllerLimit, sheet.Causes[0].Cause);
        Assert.True(Chance(sheet, Cause.NothingWrong) < 0.25);
    }

    // A motor may be weak by its brushes alone: its magnets are as they were.
    [Fact]
    public void AMotorWithShortBrushesHasTheConstantItHad()
    {
        double With(params VisitEvent[] more) =>
            Chance(
                Visits.Review(
                    Machines.Plain with
                    {
                        Motor = new() { Constant = MotorConstant.FromVoltSecondsPerRadian(0.3) },
                    },
                    [
                        new BrushReading { Left = Length.FromMillimeters(3), Least = Length.FromMillimeters(6) },
                        Warm(WarmPlace.MotorCase, 60),
                        .. more,
                    ]
                ),
                Cause.MotorWeak
            );
        double measured = With(Unloaded(32, 100), Unloaded(92, 300));
        Assert.True(measured > 0.5);
        Assert.True(measured > 0.7 * With());
    }

    // A weak supply leaves a controller that has voltage in reserve at its speed, and a good plug cool.
    [Fact]
    public void AVoltageThatFallsIsAWeakSupplyThoughTheSpeedHolds()
    {
        VisitSheet sheet = Visits.Review(
            Volts(LoadState.Unloaded, 230),
            Volts(LoadState.Loaded, 209),
            Warm(WarmPlace.MainsPlug, 7),
            Happened.SpeedsEmpty(),
            Happened.SpeedsUnder(0, 0)
        );
        Assert.Equal(Cause.SupplyWeak, sheet.Causes[0].Cause);
        Visits.Says("supply is weak", sheet.About(Subject.Supply).Statement);
    }

    // With less than a turn of thread a slack belt is for a new belt; with ten it is only slack.
    [Theory]
    [InlineData(0.75, Cause.BoltsAtTheirEnd)]
    [InlineData(12.5, Cause.RunningBeltSlack)]
    public void ASlackBeltWithHardlyAnyThreadLeftIsAtItsEnd(double millimeters, Cause expected)
    {
        VisitSheet sheet = Visits.Review([
            new ThreadReading { Left = Length.FromMillimeters(millimeters) },
            Happened.Lift(30, 60),
            .. Visits.ReadyToTurn,
        ]);
        Assert.Equal(expected, sheet.Causes[0].Cause);
    }

    // No controller lets twice its limit through: the decimal point or the range of the clamp was wrong.
    [Fact]
    public void ACurrentThatNoControllerLetsThroughIsRefusedByName()
    {
        Treadmill machine = Machines.Plain with { Motor = new() { CurrentLimit = ElectricCurrent.FromAmperes(30) } };
        VisitSheet sheet = Visits.Review(machine, Happened.Motor(LoadState.Loaded, 79));
        Visits.Says("limit is 30 A", Assert.Single(sheet.Refused).Why);
        Assert.Equal(Cause.WrongReading, sheet.Causes[0].Cause);
        Assert.Empty(Visits.Review(machine, Happened.Motor(LoadState.Loaded, 31)).Refused);
    }

    // Two marks on the roller, one counted: twice the speed. No belt overtakes its pulley.
    [Fact]
    public void WhatRunsAheadOfItsDriveWasMisread()
    {
        VisitSheet sheet = Visits.Review(
            Happened.SpeedsEmpty(),
            Happened.Speeds(LoadState.Loaded, 340, 227, 2.95),
            Happened.Holds
        );
        Assert.Equal(Cause.WrongReading, sheet.Causes[0].Cause);
        Assert.Contains(
            sheet.Findings,
            static f => f.Statement.Contains("run ahead of what drives it", StringComparison.Ordinal)
        );
    }

    // 3.0 m/s by the meter and 2.4 by the count, at the same 3.0 on the display: one of the two is wrong, not the display.
    [Fact]
    public void ADisplayIsNotSetByTwoReadingsThatDiffer()
    {
        VisitSheet sheet = Visits.Review(
            Happened.SpeedsEmpty() with
            {
                Display = Speed.FromMetersPerSecond(3),
            },
            Beside(3, 2.4)
        );
        Assert.Equal(Cause.WrongReading, sheet.Causes[0].Cause);
        Visits.Says("Set nothing before that", sheet.About(Subject.Speed).Next!.Action);
    }

    // The grade is off by three in a hundred: that the displayed speed is right does not speak against it.
    [Fact]
    public void AGradeThatIsOffIsNoLessOffForARightSpeed()
    {
        InclineReading grade = new() { Measured = Ratio.FromPercent(8), Display = Ratio.FromPercent(5) };
        VisitSheet sheet = Visits.Review(grade, Beside(3, 3));
        Assert.Equal(Cause.OutOfCalibration, sheet.Causes[0].Cause);
        Assert.Equal(Chance(Visits.Review(grade), Cause.OutOfCalibration), sheet.Causes[0].Probability, 1e-9);
    }

    // Tension makes up for oil as long as the oil does not spread; nobody calls such a belt slack.
    [Fact]
    public void TurnsThatCoverUpOilDoNotShowASlackBelt()
    {
        VisitSheet sheet = Visits.Review(
            Happened.RollerOily,
            Happened.Lift(30, 130),
            Happened.Slips,
            Happened.Turned(0.5),
            Happened.Holds
        );
        Assert.Equal(Cause.OilOnDriveRoller, sheet.Causes[0].Cause);
        Visits.Says("covers up the oil", sheet.About(Subject.RunningBelt).Statement);
        Assert.DoesNotContain(sheet.Findings, static f => f.Statement.Contains("was slack", StringComparison.Ordinal));
    }

    // Without a display the loaded speeds are those of the test demand, 3 m/s, as the empty belt's were.
    [Fact]
    public void AMotorThatFallsBehindIsSeenWithoutADisplay()
    {
        VisitSheet sheet = Visits.Review(Happened.SpeedsEmpty(), Happened.Speeds(LoadState.Loaded, 307, 102.3, 2.67));
        Assert.Contains(
            sheet.Causes.Single(static c => c.Cause == Cause.ControllerLimit).For,
            static f => f.Contains("Under load the motor turns at 89", StringComparison.Ordinal)
        );
    }

    private static double Chance(VisitSheet sheet, Cause cause) =>
        sheet.Causes.Single(c => c.Cause == cause).Probability;

    private static SymptomReading There(Symptom symptom) => new() { Symptom = symptom, Present = true };

    private static MainsVoltageReading Volts(LoadState state, double volts) =>
        new() { State = state, Voltage = ElectricPotential.FromVolts(volts) };

    private static TemperatureReading Warm(WarmPlace place, double kelvins) =>
        new()
        {
            Place = place,
            Temperature = Temperature.FromDegreesCelsius(21 + kelvins),
            Air = Temperature.FromDegreesCelsius(21),
        };

    private static MotorCurrentReading Unloaded(double volts, double speed) =>
        Happened.Motor(LoadState.Unloaded, 2, speed / 115) with
        {
            Voltage = ElectricPotential.FromVolts(volts),
            MotorSpeed = RotationalSpeed.FromRadiansPerSecond(speed),
        };

    /// <summary>Display and belt, unloaded, read beside each other and nothing else [m/s].</summary>
    private static SpeedReading Beside(double display, double belt) =>
        new()
        {
            State = LoadState.Unloaded,
            Belt = Speed.FromMetersPerSecond(belt),
            Display = Speed.FromMetersPerSecond(display),
        };
}
