using System.Reflection;
using TreadmillMech.Model;
using UnitsNet;

namespace TreadmillMech.Tests.OperatingPoints;

/// <summary>Where there is no answer, the point says why, about what, and by how much.</summary>
public sealed class MissingAnswerTests
{
    private static readonly Treadmill Machine = Example.Machine;
    private static readonly Demand Runner = Example.Runner;

    [Fact]
    public void OnAMachineWhereEverythingIsKnownEverythingIsAnswered() =>
        Assert.All(
            Answers(Machine.At(Runner)),
            a => Assert.True(a.Missing.Why == Reason.Found, $"{a.Name}: {a.Missing}")
        );

    [Fact]
    public void OnABareMachineEveryAnswerNamesAnInputThatIsNotKnown()
    {
        (string Name, Shortfall Missing)[] missing = [.. Answers(Example.Bare.At(Runner))];
        Assert.NotEmpty(missing);
        string[] inputs = [.. Inputs.All.Select(input => input.Name)];
        Assert.All(missing, a => Assert.Equal(Reason.InputUnknown, a.Missing.Why));
        Assert.All(missing, a => Assert.Contains(a.Missing.About, inputs));
    }

    [Fact]
    public void EachUnknownInputTakesAwayWhatRestsOnItAndNamesItself()
    {
        Missing("RestTension", Machine with { RestTension = null }, ["BeltMargin", "SlackTension"], ["MeanPull"]);
        Missing("BeltDrag", Machine with { BeltDrag = null }, ["MeanPull", "MotorTorque"], ["DeckFrictionPower"]);
        Missing("DeckFriction", Machine with { Deck = new() }, ["DeckFrictionPower", "BeltMargin"], ["RestTension"]);
        Missing(
            "DriveRollerFriction",
            Machine with
            {
                DriveRoller = Machine.DriveRoller with { Friction = null },
            },
            ["BeltMargin", "BeltSlide"],
            ["PeakPull", "DriveRollerHubLoad"]
        );
        Missing(
            "DriveBeltTension",
            Machine with
            {
                DriveBelt = Machine.DriveBelt! with { Tension = null },
            },
            ["DriveBeltMargin", "MotorHubLoad"],
            ["BeltMargin"]
        );
        Missing(
            "DriveBeltFriction",
            Machine with
            {
                DriveBelt = Machine.DriveBelt! with { Friction = null },
            },
            ["DriveBeltMargin"],
            ["MotorHubLoad"]
        );
        Missing(
            "MotorConstant",
            Machine with
            {
                Motor = Machine.Motor! with { Constant = null },
            },
            ["MeanCurrent", "MotorVoltage", "MainsPower"],
            ["MotorTorque"]
        );
        Missing(
            "ArmatureResistance",
            Machine with
            {
                Motor = Machine.Motor! with { Resistance = null },
            },
            ["MotorVoltage", "MainsPower"],
            ["MeanCurrent"]
        );
        Missing(
            "PowerFactor",
            Machine with
            {
                Supply = Machine.Supply! with { PowerFactor = null },
            },
            ["MainsCurrent"],
            ["MainsPower"]
        );
    }

    [Fact]
    public void TurnsOnABeltOfUnknownStiffnessLeaveTheTensionUnknown()
    {
        Treadmill soft = Machine with { Belt = Machine.Belt with { RelaxedForcePerWidth = null } };
        Assert.True(soft.At(Runner).BeltMargin.Found);
        Treadmill turned = soft with { TakeUp = soft.TakeUp with { LeftTurns = 0.25, RightTurns = 0.25 } };
        Missing("BeltStiffness", turned, ["RestTension", "BeltMargin", "DriveRollerHubLoad"], ["MeanPull"]);
    }

    [Fact]
    public void ADirectDriveHasNoDriveBelt()
    {
        OperatingPoint point = (Machine with { DriveBelt = null }).At(Runner);
        Shortfall expected = new(Reason.NotOnThisMachine, "DriveBelt");
        Assert.Equal(expected, point.DriveBeltMargin.Missing);
        Assert.Equal(expected, point.DriveBeltSlide.Missing);
        Assert.Equal(expected, point.MotorHubLoad.Missing);
        Assert.Equal(WeakContact.RunningBelt, point.FirstToSlip.Value);
    }

