using System.Collections.Immutable;
using TreadmillMech.Parts;
using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>What each step of the tested demand does to the belt of the machine as left, by a run in time.</summary>
/// <param name="Dip">How far the belt's speed falls below its mean.</param>
/// <param name="Slide">How far the drive roller slides under the belt in a step.</param>
internal sealed record StepForecast(Answer<Figure> Dip, Answer<Figure> Slide)
{
    internal const string About =
        "a run in time of the machine as left, under the tested demand; a calculation, no test";

    // The first seconds hold what the start has left behind.
    private static readonly Duration Settled = Duration.FromSeconds(3);
    private static readonly Duration End = Duration.FromSeconds(8);

    /// <summary>The figures with their names.</summary>
    internal ImmutableArray<(string Name, Answer<Figure> Value)> Lines =>
        [("Dip of belt speed a step", Dip), ("Slide on the drive roller a step", Slide)];

    /// <summary>The forecast; where an input is not known, each figure says which.</summary>
    internal static StepForecast Of(Visit visit, VisitSheet sheet, DriveDynamics? dynamics)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(sheet);
        if (dynamics is null)
        {
            return Without(new(Reason.InputUnknown, "flywheel and speed controller"));
        }

        Treadmill machine = sheet.MachineAsLeft;
        if (!DriveSimulation.Of(machine, visit.TestDemand, dynamics).Is(out DriveSimulation? simulation))
        {
            return Without(DriveSimulation.Of(machine, visit.TestDemand, dynamics).Missing);
        }

        Answer<DriveRun> answer = simulation.Run(DrivePlan.Steady(End));
        if (!answer.Is(out DriveRun? run) || !run.Complete)
        {
            return Without(answer.Found ? new(Reason.NotInRange, "the run in time") : answer.Missing);
        }

        DriveSummary sum = run.Summary(Settled, End);
        double steps = (End - Settled).Seconds * machine.At(visit.TestDemand).StepFrequency.Hertz;
        return new(
            sum.Dip.Is(out Ratio dip) ? new Figure("dip", dip.Percent, "%") : sum.Dip.Missing,
            new Figure("slide", sum.Slide.Millimeters / steps, "mm")
        );
    }

    private static StepForecast Without(Shortfall missing) => new(missing, missing);
}
