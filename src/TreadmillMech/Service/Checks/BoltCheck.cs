using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What a take-up bolt carries at the machine's tension, and how much thread it has left.</summary>
/// <remarks>
/// "Suddenly hard to turn" means stop. Turn bolts only with the belt at rest and the machine unplugged; the maker's manual
/// comes first.
/// </remarks>
public sealed record BoltCheck
{
    /// <summary>One bolt under its share of the adjusted roller's load at rest.</summary>
    public required ScrewCheck Screw { get; init; }

    /// <summary>Turns until the thread ends; no answer where the thread left was not measured.</summary>
    public required Answer<double> TurnsLeft { get; init; }

    /// <summary>Strand tension there; no answer without the thread left and the belt's stiffness.</summary>
    public required Answer<Force> TensionAtThreadEnd { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(BoltCheck),
            (nameof(Screw), Screw),
            (nameof(TurnsLeft), TurnsLeft),
            (nameof(TensionAtThreadEnd), TensionAtThreadEnd)
        );

    /// <summary>Checks the take-up bolts of a machine at its strand tension.</summary>
    /// <param name="machine">The machine; of it tension, rollers and take-up.</param>
    /// <param name="friction">Friction in the thread, 0.02 to 0.6; about 0.15 for dry steel (common practice).</param>
    /// <param name="boltClass">Property class stamped on the heads; null where there is no stamp.</param>
    /// <param name="collar">What rubs under head or nut; null where nothing does.</param>
    /// <returns>The check; no answer where the tension is not known, or the belt hangs loose.</returns>
    /// <remarks>
    /// Each of two bolts carries half of the roller's load, one bolt all of it; of bolts at an angle the guide carries a part.
    /// </remarks>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Friction or class is outside its range.</exception>
    public static Answer<BoltCheck> Of(
        Treadmill machine,
        double friction = 0.15,
        BoltClass? boltClass = null,
        Collar? collar = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        double rubbing = Guard.Within(friction, Si.One, 0.02, 0.6, nameof(friction));
        BoltClass? known = boltClass is { } given ? Guard.Defined(given, nameof(boltClass)) : null;
        LoopGeometry loop = new(machine);
        Answer<double> turns = Inquiry
            .Of(machine.TakeUp.ThreadLeft, nameof(TakeUp.ThreadLeft))
            .Then(left => (double)ScrewThreadLaws.Turns<Real>(loop.Numbers.ThreadLead, Si.Length.ToSi(left)));
        return Inquiry
            .TautTension(loop)
            .Then(tension => new BoltCheck
            {
                Screw = ScrewCheck.At(
                    machine.TakeUp.Thread,
                    AxialForce(machine, loop, tension),
                    rubbing,
                    known,
                    collar
                ),
                TurnsLeft = turns,
                TensionAtThreadEnd = turns.Ask(n => loop.TensionAfter(n, n)).Then(Si.Force.FromSi),
            });
    }

    /// <summary>Axial force of one bolt at a strand tension [N].</summary>
    internal static double AxialForce(Treadmill machine, LoopGeometry loop, double tension) =>
        TakeUpLaws.BoltForce<Real>(
            RollerLoads.AtRest(loop, RollerLoads.Adjusted(machine), tension),
            machine.TakeUp.Bolts,
            loop.Numbers.BoltAngle
        );
}