    // Pulleys of 30 and 100 mm touch at 65 mm.
    [Fact]
    public void PulleysThatOverlapAreAnsweredWithTheDistanceTheyNeed()
    {
        Treadmill tight = Machine with
        {
            DriveBelt = Machine.DriveBelt! with { CentreDistance = Length.FromMillimeters(60) },
        };
        Shortfall missing = tight.At(Runner).DriveBeltMargin.Missing;
        Assert.Equal(Reason.PartsOverlap, missing.Why);
        Assert.Equal("PulleyCentreDistance", missing.About);
        Assert.Equal(0.065, missing.Needed, tolerance: 1e-12);
        Assert.Equal(0.060, missing.Available, tolerance: 1e-12);
        Assert.Equal("m", missing.Unit);
        Assert.Equal(Reason.PartsOverlap, tight.At(Runner).FirstToSlip.Missing.Why);
    }

    // 1.08 kg/m at 3 m/s: 9.72 N.
    [Fact]
    public void ABeltBelowItsCentrifugalTensionIsSlack()
    {
        Treadmill loose = Machine with { RestTension = Force.FromNewtons(9) };
        Shortfall missing = loose.At(Runner).BeltMargin.Missing;
        Assert.Equal(Reason.SlackBelt, missing.Why);
        Assert.Equal(9.72, missing.Needed, tolerance: 1e-9);
        Assert.Equal(9, missing.Available, tolerance: 1e-9);
        Assert.Equal("N", missing.Unit);
        Assert.Equal(Reason.SlackBelt, loose.At(Runner).SlackTension.Missing.Why);
        Assert.Equal(WeakContact.RunningBelt, loose.At(Runner).FirstToSlip.Value);
        Assert.True((Machine with { RestTension = Force.FromNewtons(10) }).At(Runner).BeltMargin.Found);
    }

    [Fact]
    public void ADriveThatOnlyPushesCannotHoldAUserUphill()
    {
        Treadmill pushes = Machine with { Motor = Machine.Motor! with { CanBrake = false } };
        Demand uphill = Runner with { Grade = Ratio.FromPercent(35) };
        Assert.True(pushes.At(Runner).MeanCurrent.Found);
        OperatingPoint point = pushes.At(uphill);
        Assert.All(
            (Shortfall[])
                [
                    point.MotorTorque.Missing,
                    point.MeanCurrent.Missing,
                    point.RmsCurrent.Missing,
                    point.MotorVoltage.Missing,
                    point.MainsPower.Missing,
                    point.MainsCurrent.Missing,
                ],
            missing => Assert.Equal(Reason.DriveCannotBrake, missing.Why)
        );
        Assert.Equal(Machine.At(uphill).MotorTorque.Value.NewtonMeters, point.MotorTorque.Missing.Needed);
        // The motor's own friction brakes a little: only beyond it must the drive brake.
        Assert.Equal(-Machine.Motor!.FrictionTorque!.Value.NewtonMeters, point.MotorTorque.Missing.Available);
        Assert.True(point.MeanPull.Value < Force.Zero);
    }

    [Fact]
    public void ASpeedBeyondTheVoltageSaysWhatItNeeds()
    {
        Treadmill weak = Machine with
        {
            Motor = Machine.Motor! with { VoltageLimit = ElectricPotential.FromVolts(100) },
        };
        double needed = Machine.At(Runner).MotorVoltage.Value.Volts;
        Assert.True(needed > 100);
        Shortfall missing = weak.At(Runner).MeanCurrent.Missing;
        Assert.Equal(new Shortfall(Reason.MotorCannotReachSpeed, "MotorVoltage", needed, 100, "V"), missing);
        Demand slow = Runner with { Speed = Speed.FromMetersPerSecond(1) };
        Assert.True(weak.At(slow).MotorVoltage.Found);
    }

    [Fact]
    public void APullBeyondTheCurrentSaysWhatItNeeds()
    {
        double needed = Machine.At(Runner).MeanCurrent.Value.Amperes;
        double peak = Machine.At(Runner).PeakCurrent.Value.Amperes;
        Treadmill limited = Machine with
        {
            Motor = Machine.Motor! with { CurrentLimit = ElectricCurrent.FromAmperes(0.9 * needed) },
        };
        Shortfall missing = limited.At(Runner).MainsPower.Missing;
        Assert.Equal((Reason.CurrentLimit, "MeanCurrent"), (missing.Why, missing.About));
        Assert.Equal(needed, missing.Needed, tolerance: 1e-9);
        Assert.Equal(0.9 * needed, missing.Available, tolerance: 1e-9);
        Treadmill ample = Machine with
        {
            Motor = Machine.Motor! with { CurrentLimit = ElectricCurrent.FromAmperes(0.5 * (needed + peak)) },
        };
        Assert.True(ample.At(Runner).MeanCurrent.Found);
        Assert.Equal(Reason.CurrentLimit, ample.At(Runner).PeakCurrent.Missing.Why);
    }

