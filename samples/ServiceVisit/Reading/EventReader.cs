using TreadmillMech.Samples.ServiceVisit.Json;
using TreadmillMech.Service.Events;
using AnyReading = TreadmillMech.Service.Events.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>One event: an object that names a reading or an action, and holds its fields.</summary>
internal static class EventReader
{
    internal static readonly WordTable<Func<ObjectReader, VisitEvent?>> Readings = new(
        ("bolts", BeltReaders.Bolts),
        ("brush", MachineReadingReaders.Brush),
        ("coastDown", MachineReadingReaders.CoastDown),
        ("current", CurrentReader.Read),
        ("driveBelt", ReadingReaders.DriveBelt),
        ("groove", BeltReaders.Groove),
        ("incline", MachineReadingReaders.Incline),
        ("level", MachineReadingReaders.Level),
        ("lift", ReadingReaders.Lift),
        ("lockedPull", ReadingReaders.LockedPull),
        ("mainsPower", ReadingReaders.MainsPower),
        ("mainsVoltage", MachineReadingReaders.MainsVoltage),
        ("marks", BeltReaders.Marks),
        ("passes", BeltReaders.Passes),
        ("pull", ReadingReaders.Pull),
        ("slipTest", ReadingReaders.SlipTest),
        ("spanFrequency", BeltReaders.SpanFrequency),
        ("speeds", ReadingReaders.Speeds),
        ("symptom", MachineReadingReaders.Symptom),
        ("temperature", MachineReadingReaders.Temperature),
        ("thread", BeltReaders.Thread),
        ("tracking", ReadingReaders.Tracking),
        ("wipe", ReadingReaders.Wipe)
    );

    internal static readonly WordTable<Func<ObjectReader, VisitEvent?>> Actions = new(
        ("clean", ActionReaders.Clean),
        ("driveBelt", ActionReaders.DriveBelt),
        ("lubricate", ActionReaders.Lubricate),
        ("takeUp", ActionReaders.TakeUp)
    );

    internal static VisitEvent? Read(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        bool reading = node.Find("reading") is not null;
        bool action = node.Find("action") is not null;
        if (node.Kind != NodeKind.Object)
        {
            return null;
        }

        if (reading == action)
        {
            string names = reading ? "both \"reading\" and \"action\"" : "neither \"reading\" nor \"action\"";
            problems.Add(node.Line, node.Path, names, "one of them, to say what kind of event it is");
            return null;
        }

        string name = reading ? "reading" : "action";
        Func<ObjectReader, VisitEvent?>? read = fields.Need(name, (reading ? Readings : Actions).Kind);
        if (read is null)
        {
            // The other fields belong to a kind of event that is not known: nothing more can be said of them.
            return null;
        }

        VisitEvent? found = read(fields);
        if (reading)
        {
            found = fields.Set(
                found as AnyReading,
                "uncertainty",
                Kinds.Share,
                static (it, v) => it with { RelativeUncertainty = v },
                nameof(AnyReading.RelativeUncertainty)
            );
        }

        return fields.Finish(found);
    }
}
