using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Wraps, length, free span and ratio of a drive belt.</summary>
public sealed record DriveBeltGeometry
{
    /// <summary>Wrap on the motor's pulley. On the smaller pulley it is below half a turn, and there the belt slips first.</summary>
    public required Angle MotorPulleyWrap { get; init; }

    /// <summary>Wrap on the roller's pulley.</summary>
    public required Angle RollerPulleyWrap { get; init; }

    /// <summary>The smaller one of both wraps.</summary>
    public Angle SmallPulleyWrap => MotorPulleyWrap < RollerPulleyWrap ? MotorPulleyWrap : RollerPulleyWrap;

    /// <summary>Length of the belt on its effective diameters.</summary>
    public required Length LoopLength { get; init; }

    /// <summary>Free length of each strand; with an idler, take that strand's parts instead.</summary>
    public required Length Span { get; init; }

    /// <summary>Motor speed over roller speed, by effective diameters.</summary>
    public required double SpeedRatio { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DriveBeltGeometry),
            (nameof(MotorPulleyWrap), MotorPulleyWrap),
            (nameof(RollerPulleyWrap), RollerPulleyWrap),
            (nameof(SmallPulleyWrap), SmallPulleyWrap),
            (nameof(LoopLength), LoopLength),
            (nameof(Span), Span),
            (nameof(SpeedRatio), SpeedRatio)
        );

    /// <summary>The geometry of a drive belt without an idler.</summary>
    /// <param name="belt">The belt; its effective diameters and centre distance.</param>
    /// <returns>The geometry; no answer where the pulleys would overlap.</returns>
    /// <exception cref="ArgumentNullException">The belt is null.</exception>
    public static Answer<DriveBeltGeometry> Of(DriveBelt belt)
    {
        ArgumentNullException.ThrowIfNull(belt);
        double motor = Si.Length.ToSi(belt.MotorPulleyDiameter);
        double roller = Si.Length.ToSi(belt.RollerPulleyDiameter);
        double centres = Si.Length.ToSi(belt.CentreDistance);
        double touching = 0.5 * (motor + roller);
        if (centres <= touching)
        {
            return new Shortfall(Reason.PartsOverlap, Inputs.PulleyCentreDistance.Name, touching, centres, "m");
        }

        double angle = LoopLaws.StrandAngle<Real>(0.5 * motor, 0.5 * roller, centres);
        return new DriveBeltGeometry
        {
            MotorPulleyWrap = Si.Angle.FromSi(LoopLaws.Wrap<Real>(angle)),
            RollerPulleyWrap = Si.Angle.FromSi(LoopLaws.Wrap<Real>(-angle)),
            LoopLength = Si.Length.FromSi(LoopLaws.Length<Real>(0.5 * motor, 0.5 * roller, centres)),
            Span = Si.Length.FromSi(LoopLaws.StrandLength<Real>(centres, angle)),
            SpeedRatio = DriveBeltLaws.SpeedRatio<Real>(motor, roller),
        };
    }
}
