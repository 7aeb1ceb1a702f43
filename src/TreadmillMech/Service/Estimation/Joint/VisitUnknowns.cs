using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// The unknowns of a visit with their priors. What work changes is a new unknown after it, with its own prior; the
/// lists hold one entry for each state, as found first.
/// </summary>
internal sealed class VisitUnknowns
{
    /// <summary>Least centre of a given value: zero has no logarithm.</summary>
    private const double Least = 1e-3;

    private readonly List<VisitUnknown> all = [];
    private readonly VisitOptions options;

    internal VisitUnknowns(
        Treadmill machine,
        VisitOptions options,
        bool oilyRoller,
        bool suspectDriveBelt,
        bool glazedDriveBelt,
        bool suspectMotor
    )
    {
        this.options = options;
        double width = Si.Length.ToSi(machine.Belt.Width);
        Tension = Log("RestTension", options.PriorTension.Value * width, options.PriorTensionSpread);
        Stiffness = Log(
            "BeltStiffness",
            Strength(options.PriorBeltStiffness.Value, width),
            options.PriorBeltStiffnessSpread,
            machine.Belt.RelaxedForcePerWidth is { } relaxed ? Strength(Si.ForcePerLength.ToSi(relaxed), width) : null
        );
        Deck.Add(
            Log("DeckFriction", options.PriorDeckFriction.Value, options.PriorDeckFrictionSpread, machine.Deck.Friction)
        );
        Drag.Add(
            Log(
                "BeltDrag",
                options.PriorBeltDrag.Value,
                options.PriorBeltDragSpread,
                machine.BeltDrag is { } drag ? Si.Force.ToSi(drag) : null
            )
        );
        Roller.Add(
            Log(
                "DriveRollerFriction",
                (oilyRoller ? options.OilyRollerFriction : options.PriorRollerFriction).Value,
                oilyRoller ? options.OilyRollerFrictionSpread : options.PriorRollerFrictionSpread,
                oilyRoller ? null : machine.DriveRoller.Friction
            )
        );
        DcMotor? motor = machine.Motor;
        MotorConstant = Log(
            "MotorConstant",
            options.PriorMotorConstant.Value,
            options.PriorMotorConstantSpread,
            motor?.Constant?.VoltSecondsPerRadian * (suspectMotor ? options.SuspectMotorConstant.Value : 1),
            suspectMotor ? options.SuspectMotorConstantSpread : options.PlateConstantSpread
        );
        MotorFriction = Log(
            "MotorFrictionTorque",
            options.PriorMotorFriction.Value,
            options.PriorMotorFrictionSpread,
            motor?.FrictionTorque is { } torque ? Si.Torque.ToSi(torque) : null
        );
        Resistance = Log(
            "ArmatureResistance",
            options.PriorArmatureResistance.Value,
            options.PriorArmatureResistanceSpread,
            motor?.ResistanceAtWork is { } ohms ? Si.Resistance.ToSi(ohms) : null
        );
        BrushDrop = Plain("BrushDrop", motor is null ? 2 : Si.Voltage.ToSi(motor.BrushDrop), options.BrushDropSpread);
        Efficiency = Log(
            "ControllerEfficiency",
            options.PriorControllerEfficiency.Value,
            options.PriorControllerEfficiencySpread,
            machine.Supply?.ControllerEfficiency is { } share ? Si.Ratio.ToSi(share) : null
        );
        Standby = Log(
            "StandbyPower",
            machine.Supply is null ? 10 : Math.Max(1, Si.Power.ToSi(machine.Supply.StandbyPower)),
            options.StandbyPowerSpread
        );
        if (machine.DriveBelt is { } belt)
        {
            DriveBelt.Add(
                Log(
                    "DriveBeltTension",
                    options.PriorDriveBeltTension.Value,
                    options.PriorDriveBeltTensionSpread,
                    belt.Tension is { } tension && !suspectDriveBelt ? Si.Force.ToSi(tension) : null
                )
            );
            DriveBeltFriction.Add(
                Log(
                    "DriveBeltFriction",
                    (glazedDriveBelt ? options.GlazedDriveBeltFriction : options.PriorDriveBeltFriction).Value,
                    glazedDriveBelt ? options.GlazedDriveBeltFrictionSpread : options.PriorDriveBeltFrictionSpread,
                    suspectDriveBelt ? null : belt.Friction
                )
            );
        }
    }

