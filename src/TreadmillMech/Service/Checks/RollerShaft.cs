using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Bending of the stub of a roller's shaft between its bearing and where the frame or bolt holds it.</summary>
/// <remarks>A solid round stub. On a shaft that turns the stress alternates; threads and shoulders raise it.</remarks>
public sealed record RollerShaft
{
    /// <summary>Force on one end: half of the roller's load.</summary>
    public required Force EndLoad { get; init; }

    /// <summary>Bending moment.</summary>
    public required Torque Moment { get; init; }

    /// <summary>Bending stress at its face.</summary>
    public required Pressure Stress { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(RollerShaft),
            (nameof(EndLoad), EndLoad),
            (nameof(Moment), Moment),
            (nameof(Stress), Stress)
        );

    /// <summary>The bending of a shaft of a machine.</summary>
    /// <param name="machine">The machine; of it tension and geometry.</param>
    /// <param name="place">Which roller.</param>
    /// <param name="diameter">Diameter of the stub, 4 mm to 80 mm.</param>
    /// <param name="overhang">Distance from the bearing to where the shaft is held, 1 mm to 0.3 m.</param>
    /// <param name="demand">The demand; null for the belt at rest.</param>
    /// <returns>The bending; no answer where the load is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<RollerShaft> Of(
        Treadmill machine,
        RollerPlace place,
        Length diameter,
        Length overhang,
        Demand? demand = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        RollerPlace roller = Guard.Defined(place, nameof(place));
        double thick = Si.Length.ToSi(Guard.Within(diameter, Si.Length, 0.004, 0.08, nameof(diameter)));
        double arm = Si.Length.ToSi(Guard.Within(overhang, Si.Length, 0.001, 0.3, nameof(overhang)));
        double second = RollerLaws.TubeSecondMoment<Real>(thick, 0.5 * thick);
        return RollerLoads
            .Of(machine, roller, demand)
            .Then(load =>
            {
                double moment = RollerLaws.OverhangMoment<Real>(0.5 * load, arm);
                return new RollerShaft
                {
                    EndLoad = Si.Force.FromSi(0.5 * load),
                    Moment = Si.Torque.FromSi(moment),
                    Stress = Si.Pressure.FromSi(RollerLaws.BendingStress<Real>(moment, thick, second)),
                };
            });
    }
}
