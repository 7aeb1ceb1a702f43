using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>A machine, with and without the name that its owner knows it by.</summary>
internal static class MachineShapes
{
    internal static readonly ObjectShape<Treadmill> Machine = new(
        "treadmill",
        static it =>
        {
            ShapeSlot<RunningBelt> runningBelt = it.Need(
                "runningBelt",
                PartShapes.RunningBelt,
                static p => p.Belt,
                property: "Belt"
            );
            ShapeSlot<Roller> driveRoller = it.Need("driveRoller", PartShapes.Roller, static p => p.DriveRoller);
            ShapeSlot<Roller> tailRoller = it.Need("tailRoller", PartShapes.Roller, static p => p.TailRoller);
            ShapeSlot<Length> centreDistance = it.Need(
                "centreDistance",
                JsonKinds.Length,
                static p => p.CentreDistance
            );
            ShapeSlot<TakeUp> takeUp = it.Need("takeUp", PartShapes.TakeUp, static p => p.TakeUp);
            ShapeSlot<Deck> deck = it.Need("deck", PartShapes.Deck, static p => p.Deck);
            it.Set("driveEnd", WordTables.Ends, static p => p.DriveEnd, static (p, v) => p with { DriveEnd = v });
            it.May(
                "restTension",
                JsonKinds.Force,
                static p => p.RestTension,
                static (p, v) => p with { RestTension = v }
            );
            it.May("beltDrag", JsonKinds.Force, static p => p.BeltDrag, static (p, v) => p with { BeltDrag = v });
            it.Part(
                "driveBelt",
                DriveShapes.DriveBelt,
                static p => p.DriveBelt,
                static (p, v) => p with { DriveBelt = v }
            );
            it.Part("motor", DriveShapes.Motor, static p => p.Motor, static (p, v) => p with { Motor = v });
            it.Part("supply", DriveShapes.Supply, static p => p.Supply, static (p, v) => p with { Supply = v });
            it.Part("plate", PartShapes.Plate, static p => p.Plate, static (p, v) => p with { Plate = v });
            it.Make(values =>
                new()
                {
                    Belt = values.Get(runningBelt),
                    DriveRoller = values.Get(driveRoller),
                    TailRoller = values.Get(tailRoller),
                    CentreDistance = values.Get(centreDistance),
                    TakeUp = values.Get(takeUp),
                    Deck = values.Get(deck),
                }
            );
        }
    );

    internal static readonly ObjectShape<NamedMachine> Named = new(
        "machine",
        static it =>
        {
            ShapeSlot<string> name = it.Need("name", JsonKinds.Name, static p => p.Name);
            ShapeSlot<Treadmill> machine = it.Embed(Machine, static p => p.Machine);
            it.Part(
                "dynamics",
                DynamicsShapes.DriveDynamics,
                static p => p.Dynamics,
                static (p, v) => p with { Dynamics = v },
                "what decides how the speeds change"
            );
            it.Make(values => new(values.Get(name), values.Get(machine), null));
        }
    );
}
