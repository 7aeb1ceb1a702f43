using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Estimation;

/// <summary>Friction between running belt and drive roller, from the pull at which it slips with the roller held.</summary>
public static class RollerFriction
{
    /// <summary>From a locked pull at the middle of the top strand, towards the console.</summary>
    /// <param name="machine">The machine; of it the loop, and the give of its rollers' mountings.</param>
    /// <param name="pull">Pull at which the belt slid on the standing roller, 1 to 5000 N.</param>
    /// <param name="tension">Strand tension at rest at that time with its standard uncertainty.</param>
    /// <param name="scaleUncertainty">Relative standard uncertainty of the scale; the default where null.</param>
    /// <returns>
    /// Friction and its standard uncertainty; no answer where the slack side would have hung loose at that pull, or no
    /// roller has such a friction.
    /// </returns>
    /// <remarks>
    /// The tensions on both sides follow from the loop's conserved length, <see cref="TractionLaws.SlackTension"/> and
    /// <see cref="TractionLaws.TightTension"/>; the friction from their ratio,
    /// <see cref="TractionLaws.FrictionFromTensions"/>. The belt's own drag on the deck is left out and reads as friction:
    /// pull slowly, with nobody on the belt.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pull is outside its range.</exception>
    public static Answer<Estimate<double>> FromLockedPull(
        Treadmill machine,
        Force pull,
        Estimate<Force> tension,
        double? scaleUncertainty = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        double newtons = Si.Force.ToSi(Guard.Within(pull, Si.Force, 1, 5000, nameof(pull)));
        double rest = Si.Force.ToSi(tension.Value);
        LoopGeometry loop = new(machine);
        return loop.MiddleShare.Is(out double share)
            ? At(
                loop,
                share,
                (newtons, newtons * (scaleUncertainty ?? VisitOptions.Default.ScaleForce.Value)),
                (rest, Si.Force.ToSi(tension.StandardUncertainty))
            )
            : loop.MiddleShare.Missing;
    }

    private static Answer<Estimate<double>> At(
        LoopGeometry loop,
        double share,
        (double Value, double Uncertainty) pull,
        (double Value, double Uncertainty) tension
    )
    {
        double slack = TractionLaws.SlackTension<Real>(tension.Value, pull.Value, pull.Value * share);
        if (!(slack > 0))
        {
            return new Shortfall(
                Reason.ReadingsContradict,
                "RestTension",
                pull.Value * (1 - share),
                tension.Value,
                "N"
            );
        }

        (double friction, double uncertainty) = ReadValue.Of(
            read => Friction(loop, share, read[0], read[1]),
            pull,
            tension
        );
        return friction is >= Roller.LeastFriction and <= Roller.MostFriction
            ? new Estimate<double>(friction, uncertainty)
            : new Shortfall(
                Reason.NotInRange,
                "DriveRollerFriction",
                Math.Clamp(friction, Roller.LeastFriction, Roller.MostFriction),
                friction,
                "1"
            );
    }

    private static Dual<Real> Friction(LoopGeometry loop, double share, Dual<Real> pull, Dual<Real> tension) =>
        TractionLaws.FrictionFromTensions(
            TractionLaws.TightTension(tension, pull * share),
            TractionLaws.SlackTension(tension, pull, pull * share),
            loop.DriveWrap.Value
        );
}
