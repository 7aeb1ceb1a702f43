using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What further turns buy and cost: margin of the running belt against the life of the rollers' bearings.</summary>
public sealed record TurnPrice
{
    /// <summary>Margin of the running belt before the turns.</summary>
    public required Answer<double> MarginBefore { get; init; }

    /// <summary>Margin of the running belt after them.</summary>
    public required Answer<double> MarginAfter { get; init; }

    /// <summary>Load on both bearings of the undriven roller before the turns.</summary>
    public required Force HubLoadBefore { get; init; }

    /// <summary>Load on both bearings of the undriven roller after them.</summary>
    public required Force HubLoadAfter { get; init; }

    /// <summary>Life of its bearings after the turns over that before: a tenth more load leaves three quarters.</summary>
    public required double LifeRatio { get; init; }

    /// <summary>Running time that nine in ten such bearings reach after the turns; no answer without their rating.</summary>
    public required Answer<Duration> LifeAfter { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TurnPrice),
            (nameof(MarginBefore), MarginBefore),
            (nameof(MarginAfter), MarginAfter),
            (nameof(HubLoadBefore), HubLoadBefore),
            (nameof(HubLoadAfter), HubLoadAfter),
            (nameof(LifeRatio), LifeRatio),
            (nameof(LifeAfter), LifeAfter)
        );

    /// <summary>The price of turns on both bolts.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="demand">The demand the margin is told for, and the speed the bearings turn at.</param>
    /// <param name="turns">Turns on both bolts, -5 to 5; positive tightens.</param>
    /// <param name="bearing">The bearings of the undriven roller; ball bearings of unknown rating where null.</param>
    /// <returns>The price; no answer where tension or stiffness is not known, or the belt would hang loose.</returns>
    /// <remarks>
    /// Basic rating life by ISO 281, each bearing with half of the roller's load; dirt, mounting and lubricant are not in it.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public static Answer<TurnPrice> Of(Treadmill machine, Demand demand, double turns, Bearing? bearing = null)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double given = Guard.Within(turns, Si.One, -5, 5, nameof(turns));
        OperatingPoint before = machine.At(demand);
        OperatingPoint after = ChangedMachine.Turned(machine, given).At(demand);
        if (!before.TailRollerHubLoad.Is(out Force first))
        {
            return before.TailRollerHubLoad.Missing;
        }

        return after.TailRollerHubLoad.Then(second =>
            Between(
                before,
                after,
                first,
                second,
                bearing ?? new(),
                RollerLoads.Speed(machine, RollerPlace.Tail, demand)
            )
        );
    }

    private static TurnPrice Between(
        OperatingPoint before,
        OperatingPoint after,
        Force first,
        Force second,
        Bearing bearing,
        double rollerSpeed
    )
    {
        double old = 0.5 * Si.Force.ToSi(first);
        double now = 0.5 * Si.Force.ToSi(second);
        return new()
        {
            MarginBefore = before.BeltMargin,
            MarginAfter = after.BeltMargin,
            HubLoadBefore = first,
            HubLoadAfter = second,
            LifeRatio = BearingLife.Ratio(bearing, now, old),
            LifeAfter = BearingLife.Time(bearing, now, rollerSpeed),
        };
    }
}
