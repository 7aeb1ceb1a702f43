using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Checks;

/// <summary>Load and speed of a roller.</summary>
internal static class RollerLoads
{
    /// <summary>The roller that the take-up moves.</summary>
    internal static RollerPlace Adjusted(Treadmill machine) =>
        machine.TakeUp.AdjustedEnd == machine.DriveEnd ? RollerPlace.Drive : RollerPlace.Tail;

    /// <summary>Load on both hubs at rest [N].</summary>
    internal static double AtRest(LoopGeometry loop, RollerPlace place, double tension) =>
        HubLaws.HubLoad<Real>(tension, tension, place == RollerPlace.Drive ? loop.DriveWrap : loop.TailWrap);

    /// <summary>Mean load on both hubs under a demand; at rest where there is none [N].</summary>
    internal static Answer<double> Of(Treadmill machine, RollerPlace place, Demand? demand)
    {
        if (demand is null)
        {
            LoopGeometry loop = new(machine);
            return Inquiry.TautTension(loop).Then(tension => AtRest(loop, place, tension));
        }

        OperatingPoint point = machine.At(demand);
        return (place == RollerPlace.Drive ? point.DriveRollerHubLoad : point.TailRollerHubLoad).Then(Si.Force.ToSi);
    }

    /// <summary>Angular speed of the roller under a demand [rad/s].</summary>
    internal static double Speed(Treadmill machine, RollerPlace place, Demand demand) =>
        MeasurementLaws.RollerSpeed<Real>(
            Si.Speed.ToSi(demand.Speed),
            Si.Length.ToSi((place == RollerPlace.Drive ? machine.DriveRoller : machine.TailRoller).Diameter),
            Si.Length.ToSi(machine.Belt.Thickness)
        );
}
