using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Transient;

/// <summary>The margins of a standing start against the same start in time: a belt slides where its margin is below 1.</summary>
/// <remarks>Creep of both belts within their grip comes to 17 mm at most before the person steps.</remarks>
public sealed class StandingStartSlipTests
{
    private const double AtRest = 0.45;

    [Theory]
    [InlineData(0.95, true)]
    [InlineData(1.02, false)]
    public void TheRunningBeltSlidesBelowAMarginOfOne(double margin, bool slides)
    {
        double at1000 = Check(Typed.Machine).StartBeltMargin.Value;
        Treadmill machine = Typed.Machine with { RestTension = Force.FromNewtons(1000 * margin / at1000) };
        Assert.Equal(margin, Check(machine).StartBeltMargin.Value, tolerance: 1e-9);
        DriveSummary start = Run(machine);
        Assert.Equal(slides, start.Slide.Millimeters > 100);
        Assert.True(start.PulleySlide.Millimeters < 30);
    }

    [Theory]
    [InlineData(0.95, true)]
    [InlineData(1.02, false)]
    public void TheDriveBeltSlidesBelowAMarginOfOne(double margin, bool slides)
    {
        double at250 = Check(Typed.Machine).StartDriveBeltMargin.Value;
        Treadmill machine = Typed.Machine with
        {
            RestTension = Force.FromNewtons(2000),
            DriveBelt = Typed.Machine.DriveBelt! with { Tension = Force.FromNewtons(250 * margin / at250) },
        };
        Assert.Equal(margin, Check(machine).StartDriveBeltMargin.Value, tolerance: 1e-9);
        DriveSummary start = Run(machine);
        Assert.Equal(slides, start.PulleySlide.Millimeters > 100);
        Assert.True(start.Slide.Millimeters < 30);
    }

    private static StandingStart Check(Treadmill machine) =>
        StandingStart.Of(machine, Typed.Demand(0.5), new() { AtRest = AtRest }).Value;

    // Up to the moment at which the person begins to step, or over two seconds where the belt does not move.
    private static DriveSummary Run(Treadmill machine)
    {
        DriveRun run = DriveSimulation
            .Of(machine, Typed.Demand(0.5), Typed.Dynamics with { DeckStaticFriction = AtRest })
            .Value.Through(
                DrivePlan.StandingStart(
                    Typed.Seconds(2),
                    Speed.FromMetersPerSecond(0.5),
                    Acceleration.FromMetersPerSecondSquared(0.2)
                )
            );
        DriveEvent? steps = run
            .Events.Where(e => e.Kind == DriveEventKind.StepsBegin)
            .Cast<DriveEvent?>()
            .FirstOrDefault();
        return run.Summary(Typed.Seconds(0), steps?.Time ?? Typed.Seconds(2));
    }
}
