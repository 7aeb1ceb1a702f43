using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What the drive belt puts on the motor's bearings.</summary>
/// <remarks>
/// A pulley outside of the two bearings loads the near one with more than its own load. Basic rating life by ISO 281; the rotor's
/// weight, dirt and lubricant are not in it.
/// </remarks>
public sealed record MotorBearings
{
    /// <summary>Mean load of the drive belt on the pulley.</summary>
    public required Force PulleyLoad { get; init; }

    /// <summary>Load of the bearing next to the pulley.</summary>
    public required Force NearLoad { get; init; }

    /// <summary>Load of the other bearing, in the opposite direction.</summary>
    public required Force FarLoad { get; init; }

    /// <summary>Running time that nine in ten near bearings reach; no answer where the bearing or its rating is not known.</summary>
    public required Answer<Duration> NearLife { get; init; }

    /// <summary>Running time that nine in ten far bearings reach; no answer where the bearing or its rating is not known.</summary>
    public required Answer<Duration> FarLife { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(MotorBearings),
            (nameof(PulleyLoad), PulleyLoad),
            (nameof(NearLoad), NearLoad),
            (nameof(FarLoad), FarLoad),
            (nameof(NearLife), NearLife),
            (nameof(FarLife), FarLife)
        );

    /// <summary>The load on the bearings of a machine's motor.</summary>
    /// <param name="machine">The machine; of it the drive belt and its tension.</param>
    /// <param name="demand">The demand.</param>
    /// <param name="overhang">Distance from the middle of the pulley to the near bearing, 1 mm to 0.2 m.</param>
    /// <param name="spacing">Distance between the bearings, 20 mm to 0.5 m.</param>
    /// <param name="near">The near bearing; null where unknown.</param>
    /// <param name="far">The far bearing; null where unknown.</param>
    /// <returns>The load; no answer without a drive belt, or where its tension or the pull is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static Answer<MotorBearings> Of(
        Treadmill machine,
        Demand demand,
        Length overhang,
        Length spacing,
        Bearing? near = null,
        Bearing? far = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double arm = Si.Length.ToSi(Guard.Within(overhang, Si.Length, 0.001, 0.2, nameof(overhang)));
        double apart = Si.Length.ToSi(Guard.Within(spacing, Si.Length, 0.02, 0.5, nameof(spacing)));
        OperatingPoint point = machine.At(demand);
        double speed = Si.RotationalSpeed.ToSi(point.MotorSpeed);
        return point.MotorHubLoad.Then(pulley =>
        {
            double load = Si.Force.ToSi(pulley);
            double first = HubLaws.NearBearingLoad<Real>(load, arm, apart);
            double second = HubLaws.FarBearingLoad<Real>(load, arm, apart);
            return new MotorBearings
            {
                PulleyLoad = pulley,
                NearLoad = Si.Force.FromSi(first),
                FarLoad = Si.Force.FromSi(second),
                NearLife = Life(near, first, speed, "NearBearing"),
                FarLife = Life(far, second, speed, "FarBearing"),
            };
        });
    }

    private static Answer<Duration> Life(Bearing? bearing, double load, double speed, string name) =>
        bearing is null ? new Shortfall(Reason.InputUnknown, name) : BearingLife.Time(bearing, load, speed);
}
