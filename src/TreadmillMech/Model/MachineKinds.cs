namespace TreadmillMech.Model;

/// <summary>What is not a number about a machine and a demand. Uniform in a batch.</summary>
/// <param name="DriveEnd">Which roller is driven.</param>
/// <param name="Tensioning">How the drive belt is tensioned.</param>
/// <param name="Gait">How the person moves.</param>
/// <param name="StepFrequencyGiven">Whether the step frequency is an input; otherwise it follows from the speed.</param>
/// <param name="BrakingPeakGiven">Whether the braking peak is an input; otherwise it follows from the speed.</param>
public readonly record struct MachineKinds(
    DriveEnd DriveEnd,
    Tensioning Tensioning,
    Gait Gait,
    bool StepFrequencyGiven,
    bool BrakingPeakGiven
);
