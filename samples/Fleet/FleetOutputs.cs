using TreadmillMech.Model;

namespace TreadmillMech.Samples.Fleet;

/// <summary>The outputs that are written for each machine.</summary>
internal static class FleetOutputs
{
    internal const int BeltMargin = 0;
    internal const int DriveBeltMargin = 1;

    internal static IReadOnlyList<Output> All { get; } =
    [
        Outputs.BeltMargin,
        Outputs.DriveBeltMargin,
        Outputs.SlackTension,
        Outputs.BeltSlide,
        Outputs.DriveRollerHubLoad,
        Outputs.PeakCurrent,
    ];

    /// <summary>An output as a header with its SI unit.</summary>
    internal static string WithUnit(Output output) =>
        output.Unit == "1" ? output.Name : $"{output.Name} [{output.Unit}]";
}
