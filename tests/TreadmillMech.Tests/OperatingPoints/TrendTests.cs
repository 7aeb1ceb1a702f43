using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.OperatingPoints;

/// <summary>What a change of machine or user does to the whole operating point.</summary>
public sealed class TrendTests
{
    private const double StandardGravity = 9.80665;

    private static readonly Treadmill Machine = Example.Machine;
    private static readonly Demand Runner = Example.Runner;

    [Fact]
    public void ATighterBeltHoldsMore()
    {
        double before = 0;
        foreach (double newtons in (double[])[400, 800, 1200, 2000, 3000])
        {
            double margin = Margin(Machine with { RestTension = Force.FromNewtons(newtons) }, Runner);
            Assert.True(margin > before);
            before = margin;
        }
    }

    // The grip is (T0 - Tc)(R - 1), and the demand does not depend on the tension.
    [Fact]
    public void TheMarginGoesWithTheTensionAboveTheCentrifugalPart()
    {
        double centrifugal = Machine.At(Runner).Numbers.CentrifugalTension;
        double at1000 = Margin(Machine, Runner);
        double at2000 = Margin(Machine with { RestTension = Force.FromNewtons(2000) }, Runner);
        Assert.Equal((2000 - centrifugal) / (1000 - centrifugal), at2000 / at1000, tolerance: 1e-9);
    }

    // Belt of 2.4 kg/m2 x 0.45 m at 3 m/s: 1.08 x 9 = 9.72 N of 1000 N.
    [Fact]
    public void TheCentrifugalEffectIsSmall() =>
        Assert.Equal(9.72, Machine.At(Runner).Numbers.CentrifugalTension, tolerance: 1e-9);

    [Fact]
    public void LandingNearerToAFrontDriveRollerHoldsLess()
    {
        double before = 0;
        foreach (double millimetres in (double[])[50, 200, 400, 600, 800])
        {
            double margin = Margin(Machine, Runner with { StrikePosition = Length.FromMillimeters(millimetres) });
            Assert.True(margin > before);
            before = margin;
        }
    }

    [Fact]
    public void TheSameMachineDrivenAtTheRearHoldsMore() =>
        Assert.True(Margin(Machine with { DriveEnd = DriveEnd.Rear }, Runner) > 1.2 * Margin(Machine, Runner));

    [Fact]
    public void AHeavierUserUsesMoreOfTheGrip()
    {
        double before = double.PositiveInfinity;
        foreach (double kilograms in (double[])[50, 80, 110, 140, 180])
        {
            double margin = Margin(Machine, Runner with { Person = new() { Mass = Mass.FromKilograms(kilograms) } });
            Assert.True(margin < before);
            before = margin;
        }
    }

    // Lubricant on the roller: F_max/T0 falls with (R - 1)/(R (1 - s) + s).
    [Fact]
    public void LubricantOnTheRollerCostsGripAndOnTheDeckCostsPull()
    {
        Treadmill oily = Machine with { DriveRoller = Machine.DriveRoller with { Friction = 0.15 } };
        Assert.True(Margin(oily, Runner) < 0.75 * Margin(Machine, Runner));
        Treadmill slick = Machine with { Deck = Machine.Deck with { Friction = 0.1 } };
        Assert.True(slick.At(Runner).MeanPull.Value < Machine.At(Runner).MeanPull.Value);
        Assert.True(Margin(slick, Runner) > Margin(Machine, Runner));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(15)]
    [InlineData(40)]
    [InlineData(-8)]
    public void UphillTheMeanPullFallsByTheWeightAlongTheDeck(double percent)
    {
        double angle = Math.Atan(percent / 100);
        double level = Machine.At(Runner).MeanPull.Value.Newtons;
        double inclined = Machine.At(Runner with { Grade = Ratio.FromPercent(percent) }).MeanPull.Value.Newtons;
        double weight = 90 * StandardGravity;
        double expected = (weight * Math.Sin(angle)) + (0.2 * weight * (1 - Math.Cos(angle)));
        Assert.Equal(expected, level - inclined, tolerance: 1e-9);
    }

