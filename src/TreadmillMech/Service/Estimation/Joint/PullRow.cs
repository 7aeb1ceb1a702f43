using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>Pull of the belt by a scale: drag, friction inside the motor, friction of the deck.</summary>
internal sealed class PullRow(
    int happened,
    double force,
    double mass,
    double motorTorqueToPull,
    (double Relative, double Least) uncertainty,
    int drag,
    int motorFriction,
    int deck
)
    : VisitRow(
        happened,
        mass > 0 ? "dead-weight pull, loaded" : "dead-weight pull, empty",
        "N",
        force,
        drag,
        motorFriction,
        deck
    )
{
    internal override Dual<Lanes> Expect(ReadOnlySpan<Dual<Lanes>> at) =>
        at[0]
        + (motorTorqueToPull * at[1])
        + DeckLaws.FrictionForce(at[2], GaitLaws.MeanNormalForce<Dual<Lanes>>(mass, 0, 0));

    internal override double Uncertainty(ReadOnlySpan<Dual<Lanes>> at, double value) =>
        Math.Max(uncertainty.Least, uncertainty.Relative * value);
}
