namespace TreadmillMech.Service.Causes;

/// <summary>How common each cause is before anything is read. Common practice, no source.</summary>
internal static class CausePriors
{
    private static readonly Dictionary<Cause, double> Weights = new()
    {
        [Cause.NothingWrong] = 15,
        [Cause.RunningBeltSlack] = 15,
        [Cause.DeckDry] = 15,
        [Cause.BeltAndDeckWorn] = 8,
        [Cause.BeltOffCentre] = 6,
        [Cause.DriveBeltSlack] = 5,
        [Cause.DriveBeltGlazed] = 5,
        [Cause.OilOnDriveRoller] = 5,
        [Cause.WrongReading] = 4,
        [Cause.RollerBearing] = 4,
        [Cause.OverTightened] = 4,
        [Cause.OutOfCalibration] = 4,
        [Cause.MotorWeak] = 3,
        [Cause.SupplyWeak] = 3,
        [Cause.DriveBeltCracked] = 2,
        [Cause.OverLubricated] = 2,
        [Cause.ControllerLimit] = 2,
        [Cause.UserBeyondPlate] = 2,
        [Cause.PulleyLoose] = 1.5,
        [Cause.DriveOverrun] = 1,
        [Cause.BoltsAtTheirEnd] = 2,
    };

    private static readonly double Sum = Weights.Values.Sum();

    internal static double Of(Cause cause) => Weights[cause] / Sum;

    /// <summary>The prior on a machine: what has no drive belt has none that is slack, glazed or cracked.</summary>
    internal static double On(Treadmill machine, Cause cause) =>
        machine.DriveBelt is null && cause is (Cause.DriveBeltSlack or Cause.DriveBeltGlazed or Cause.DriveBeltCracked)
            ? 0
            : Of(cause);
}