    // The motor brakes once tan(theta) exceeds mu + drag/(m g cos(theta)): here 0.2 + 20/(882.6 x 0.976), 22.3 %.
    [Theory]
    [InlineData(22, false)]
    [InlineData(23, true)]
    public void TheMotorBrakesOnceTheGradeExceedsFrictionAndDrag(double percent, bool brakes)
    {
        OperatingPoint point = Machine.At(Runner with { Grade = Ratio.FromPercent(percent) });
        Assert.Equal(brakes, point.MeanPull.Value < Force.Zero);
        Assert.Equal(brakes, point.MotorTorque.Value < Torque.Zero);
        Assert.Equal(brakes, point.PullPower.Value < Power.Zero);
    }

    [Fact]
    public void ABrakingStepUsesMoreThanAnOrdinaryOne()
    {
        double before = Margin(Machine, Runner);
        foreach (double peak in (double[])[0.4, 0.6, 0.8, 1])
        {
            OperatingPoint point = Machine.At(Runner with { BrakingStep = peak });
            Assert.True(point.BeltMargin.Value < before);
            Assert.Equal(Machine.At(Runner).MeanPull.Value.Newtons, point.MeanPull.Value.Newtons, tolerance: 1e-9);
            before = point.BeltMargin.Value;
        }
    }

    // R is that of the motor pulley: exp(mu/sin(20 deg) (pi - 2 asin(35/200))).
    [Fact]
    public void ASlackSideIdlerHoldsLessByTheTensionRatioWhenTheMachineBrakes()
    {
        Demand uphill = Runner with { Grade = Ratio.FromPercent(40), BrakingStep = 0.05 };
        Treadmill slick = Machine with { Deck = Machine.Deck with { Friction = 0.05 } };
        DriveBelt belt = slick.DriveBelt!;
        double slack = (slick with { DriveBelt = belt with { Tensioning = Tensioning.SlackSideIdler } })
            .At(uphill)
            .DriveBeltMargin.Value;
        double tight = (slick with { DriveBelt = belt with { Tensioning = Tensioning.TightSideIdler } })
            .At(uphill)
            .DriveBeltMargin.Value;
        double wrap = Math.PI - (2 * Math.Asin(0.035 / 0.200));
        double ratio = Math.Exp(0.4 / Math.Sin(Math.PI / 9) * wrap);
        Assert.Equal(ratio, tight / slack, tolerance: 1e-9 * ratio);
    }

    // dT = EA dL/(L + D), dL = 2 cos(a) n lead, D = 4 EA/k_f; EA = 100 x 8000 N/m x 0.45 m.
    [Theory]
    [InlineData(1, null)]
    [InlineData(0.5, null)]
    [InlineData(-0.25, null)]
    [InlineData(1, 2000.0)]
    public void TurnsRaiseTheTensionByTheElongationOfTheLoop(double turns, double? hubNewtonsPerMillimetre)
    {
        Treadmill turned = Machine with
        {
            TakeUp = Machine.TakeUp with { LeftTurns = turns, RightTurns = turns },
            TailRoller = Machine.TailRoller with
            {
                HubStiffness = hubNewtonsPerMillimetre is { } value
                    ? ForcePerLength.FromNewtonsPerMillimeter(value)
                    : null,
            },
        };
        const double Stiffness = 100 * 8000 * 0.45;
        double angle = Math.Asin((0.026 - 0.0235) / 1.35);
        double loop =
            (2 * 1.35 * Math.Cos(angle)) + (0.026 * (Math.PI + (2 * angle))) + (0.0235 * (Math.PI - (2 * angle)));
        double give = hubNewtonsPerMillimetre is { } hub ? 4 * Stiffness / (hub * 1000) : 0;
        double expected = Stiffness * 2 * Math.Cos(angle) * turns * 0.00125 / (loop + give);
        Assert.Equal(1000 + expected, turned.At(Runner).RestTension.Value.Newtons, tolerance: 1e-8);
    }

    private static double Margin(Treadmill machine, Demand demand) => machine.At(demand).BeltMargin.Value;
}
