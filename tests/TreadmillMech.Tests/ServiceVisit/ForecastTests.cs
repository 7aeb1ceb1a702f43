using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;
using TreadmillMech.Tests.Transient;
using UnitsNet;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>What each step of the tested demand does to the belt, on the sheet.</summary>
public sealed class ForecastTests
{
    private const string Dynamics = """
        "dynamics": {
              "motorInertia": "100 kg cm2", "armatureInductance": "2 mH", "speedSensor": "drive roller", "gain": "40 A",
              "integralTime": "0.3 s", "beltLossFactor": 0.1
            },
        """;

    private static string WithDynamics => Sample.Change(Sample.Healthy, "\"driveEnd\"", Dynamics + "\"driveEnd\"").Text;

    private static Visit Known(double tension) =>
        new()
        {
            Machine = Typed.Machine with { RestTension = Force.FromNewtons(tension) },
            TestDemand = Typed.Demand(3),
            Events = [],
        };

    private static StepForecast Of(Visit visit) => StepForecast.Of(visit, VisitReview.Of(visit), Typed.Dynamics);

    // The run itself, taken once more by hand.
    [Fact]
    public void WhereAllIsKnownItIsTheRunInTime()
    {
        StepForecast loose = Of(Known(600));
        DriveRun run = Typed.At(3, 600).Through(DrivePlan.Steady(Typed.Seconds(8)));
        DriveSummary sum = run.Summary(Typed.Seconds(3), Typed.Seconds(8));
        double steps = 5 * Typed.Machine.At(Typed.Demand(3)).StepFrequency.Hertz;
        Assert.Equal(sum.Slide.Millimeters / steps, loose.Slide.Value.Value, 1e-9);
        Assert.Equal(sum.Dip.Value.Percent, loose.Dip.Value.Value, 1e-9);
        Assert.InRange(loose.Slide.Value.Value, 1, 300);
        Assert.Equal("mm", loose.Slide.Value.Unit);
        StepForecast tight = Of(Known(2000));
        Assert.InRange(tight.Slide.Value.Value, 0, 1e-6);
        Assert.True(tight.Dip.Value.Value < loose.Dip.Value.Value);
    }

    [Fact]
    public void WhatIsNotKnownIsSaid()
    {
        Visit visit = Known(1000);
        StepForecast without = StepForecast.Of(visit, VisitReview.Of(visit), null);
        Assert.Equal("flywheel and speed controller", without.Dip.Missing.About);
        StepForecast unknown = Of(
            visit with
            {
                Machine = visit.Machine with { DriveRoller = visit.Machine.DriveRoller with { Friction = null } },
            }
        );
        Assert.Equal(Reason.InputUnknown, unknown.Slide.Missing.Why);
        Assert.Equal("DriveRollerFriction", unknown.Slide.Missing.About);
    }

    [Fact]
    public void TheFileIsRead()
    {
        VisitFile document = VisitReaderTests.Read(WithDynamics);
        Assert.Equal(0.01, document.Dynamics!.MotorInertia.KilogramSquareMeters, 1e-15);
        Assert.Equal(0.002, document.Dynamics.ArmatureInductance.Henries, 1e-15);
        Assert.Equal(SpeedSensor.DriveRoller, document.Dynamics.Controller.Sensor);
        Assert.Equal(0.3, document.Dynamics.Controller.IntegralTime.Seconds, 1e-15);
    }

    [Fact]
    public void AWrongFieldIsNamedWithItsLine()
    {
        Sample.Outcome bad = Sample.RunOn(WithDynamics.Replace("\"2 mH\"", "\"2 mA\"", StringComparison.Ordinal));
        Assert.Equal(2, bad.Code);
        Assert.Contains("armatureInductance", bad.Errors, StringComparison.Ordinal);
        Assert.Contains("mH, H, uH or µH", bad.Errors, StringComparison.Ordinal);
    }

