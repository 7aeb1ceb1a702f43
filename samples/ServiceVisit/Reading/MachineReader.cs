using TreadmillMech.Parts;
using TreadmillMech.Samples.ServiceVisit.Json;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>The machine and its name.</summary>
internal static class MachineReader
{
    internal static NamedMachine? Read(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        string? name = fields.Need("name", Kinds.Name);
        RunningBelt? belt = fields.NeedPart("runningBelt", PartReaders.RunningBelt);
        Roller? drive = fields.NeedPart("driveRoller", PartReaders.Roller);
        Roller? tail = fields.NeedPart("tailRoller", PartReaders.Roller);
        Length centres = fields.Need("centreDistance", Kinds.Length);
        TakeUp? takeUp = fields.NeedPart("takeUp", PartReaders.TakeUp);
        Deck? deck = fields.NeedPart("deck", PartReaders.Deck);
        Treadmill? machine = fields.Make(() =>
            new Treadmill
            {
                Belt = belt!,
                DriveRoller = drive!,
                TailRoller = tail!,
                CentreDistance = centres,
                TakeUp = takeUp!,
                Deck = deck!,
            }
        );
        machine = fields.Set(machine, "driveEnd", WordTables.Ends.Kind, static (it, v) => it with { DriveEnd = v });
        machine = fields.Set(machine, "restTension", Kinds.Force, static (it, v) => it with { RestTension = v });
        machine = fields.Set(machine, "beltDrag", Kinds.Force, static (it, v) => it with { BeltDrag = v });
        machine = fields.SetPart(
            machine,
            "driveBelt",
            DriveReaders.DriveBelt,
            static (it, v) => it with { DriveBelt = v }
        );
        machine = fields.SetPart(machine, "motor", DriveReaders.Motor, static (it, v) => it with { Motor = v });
        machine = fields.SetPart(machine, "supply", DriveReaders.Supply, static (it, v) => it with { Supply = v });
        machine = fields.SetPart(machine, "plate", PartReaders.Plate, static (it, v) => it with { Plate = v });
        DriveDynamics? dynamics = fields.FindPart("dynamics", DynamicsReader.Read);
        return fields.Finish(machine) is { } whole ? new(name!, whole, dynamics) : null;
    }
}
