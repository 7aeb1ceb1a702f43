using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What lubricant that found its way to the drive roller does: the deck runs easier, but the roller grips less.</summary>
/// <remarks>Turns do not cure it: clean the roller. Wipe it only with the belt at rest and the machine unplugged.</remarks>
public sealed record LubricatedRoller
{
    private const double Least = 0.02;

    /// <summary>Friction of the drive roller with lubricant on it.</summary>
    public required double RollerFriction { get; init; }

    /// <summary>Mean pull before.</summary>
    public required Answer<Force> PullBefore { get; init; }

    /// <summary>Mean pull with the lubricant.</summary>
    public required Answer<Force> PullAfter { get; init; }

    /// <summary>Margin of the running belt before.</summary>
    public required Answer<double> MarginBefore { get; init; }

    /// <summary>Margin of the running belt with the lubricant.</summary>
    public required Answer<double> MarginAfter { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(LubricatedRoller),
            (nameof(RollerFriction), RollerFriction),
            (nameof(PullBefore), PullBefore),
            (nameof(PullAfter), PullAfter),
            (nameof(MarginBefore), MarginBefore),
            (nameof(MarginAfter), MarginAfter)
        );

    /// <summary>A machine's drive roller with lubricant on it.</summary>
    /// <param name="machine">The machine; its frictions are those of a clean roller and of the deck before.</param>
    /// <param name="demand">The demand.</param>
    /// <param name="rollerFactor">Friction of the roller with lubricant over that without, 0.05 to 1.</param>
    /// <param name="deckFactor">Friction of the deck with lubricant over that before, 0.05 to 1; 1 leaves it as it is.</param>
    /// <returns>The state; no answer where the roller's friction is not known, or a friction falls below 0.02.</returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor is outside its range.</exception>
    public static Answer<LubricatedRoller> Of(
        Treadmill machine,
        Demand demand,
        double rollerFactor,
        double deckFactor = 1
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double roller = Guard.Within(rollerFactor, Si.One, 0.05, 1, nameof(rollerFactor));
        double deck = Guard.Within(deckFactor, Si.One, 0.05, 1, nameof(deckFactor));
        double? onDeck = machine.Deck.Friction * deck;
        return onDeck < Least
            ? new Shortfall(Reason.NotInRange, Model.Inputs.DeckFriction.Name, Least, onDeck.Value, "1")
            : Inquiry
                .Of(machine.DriveRoller.Friction, Model.Inputs.DriveRollerFriction.Name)
                .Ask(clean => At(machine, demand, clean * roller, onDeck));
    }

    private static Answer<LubricatedRoller> At(Treadmill machine, Demand demand, double friction, double? onDeck)
    {
        if (friction < Least)
        {
            return new Shortfall(Reason.NotInRange, Model.Inputs.DriveRollerFriction.Name, Least, friction, "1");
        }

        OperatingPoint before = machine.At(demand);
        OperatingPoint after = (
            machine with
            {
                DriveRoller = machine.DriveRoller with { Friction = friction },
                Deck = machine.Deck with { Friction = onDeck },
            }
        ).At(demand);
        return new LubricatedRoller
        {
            RollerFriction = friction,
            PullBefore = before.MeanPull,
            PullAfter = after.MeanPull,
            MarginBefore = before.BeltMargin,
            MarginAfter = after.BeltMargin,
        };
    }
}