    // The bundled visit was read off a machine of a chosen state: its run in time is near the one of what the readings tell.
    [Fact]
    public void TheBundledVisitTellsTheDipAndTheSlideOfTheStateThatWasChosen()
    {
        VisitFile file = VisitReaderTests.Read(Sample.Text(Bundled.Dipping));
        Treadmill described = file.Visit.Machine;
        Treadmill chosen = described with
        {
            Belt = described.Belt with { RelaxedForcePerWidth = ForcePerLength.FromNewtonsPerMillimeter(7) },
            DriveRoller = described.DriveRoller with { Friction = 0.28 },
            Deck = described.Deck with { Friction = 0.19 },
            RestTension = Force.FromNewtons(820),
            BeltDrag = Force.FromNewtons(35),
            DriveBelt = described.DriveBelt! with { Tension = Force.FromNewtons(400) },
            Motor = described.Motor! with
            {
                Constant = MotorConstant.FromVoltSecondsPerRadian(0.3),
                FrictionTorque = Torque.FromNewtonMeters(0.1),
            },
        };
        Answer<DriveSimulation> simulation = DriveSimulation.Of(chosen, file.Visit.TestDemand, file.Dynamics!);
        DriveSummary sum = simulation
            .Value.Run(DrivePlan.Steady(Duration.FromSeconds(8)), cancellation: TestContext.Current.CancellationToken)
            .Value.Summary(Duration.FromSeconds(3), Duration.FromSeconds(8));
        JsonElement each = JsonDocument
            .Parse(Sample.Run(Bundled.Dipping, "--json").Output)
            .RootElement.GetProperty("eachStep");
        double steps = 5 * chosen.At(file.Visit.TestDemand).StepFrequency.Hertz;
        double slide = sum.Slide.Millimeters / steps;
        double told = each.GetProperty("slide").GetProperty("value").GetDouble();
        Assert.InRange(slide, 10, 30);

        // What slides is what the belt lacks, a tenth of the demand, and the readings tell the margin to two hundredths.
        Assert.InRange(told, 0.6 * slide, 1.4 * slide);
        double dip = each.GetProperty("dip").GetProperty("value").GetDouble();
        Assert.InRange(dip, 0.7 * sum.Dip.Value.Percent, 1.3 * sum.Dip.Value.Percent);
        string shown = new Figure("", told, "mm").ToString();
        Assert.Contains(shown, Sample.Run(Bundled.Dipping).Output, StringComparison.Ordinal);
        Assert.Contains(shown, PageOf(Sample.Text(Bundled.Dipping)), StringComparison.Ordinal);
    }

    [Fact]
    public void SheetJsonAndPageTellIt()
    {
        const string Missing = "not known: flywheel and speed controller";
        string text = Sample.RunOn(Sample.Healthy).Output;
        Assert.Contains("EACH STEP OF THE TESTED DEMAND", text, StringComparison.Ordinal);
        Assert.Contains(Missing, text, StringComparison.Ordinal);
        string known = Sample.RunOn(WithDynamics).Output;
        Assert.DoesNotContain(Missing, known, StringComparison.Ordinal);
        Assert.Contains("Slide on the drive roller a step:", known, StringComparison.Ordinal);
        JsonElement each = JsonDocument
            .Parse(Sample.RunOn(Sample.Healthy, "--json").Output)
            .RootElement.GetProperty("eachStep");
        Assert.Equal("inputUnknown", each.GetProperty("dip").GetProperty("missing").GetString());
        Assert.Contains(Missing, PageOf(Sample.Healthy), StringComparison.Ordinal);
    }

    private static string PageOf(string visit)
    {
        string page = Path.Combine(Path.GetTempPath(), $"page-{Guid.NewGuid():N}.html");
        try
        {
            Sample.RunOn(visit, "--html", page);
            return File.ReadAllText(page);
        }
        finally
        {
            File.Delete(page);
        }
    }
}
