using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How far a roller bends under the belt, and what stress its tube bears.</summary>
/// <remarks>
/// The belt's mean load, spread evenly over its width in the middle between the bearings; the drive belt's load on the drive
/// roller is not in it. The stress alternates with each turn of the roller.
/// </remarks>
public sealed record RollerBending
{
    /// <summary>Load of the belt on the roller.</summary>
    public required Force Load { get; init; }

    /// <summary>Deflection at the middle; no answer where the elastic modulus is not known.</summary>
    public required Answer<Length> Deflection { get; init; }

    /// <summary>Bending moment at the middle.</summary>
    public required Torque Moment { get; init; }

    /// <summary>Bending stress at the face of the tube at the middle.</summary>
    public required Pressure Stress { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(RollerBending),
            (nameof(Load), Load),
            (nameof(Deflection), Deflection),
            (nameof(Moment), Moment),
            (nameof(Stress), Stress)
        );

    /// <summary>The bending of a roller of a machine.</summary>
    /// <param name="machine">The machine; of it tension, geometry and the belt's width.</param>
    /// <param name="place">Which roller.</param>
    /// <param name="tube">Its tube.</param>
    /// <param name="demand">The demand; null for the belt at rest.</param>
    /// <returns>
    /// The bending; no answer where the load is not known, the tube's bore is not smaller than its outside, or the belt is
    /// wider than the distance of the bearings.
    /// </returns>
    /// <exception cref="ArgumentNullException">The machine or the tube is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The place is not defined.</exception>
    public static Answer<RollerBending> Of(Treadmill machine, RollerPlace place, RollerTube tube, Demand? demand = null)
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(tube);
        RollerPlace roller = Guard.Defined(place, nameof(place));
        double outer = Si.Length.ToSi(tube.OuterDiameter);
        double inner = Si.Length.ToSi(tube.InnerDiameter);
        double span = Si.Length.ToSi(tube.BearingSpan);
        double width = Si.Length.ToSi(machine.Belt.Width);
        return inner >= outer ? new Shortfall(Reason.PartsOverlap, nameof(RollerTube.InnerDiameter), outer, inner, "m")
            : width > span ? new Shortfall(Reason.NotInRange, nameof(RollerTube.BearingSpan), width, span, "m")
            : RollerLoads.Of(machine, roller, demand).Then(load => At(tube, load, width, span));
    }

    private static RollerBending At(RollerTube tube, double load, double width, double span)
    {
        double outer = Si.Length.ToSi(tube.OuterDiameter);
        double second = RollerLaws.TubeSecondMoment<Real>(outer, 0.5 * (outer - Si.Length.ToSi(tube.InnerDiameter)));
        double moment = RollerLaws.BendingMoment<Real>(load, width, span);
        return new()
        {
            Load = Si.Force.FromSi(load),
            Deflection = Inquiry
                .Of(tube.ModulusUsed, nameof(RollerTube.ElasticModulus))
                .Then(modulus =>
                    Si.Length.FromSi(RollerLaws.Deflection<Real>(load, width, span, Si.Pressure.ToSi(modulus), second))
                ),
            Moment = Si.Torque.FromSi(moment),
            Stress = Si.Pressure.FromSi(RollerLaws.BendingStress<Real>(moment, outer, second)),
        };
    }
}
