using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Review;

/// <summary>Speed ratios of the unloaded machine, as read, against what diameters say.</summary>
internal static class MeasuredRatio
{
    /// <summary>Motor speed over belt speed [rad/m]: as read unloaded, otherwise by the diameters.</summary>
    internal static double MotorToBelt(Visit visit, IEnumerable<SpeedReading> unloaded) =>
        unloaded.LastOrDefault(r => r is { Motor: not null, Belt: not null }) is { } both
            ? Si.RotationalSpeed.ToSi(both.Motor!.Value) / Si.Speed.ToSi(both.Belt!.Value)
            : PulleyRatio(visit.Machine) / new LoopGeometry(visit.Machine).DriveRadius.Value;

    /// <summary>Relative difference of the motor-to-roller ratio as read from that of the pulleys; null where not read.</summary>
    internal static double? AgainstPulleys(Visit visit, IEnumerable<SpeedReading> unloaded) =>
        unloaded.LastOrDefault(r => r is { Motor: not null, DriveRoller: not null }) is { } both
            ? MeasurementLaws.DisplayError<Real>(
                Si.RotationalSpeed.ToSi(both.Motor!.Value) / Si.RotationalSpeed.ToSi(both.DriveRoller!.Value),
                PulleyRatio(visit.Machine)
            )
            : null;

    private static double PulleyRatio(Treadmill machine)
    {
        LoopGeometry loop = new(machine);
        return DriveBeltLaws.SpeedRatio(loop.Numbers.MotorPulleyDiameter, loop.Numbers.RollerPulleyDiameter).Value;
    }
}