    internal IReadOnlyList<VisitUnknown> All => all;

    internal int Tension { get; }

    internal int Stiffness { get; }

    internal int MotorConstant { get; }

    internal int MotorFriction { get; }

    internal int Resistance { get; }

    internal int BrushDrop { get; }

    internal int Efficiency { get; }

    internal int Standby { get; }

    internal List<int> Deck { get; } = [];

    internal List<int> Drag { get; } = [];

    internal List<int> Roller { get; } = [];

    internal List<int> DriveBelt { get; } = [];

    internal List<int> DriveBeltFriction { get; } = [];

    /// <summary>The deck was cleaned or lubricated: another friction, and a drag near the one before.</summary>
    internal void ServiceDeck()
    {
        string after = After(Deck);
        Deck.Add(
            Log(
                "DeckFriction" + after,
                options.FrictionAfterService.Value,
                options.FrictionAfterServiceSpread,
                broad: options.PriorDeckFrictionSpread
            )
        );
        all.Add(
            all[Drag[^1]] with
            {
                Name = "BeltDrag" + after,
                Spread = options.BeltDragChange.Value,
                TiedTo = Drag[^1],
            }
        );
        Drag.Add(all.Count - 1);
    }

    /// <summary>Bolts were turned: with the tension the drag of rollers and belt changes somewhat.</summary>
    internal void TurnBolts(double turns)
    {
        all.Add(
            all[Drag[^1]] with
            {
                Name = "BeltDrag" + After(Drag),
                Spread = options.BeltDragChangeOfTurn.Value * turns,
                TiedTo = Drag[^1],
            }
        );
        Drag.Add(all.Count - 1);
    }

    internal void CleanRollers() =>
        Roller.Add(
            Log(
                "DriveRollerFriction" + After(Roller),
                options.CleanRollerFriction.Value,
                options.CleanRollerFrictionSpread,
                broad: options.PriorRollerFrictionSpread
            )
        );

    /// <param name="given">Friction that the machine was described with, which a new belt has again; null where unknown.</param>
    /// <param name="replaced">Whether the belt is a new one.</param>
    internal void WorkOnDriveBelt(double? given, bool replaced)
    {
        if (DriveBelt.Count > 0)
        {
            if (replaced)
            {
                DriveBeltFriction.Add(
                    Log(
                        "DriveBeltFriction" + After(DriveBelt),
                        options.PriorDriveBeltFriction.Value,
                        options.PriorDriveBeltFrictionSpread,
                        given
                    )
                );
            }

            DriveBelt.Add(
                Log(
                    "DriveBeltTension" + After(DriveBelt),
                    options.ServicedDriveBeltTension.Value,
                    options.ServicedDriveBeltTensionSpread,
                    broad: options.PriorDriveBeltTensionSpread
                )
            );
        }
    }

    private static string After(List<int> states) => states.Count == 1 ? " after work" : $" after work {states.Count}";

    private static double Strength(double perWidth, double width) => BeltLaws.Stiffness<Real>(perWidth, width);

    private int Log(
        string name,
        double centre,
        Threshold spread,
        double? given = null,
        Threshold? givenSpread = null,
        Threshold? broad = null
    )
    {
        double own = given is null ? spread.Value : (givenSpread ?? options.GivenValueSpread).Value;
        all.Add(
            new(
                name,
                Logarithmic: true,
                Math.Log(Math.Max(Least, given ?? centre)),
                own,
                Math.Max((broad ?? spread).Value, spread.Value)
            )
        );
        return all.Count - 1;
    }

    private int Plain(string name, double centre, Threshold spread)
    {
        all.Add(new(name, Logarithmic: false, centre, spread.Value, spread.Value));
        return all.Count - 1;
    }
}
