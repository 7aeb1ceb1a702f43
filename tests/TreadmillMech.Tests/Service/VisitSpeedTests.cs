using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class VisitSpeedTests
{
    // By hand: (3.3 - 3)/3 = 10 %; (2.7 - 3)/3 = -10 %; (3.1 - 3)/3 = 3.3 %, within 5 %.
    [Theory]
    [InlineData(3.3, 10.0, "runs slower than it says")]
    [InlineData(2.7, -10.0, "runs faster than it says")]
    [InlineData(3.1, null, null)]
    public void ADisplayThatIsOffIsNamed(double shown, double? error, string? statement)
    {
        VisitSheet sheet = Visits.Review(Happened.SpeedsEmpty() with { Display = Speed.FromMetersPerSecond(shown) });
        Assert.Equal(error is null, sheet.Silent(Subject.Speed));
        if (error is { } expected)
        {
            Finding finding = sheet.About(Subject.Speed);
            Assert.Equal(expected, finding.Number!.Value, 1e-9);
            Visits.Says(statement!, finding.Statement);
        }

        ReadingRow row = Assert.Single(sheet.Readings, r => r.Name == "Error of the displayed speed");
        Assert.Equal(100 * ((shown / 3) - 1), row.AsFound!.Value, 1e-9);
    }

    // Pulleys 84/28 = 3 and a motor at 345 rad/s want the roller at 115 rad/s; 100 rad/s is a ratio of 3.45, 15 % off.
    [Fact]
    public void SpeedsThatDoNotFitThePulleysAreNamed()
    {
        VisitSheet sheet = Visits.Review(Happened.Speeds(LoadState.Unloaded, 345, 100, 3));
        Finding finding = sheet.About(Subject.Readings);
        Assert.Equal(15, finding.Number!.Value, 1e-9);
        Visits.Says("do not fit the diameters of the pulleys", finding.Statement);
        Assert.True(Visits.Review(Happened.SpeedsEmpty()).Silent(Subject.Readings));
    }

    // By hand: Km = (60 - 30)/(300 - 150) = 0.2 Vs; (6 - 2) A * 0.2 * ratio / (80 kg * 9.80665 m/s2), the ratio read
    // unloaded 345/3 = 115 rad/m instead of that of the diameters, 3/0.026 = 115.4 rad/m.
    [Fact]
    public void TheMeasuredRatioComesBeforeTheDiameters()
    {
        Treadmill wrongPulleys = Machines.Plain with
        {
            DriveBelt = Machines.Plain.DriveBelt! with { MotorPulleyDiameter = Length.FromMillimeters(40) },
        };
        VisitSheet sheet = Visits.Review(
            wrongPulleys,
            Happened.SpeedsEmpty(),
            Point(30, 150),
            Point(60, 300),
            Happened.Motor(LoadState.Unloaded, 2, 2),
            Happened.Motor(LoadState.Loaded, 6, 2) with
            {
                UserMass = Mass.FromKilograms(80),
            }
        );
        ReadingRow row = Assert.Single(sheet.Readings, r => r.Name == "Deck friction");
        Assert.Equal(4 * 0.2 * 115 / (80 * 9.80665), row.AsFound!.Value, 1e-9);
    }

    // Roller and belt keep their ratio, the motor was not read: nothing is said of the drive belt.
    [Fact]
    public void OneContactReadIsNotBothJudged()
    {
        SpeedReading[] halves =
        [
            Happened.SpeedsEmpty() with
            {
                Motor = null,
            },
            Happened.SpeedsUnder(0, 0) with
            {
                Motor = null,
            },
        ];
        Assert.True(SlipLocation.Of(halves[0], halves[1]).Is(out SlipLocation? found));
        Assert.Equal(SlipPlace.NotTold, found.Place);
        VisitSheet sheet = Visits.Review(halves);
        Visits.Says("slip was not tested", sheet.VerdictText);
        Assert.Contains(sheet.OneMoreReading, p => p.Reading.Contains("Speeds of motor", StringComparison.Ordinal));

        // Where the motor sits on the roller there is no second contact.
        VisitSheet direct = Visits.Review(Machines.Plain with { DriveBelt = null }, halves);
        Assert.DoesNotContain("slip was not tested", direct.VerdictText, StringComparison.Ordinal);
        Assert.DoesNotContain(
            direct.OneMoreReading,
            p => p.Reading.Contains("Speeds of motor", StringComparison.Ordinal)
        );
    }

    private static MotorCurrentReading Point(double volts, double speed) =>
        Happened.Motor(LoadState.Unloaded, 2, 3 * speed / 345) with
        {
            Voltage = ElectricPotential.FromVolts(volts),
            MotorSpeed = RotationalSpeed.FromRadiansPerSecond(speed),
        };
}
