using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>Drag of a belt whose line is bent over the ends of the deck: it grows with the tension.</summary>
public sealed record DeckEdgeDrag
{
    /// <summary>Force of the belt on both ends of the deck together.</summary>
    public required Force NormalForce { get; init; }

    /// <summary>Drag of both ends; no answer where the deck's friction is not known.</summary>
    public required Answer<Force> Drag { get; init; }

    /// <summary>Share of the belt's drag with nobody on it; no answer where that or the deck's friction is not known.</summary>
    public required Answer<Ratio> ShareOfBeltDrag { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(DeckEdgeDrag),
            (nameof(NormalForce), NormalForce),
            (nameof(Drag), Drag),
            (nameof(ShareOfBeltDrag), ShareOfBeltDrag)
        );

    /// <summary>The drag over a machine's deck.</summary>
    /// <param name="machine">The machine; of it tension, deck friction and belt drag.</param>
    /// <param name="front">Angle of the belt's bend at the front end of the deck, 0 to 30 degrees, see <see cref="AngleOf"/>.</param>
    /// <param name="rear">The same at the rear end.</param>
    /// <returns>The drag; no answer where the tension is not known, or the belt hangs loose.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    public static Answer<DeckEdgeDrag> Of(Treadmill machine, Angle front, Angle rear)
    {
        ArgumentNullException.ThrowIfNull(machine);
        double first = Si.Angle.ToSi(Guard.Within(front, Si.Angle, 0, Math.PI / 6, nameof(front)));
        double second = Si.Angle.ToSi(Guard.Within(rear, Si.Angle, 0, Math.PI / 6, nameof(rear)));
        Answer<double> belt = Inquiry.Of(machine.BeltDrag, nameof(Treadmill.BeltDrag)).Then(Si.Force.ToSi);
        return Inquiry
            .TautTension(new(machine))
            .Then(tension =>
            {
                double normal = BeltLifeLaws.DeckEdgeForce<Real>(tension, first, second);
                Answer<double> drag = Inquiry
                    .Of(machine.Deck.Friction, Model.Inputs.DeckFriction.Name)
                    .Then(friction => (double)DeckLaws.FrictionForce<Real>(friction, normal));
                return new DeckEdgeDrag
                {
                    NormalForce = Si.Force.FromSi(normal),
                    Drag = drag.Then(Si.Force.FromSi),
                    ShareOfBeltDrag = drag.Ask(part => belt.Ask(whole => Share(part, whole))),
                };
            });
    }

    /// <summary>Angle of the belt's bend from what a ruler tells.</summary>
    /// <param name="rise">Height of the deck's face above the line of the free belt at the roller, 0 to 0.1 m.</param>
    /// <param name="distance">Distance from the roller's axis to the end of the deck, 10 mm to 1 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static Angle AngleOf(Length rise, Length distance) =>
        Si.Angle.FromSi(
            BeltLifeLaws.DeckEdgeAngle<Real>(
                Si.Length.ToSi(Guard.Within(rise, Si.Length, 0, 0.1, nameof(rise))),
                Si.Length.ToSi(Guard.Within(distance, Si.Length, 0.01, 1, nameof(distance)))
            )
        );

    private static Answer<Ratio> Share(double part, double whole) =>
        whole > 0
            ? Si.Ratio.FromSi(part / whole)
            : new Shortfall(Reason.ReadingsContradict, nameof(Treadmill.BeltDrag), part, whole, "N");
}
