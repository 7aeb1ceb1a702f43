using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What a person who keeps to one side does to a machine: uneven loads left and right, and drift under load only.</summary>
/// <remarks>
/// Drift that goes when the person steps off, or when they change sides, is theirs: do not turn the bolts for it. Judge
/// tracking on the empty belt, or with the feet in the middle.
/// </remarks>
public sealed record OffCentreUser
{
    /// <summary>Stride mean of the moment of the feet on the deck about the belt's middle line.</summary>
    public required Torque DeckMoment { get; init; }

    /// <summary>Mean axial force of the left bolt under the person.</summary>
    public required Answer<Force> LeftBolt { get; init; }

    /// <summary>Mean axial force of the right bolt under the person.</summary>
    public required Answer<Force> RightBolt { get; init; }

    /// <summary>
    /// Drift to the right for each metre of belt, an order of magnitude. No answer where the belt's stiffness or the deck's
    /// friction is not known, or the foot would leave the belt behind the rear roller.
    /// </summary>
    public required Answer<Ratio> DriftPerMeter { get; init; }

    /// <summary>Drift to the right in one pass of the belt.</summary>
    public required Answer<Length> DriftPerPass { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(OffCentreUser),
            (nameof(DeckMoment), DeckMoment),
            (nameof(LeftBolt), LeftBolt),
            (nameof(RightBolt), RightBolt),
            (nameof(DriftPerMeter), DriftPerMeter),
            (nameof(DriftPerPass), DriftPerPass)
        );

    /// <summary>What the offset of a person does.</summary>
    /// <param name="machine">The machine.</param>
    /// <param name="demand">The person and how they move.</param>
    /// <param name="offset">Mean place of the feet right of the belt's middle line, -0.4 m to 0.4 m, on the belt.</param>
    /// <returns>The loads and the drift; no answer where the feet would be beside the belt.</returns>
    /// <remarks>
    /// The bolts share what the person adds like a shaft on two hubs, an upper bound of the difference. The drift is that of
    /// an even strip on square rollers. A real belt, softer in its plane, drifts more; crowns hold it back. Rollers that
    /// give way unevenly under the uneven load are not in it.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The offset is outside its range.</exception>
    public static Answer<OffCentreUser> Of(Treadmill machine, Demand demand, Length offset)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double beside = Si.Length.ToSi(Guard.Within(offset, Si.Length, -0.4, 0.4, nameof(offset)));
        Scenario scenario = Scenario.Of(machine, demand);
        double room = 0.5 * scenario.Numbers.BeltWidth;
        if (Math.Abs(beside) > room)
        {
            return new Shortfall(Reason.NotInRange, nameof(offset), Math.Abs(beside), room, "m");
        }

        OperatingPoint point = machine.At(demand);
        Answer<Real> drift = Drift(machine, in scenario, in point, beside);
        Real normal = GaitLaws.MeanNormalForce(
            scenario.Numbers.PersonMass,
            scenario.Numbers.Incline,
            scenario.Numbers.RailSupport
        );
        return new OffCentreUser
        {
            DeckMoment = Si.Torque.FromSi(GaitLaws.OffCentreMoment<Real>(normal, beside)),
            LeftBolt = Bolt(machine, in point, -beside),
            RightBolt = Bolt(machine, in point, beside),
            DriftPerMeter = drift.Then(d => Si.Ratio.FromSi(d)),
            DriftPerPass = drift.Then(d => Si.Length.FromSi(d * Si.Length.ToSi(point.LoopLength))),
        };
    }

    private static Answer<Force> Bolt(Treadmill machine, in OperatingPoint point, double towards)
    {
        TakeUp takeUp = machine.TakeUp;
        if (takeUp.Bolts < 2)
        {
            return new Shortfall(Reason.NotOnThisMachine, "second take-up bolt");
        }

        if (takeUp.BoltSpacing is not { } spacing)
        {
            return new Shortfall(Reason.InputUnknown, "BoltSpacing");
        }

        bool drive = takeUp.AdjustedEnd == machine.DriveEnd;
        Answer<Force> loaded = drive ? point.DriveRollerHubLoad : point.TailRollerHubLoad;
        LoopGeometry loop = new(machine);
        double pressing = point.Numbers.TensionNow - point.Numbers.CentrifugalTension;
        double even = HubLaws.HubLoad<Real>(
            pressing,
            pressing,
            drive ? Si.Angle.ToSi(point.DriveRollerWrap) : loop.TailWrap
        );
        return loaded.Then(hub =>
        {
            double side = HubLaws.SideLoad<Real>(even, Si.Force.ToSi(hub) - even, towards, Si.Length.ToSi(spacing));
            return Si.Force.FromSi(side / Math.Cos(Si.Angle.ToSi(takeUp.BoltAngle)));
        });
    }

    private static Answer<Real> Drift(Treadmill machine, in Scenario scenario, in OperatingPoint point, double offset)
    {
        if (machine.Belt.RelaxedForcePerWidth is null)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.BeltStiffness.Name);
        }

        if (machine.Deck.Friction is null)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.DeckFriction.Name);
        }

        double end =
            scenario.Numbers.StrikePosition + (scenario.Numbers.BeltSpeed * Si.Duration.ToSi(point.ContactTime));
        return end > scenario.Numbers.CentreDistance
            ? new Shortfall(Reason.NotInRange, Inputs.StrikePosition.Name, end, scenario.Numbers.CentreDistance, "m")
            : OffCentreStage.Drift(in scenario.Numbers, in scenario.Kinds, offset);
    }
}
