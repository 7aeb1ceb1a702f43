using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Peak force of a jump, drop or stumble on the machine.</summary>
/// <remarks>
/// No damping, and a body as one mass: upper bounds for a stiff fall, too large for one that bends its knees. A bound for the machine's
/// parts, never a statement on what a person bears.
/// </remarks>
public sealed record ImpactLoad
{
    /// <summary>Peak force.</summary>
    public required Force PeakForce { get; init; }

    /// <summary>The same in weights of the body.</summary>
    public required double BodyWeights { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(nameof(ImpactLoad), (nameof(PeakForce), PeakForce), (nameof(BodyWeights), BodyWeights));

    /// <summary>Somebody or something falls on the deck.</summary>
    /// <param name="mass">Mass, 0.1 to 350 kg.</param>
    /// <param name="height">Height of fall before it touches, 0 to 3 m.</param>
    /// <param name="stiffness">Stiffness of what it falls on and of the body in series, 1 N/mm to 100 kN/mm; see <see cref="DeckBending.Stiffness"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ImpactLoad OfDrop(Mass mass, Length height, ForcePerLength stiffness)
    {
        double body = Body(mass);
        return At(
            body,
            DeckWearLaws.DropForce<Real>(
                body,
                Si.Length.ToSi(Guard.Within(height, Si.Length, 0, 3, nameof(height))),
                Spring(stiffness)
            )
        );
    }

    /// <summary>Somebody lands on the deck from a jump.</summary>
    /// <param name="mass">Mass, 0.1 to 350 kg.</param>
    /// <param name="height">Height of the feet above the deck at the top of the jump, 0 to 3 m.</param>
    /// <param name="stiffness">Stiffness of deck and legs in series, 1 N/mm to 100 kN/mm; legs kept stiff for an upper bound.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ImpactLoad OfJump(Mass mass, Length height, ForcePerLength stiffness) =>
        OfDrop(mass, height, stiffness);

    /// <summary>Somebody is stopped by the machine from a speed, as in a stumble against its front.</summary>
    /// <param name="mass">Mass, 0.1 to 350 kg.</param>
    /// <param name="speed">Speed to be lost, 0 to 12 m/s.</param>
    /// <param name="stiffness">Stiffness between body and machine, 1 N/mm to 100 kN/mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ImpactLoad OfStumble(Mass mass, Speed speed, ForcePerLength stiffness)
    {
        double body = Body(mass);
        return At(
            body,
            DeckWearLaws.StopForce<Real>(
                body,
                Si.Speed.ToSi(Guard.Within(speed, Si.Speed, 0, 12, nameof(speed))),
                Spring(stiffness)
            )
        );
    }

    private static double Body(Mass mass) => Si.Mass.ToSi(Guard.Within(mass, Si.Mass, 0.1, 350, nameof(mass)));

    private static double Spring(ForcePerLength stiffness) =>
        Si.ForcePerLength.ToSi(Guard.Within(stiffness, Si.ForcePerLength, 1e3, 1e8, nameof(stiffness)));

    private static ImpactLoad At(double mass, double force) =>
        new() { PeakForce = Si.Force.FromSi(force), BodyWeights = force / GaitLaws.MeanNormalForce<Real>(mass, 0, 0) };
}