    [Fact]
    public void TheWeakerContactIsNamed()
    {
        Treadmill slipping = Machine with { DriveBelt = Machine.DriveBelt! with { Tension = Force.FromNewtons(20) } };
        Assert.Equal(WeakContact.DriveBelt, slipping.At(Runner).FirstToSlip.Value);
        Treadmill loose = Machine with { RestTension = Force.FromNewtons(100) };
        Assert.Equal(WeakContact.RunningBelt, loose.At(Runner).FirstToSlip.Value);
        Treadmill unknown = Machine with { RestTension = null };
        Assert.Equal(new Shortfall(Reason.InputUnknown, "RestTension"), unknown.At(Runner).FirstToSlip.Missing);
    }

    [Fact]
    public void AMachineOrADemandMustBeThere()
    {
        Assert.Throws<ArgumentNullException>(() => OperatingPoint.Of(null!, Runner));
        Assert.Throws<ArgumentNullException>(() => Machine.At(null!));
    }

    private static void Missing(string input, Treadmill machine, string[] gone, string[] still)
    {
        Dictionary<string, Shortfall> answers = Answers(machine.At(Runner)).ToDictionary(a => a.Name, a => a.Missing);
        Assert.All(gone, name => Assert.Equal(new Shortfall(Reason.InputUnknown, input), answers[name]));
        Assert.All(still, name => Assert.Equal(Reason.Found, answers[name].Why));
    }

    private static IEnumerable<(string Name, Shortfall Missing)> Answers(OperatingPoint point) =>
        from property in typeof(OperatingPoint).GetProperties(BindingFlags.Instance | BindingFlags.Public)
        where property.PropertyType.IsGenericType
        where property.PropertyType.GetGenericTypeDefinition() == typeof(Answer<>)
        let answer = property.GetValue(point)
        select (property.Name, (Shortfall)property.PropertyType.GetProperty("Missing")!.GetValue(answer)!);

    [Fact]
    public void AFootThatStrikesBehindTheTailRollerIsRefused()
    {
        Treadmill small = Machine with { CentreDistance = Length.FromMeters(0.7) };
        OperatingPoint point = small.At(Runner with { StrikePosition = Length.FromMeters(1.2) });
        Assert.All(
            (Shortfall[])[point.BeltMargin.Missing, point.BeltSlide.Missing, point.SlackTension.Missing],
            missing => Assert.Equal(new Shortfall(Reason.NotInRange, "StrikePosition", 1.2, 0.7, "m"), missing)
        );
        Assert.True(point.MeanPull.Found);
    }

    [Fact]
    public void ABeltThatHangsLooseUnderTheLoadAnswersNoHubLoad()
    {
        OperatingPoint point = (Machine with { RestTension = Force.FromNewtons(60) }).At(Runner);
        Assert.All(
            (Shortfall[])
                [point.TightTension.Missing, point.DriveRollerHubLoad.Missing, point.TailRollerHubLoad.Missing],
            missing => Assert.Equal(Reason.SlackBelt, missing.Why)
        );
    }

    [Fact]
    public void LooseningBelowNothingIsASlackBelt()
    {
        Treadmill loose = Machine with
        {
            RestTension = Force.FromNewtons(200),
            TakeUp = Machine.TakeUp with { LeftTurns = -2, RightTurns = -2 },
        };
        Assert.Equal(Reason.SlackBelt, loose.At(Runner).RestTension.Missing.Why);
    }

    [Fact]
    public void NumbersNeverHoldAnInfinityOrNaN()
    {
        OperatingPoint direct = (Machine with { DriveBelt = null }).At(Runner);
        OperatingPoint overlapping = (
            Machine with
            {
                DriveBelt = Machine.DriveBelt! with { CentreDistance = Length.FromMillimeters(50) },
            }
        ).At(Runner);
        foreach (OperatingPoint point in (OperatingPoint[])[direct, overlapping])
        {
            OutputNumbers<Real> numbers = point.Numbers;
            foreach (Real number in numbers.AsSpan())
            {
                Assert.True(double.IsFinite(number));
            }
        }
    }

    [Fact]
    public void MainsCurrentNeedsTheMainsVoltage()
    {
        OperatingPoint point = (Machine with { Supply = null }).At(Runner);
        Assert.Equal(Reason.InputUnknown, point.MainsCurrent.Missing.Why);
    }

    [Fact]
    public void AShortfallNobodyMadeStillPrints() => Assert.Equal("Found: ", default(Shortfall).ToString());
}
