using System.Collections.Immutable;
using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What a drive belt holds, driving and braking, by every kind of tensioning side by side.</summary>
/// <remarks>
/// Ribs wedge in their grooves and grip as if the friction were larger; worn or bottomed ribs tend to a flat belt. The truth
/// lies between both, and no source says where for a worn belt.
/// </remarks>
public sealed record DriveBeltGrip
{
    /// <summary>Wrap of the smaller pulley, where the belt slips first.</summary>
    public required Angle SmallPulleyWrap { get; init; }

    /// <summary>Effective friction, from worn flat to wedged as new.</summary>
    public required Bounds Friction { get; init; }

    /// <summary>Ratio of the tensions at which the belt slips, worn and new.</summary>
    public required Bounds TensionRatio { get; init; }

    /// <summary>The belt as it is tensioned on this machine.</summary>
    public required TensioningGrip Own { get; init; }

    /// <summary>Every kind of tensioning with the same tension kept.</summary>
    public required ImmutableArray<TensioningGrip> Kinds { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DriveBeltGrip),
            (nameof(SmallPulleyWrap), SmallPulleyWrap),
            (nameof(Friction), Friction),
            (nameof(TensionRatio), TensionRatio),
            (nameof(Own), Own),
            (nameof(Kinds), Kinds)
        );

    /// <summary>What a drive belt holds.</summary>
    /// <param name="belt">The belt; its tension and friction must be known.</param>
    /// <param name="beltSpeed">Speed of the drive belt itself, 0 to 60 m/s; 0 at rest.</param>
    /// <returns>
    /// The grip; no answer where tension or friction is not known, the pulleys would overlap, or the belt would fly off its
    /// pulleys.
    /// </returns>
    /// <remarks>
    /// The tension is that which the tensioner keeps: of both strands on fixed centres, of its own strand with an idler. Without a
    /// mass the centrifugal part, a few newtons, is left out.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The belt is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside the range.</exception>
    public static Answer<DriveBeltGrip> Of(DriveBelt belt, Speed beltSpeed)
    {
        ArgumentNullException.ThrowIfNull(belt);
        double speed = Si.Speed.ToSi(Guard.Within(beltSpeed, Si.Speed, 0, 60, nameof(beltSpeed)));
        if (belt.Tension is not { } kept)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.DriveBeltTension.Name);
        }

        if (belt.Friction is not { } friction)
        {
            return new Shortfall(Reason.InputUnknown, Inputs.DriveBeltFriction.Name);
        }

        if (!DriveBeltGeometry.Of(belt).Is(out DriveBeltGeometry? geometry))
        {
            return DriveBeltGeometry.Of(belt).Missing;
        }

        double tension = Si.Force.ToSi(kept);
        double mass = belt.MassPerLength is { } known ? Si.MassPerLength.ToSi(known) : 0;
        double centrifugal = BeltLaws.CentrifugalTension<Real>(mass, speed);
        if (centrifugal >= tension)
        {
            return new Shortfall(Reason.SlackBelt, Inputs.DriveBeltTension.Name, centrifugal, tension, "N");
        }

        double wrap = Si.Angle.ToSi(geometry.SmallPulleyWrap);
        double wedged = TractionLaws.WedgedFriction<Real>(friction, 0.5 * Si.Angle.ToSi(belt.GrooveAngle));
        Bounds ratios = new(
            TractionLaws.TensionRatio<Real>(friction, wrap),
            TractionLaws.TensionRatio<Real>(wedged, wrap)
        );
        TensioningGrip Row(Tensioning kind) => Grip(kind, tension, centrifugal, ratios);
        return new DriveBeltGrip
        {
            SmallPulleyWrap = geometry.SmallPulleyWrap,
            Friction = new(friction, wedged),
            TensionRatio = ratios,
            Own = Row(belt.Tensioning),
            Kinds = [.. Enum.GetValues<Tensioning>().Where(kind => kind != Tensioning.DirectDrive).Select(Row)],
        };
    }

    private static TensioningGrip Grip(Tensioning kind, double tension, double centrifugal, Bounds ratios)
    {
        Real kept = DriveBeltStage.Kept<Real>(kind, tension, centrifugal);
        (Real driving, Real braking) = DriveBeltStage.BothWays<Real>(kind, kept, ratios.To);
        (Real drivingWorn, Real brakingWorn) = DriveBeltStage.BothWays<Real>(kind, kept, ratios.From);
        return new(
            kind,
            Si.Force.FromSi(driving),
            Si.Force.FromSi(drivingWorn),
            Si.Force.FromSi(braking),
            Si.Force.FromSi(brakingWorn)
        );
    }
}
