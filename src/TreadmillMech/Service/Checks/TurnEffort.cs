using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>How hard the next turn of a take-up bolt is at this tension.</summary>
/// <remarks>
/// Friction scatters by a quarter and more. A bolt that is much harder to turn than this is dirty, bent or at its end: stop.
/// Turn only with the belt at rest and the machine unplugged.
/// </remarks>
public sealed record TurnEffort
{
    /// <summary>Torque at the beginning of the turn; no answer where only the lead of the thread is known.</summary>
    public required Answer<Torque> TorqueAtStart { get; init; }

    /// <summary>Torque at its end; no answer without the belt's stiffness.</summary>
    public required Answer<Torque> TorqueAtEnd { get; init; }

    /// <summary>Force of the hand at the end of the key, at the beginning.</summary>
    public required Answer<Force> HandForceAtStart { get; init; }

    /// <summary>Force of the hand at the end of the key, at the end.</summary>
    public required Answer<Force> HandForceAtEnd { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TurnEffort),
            (nameof(TorqueAtStart), TorqueAtStart),
            (nameof(TorqueAtEnd), TorqueAtEnd),
            (nameof(HandForceAtStart), HandForceAtStart),
            (nameof(HandForceAtEnd), HandForceAtEnd)
        );

    /// <summary>The effort of turning both bolts of a machine by the same turn, one after the other.</summary>
    /// <param name="machine">The machine; of it tension, stiffness, rollers and take-up.</param>
    /// <param name="keyLength">Distance of the hand from the bolt's axis, 20 mm to 0.6 m.</param>
    /// <param name="turns">Turns, 0.01 to 2, that tighten; a quarter where not given.</param>
    /// <param name="friction">Friction in the thread, 0.02 to 0.6; about 0.15 for dry steel (common practice).</param>
    /// <param name="collar">What rubs under head or nut; null where nothing does.</param>
    /// <returns>The effort; no answer where the tension is not known, or the belt hangs loose.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Answer<TurnEffort> Of(
        Treadmill machine,
        Length keyLength,
        double turns = 0.25,
        double friction = 0.15,
        Collar? collar = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        double arm = Si.Length.ToSi(Guard.Within(keyLength, Si.Length, 0.02, 0.6, nameof(keyLength)));
        double given = Guard.Within(turns, Si.One, 0.01, 2, nameof(turns));
        double rubbing = Guard.Within(friction, Si.One, 0.02, 0.6, nameof(friction));
        LoopGeometry loop = new(machine);
        return Inquiry
            .TautTension(loop)
            .Then(tension =>
            {
                Answer<double> start = Torque(tension);
                Answer<double> end = loop.TensionAfter(given, given).Ask(Torque);
                return new TurnEffort
                {
                    TorqueAtStart = start.Then(Si.Torque.FromSi),
                    TorqueAtEnd = end.Then(Si.Torque.FromSi),
                    HandForceAtStart = start.Then(Hand),
                    HandForceAtEnd = end.Then(Hand),
                };
            });

        Answer<double> Torque(double tension) =>
            ScrewTorques
                .Of(machine.TakeUp.Thread, BoltCheck.AxialForce(machine, loop, tension), rubbing, collar)
                .Then(torques => torques.Raising);

        Force Hand(double torque) => Si.Force.FromSi(ScrewTorqueLaws.HandForce<Real>(torque, arm));
    }
}
