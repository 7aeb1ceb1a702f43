using System.Collections.Immutable;
using TreadmillMech.Samples.ServiceVisit.Json;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Reads a visit file.</summary>
internal static class VisitReader
{
    internal const string Format = "treadmillmech-visit/1";

    private static readonly WordTable<string> Formats = new((Format, Format));

    /// <summary>The visit; null where anything in the file was refused, and then the problems say what.</summary>
    internal static VisitDocument? Read(byte[] bytes, Problems problems)
    {
        if (LocatedParser.Parse(bytes, problems) is not { } root)
        {
            return null;
        }

        ObjectReader fields = new(root, problems);
        fields.Need("format", Formats.Kind);
        if (root.Find("format") is not null && !fields.Complete)
        {
            // Another format means other fields: complaints about them would mislead.
            return null;
        }

        NamedMachine? machine = fields.NeedPart("machine", MachineReader.Read);
        Demand? demand = fields.NeedPart("testDemand", DemandReader.Read);
        ImmutableArray<VisitEvent> events = Events(fields);
        Visit? visit = fields.Make(() =>
            new Visit
            {
                Machine = machine!.Machine,
                TestDemand = demand!,
                Events = events,
            }
        );
        visit = fields.Set(visit, "earlierTurns", Kinds.Turns, static (it, v) => it with { EarlierTurns = v });
        visit = History(visit, fields);
        visit = fields.Finish(visit);
        return problems.None && visit is not null ? new(machine!.Name, visit, machine.Dynamics) : null;
    }

    private static Visit? History(Visit? visit, ObjectReader fields)
    {
        ImmutableArray<EarlierVisit> earlier = [.. HistoryReaders.Earlier(fields)];
        visit = fields.Set(visit, "day", Kinds.Day, static (it, v) => it with { Day = v });
        if (visit?.Day is { } day)
        {
            HistoryReaders.CheckAgainst(day, fields);
        }

        visit = fields.SetPart(visit, "usage", HistoryReaders.Usage, static (it, v) => it with { Usage = v });

        // The library refuses visits out of order; here they were refused with their place in the file.
        return fields.Problems.None && visit is not null ? visit with { Earlier = earlier } : visit;
    }

    private static ImmutableArray<VisitEvent> Events(ObjectReader fields)
    {
        const string Expected = "a list of readings and actions, in the order in which they happened";
        if (fields.Find("events") is not { } list)
        {
            fields.Miss("events", Expected);
            return [];
        }

        if (list.Kind != NodeKind.Array)
        {
            fields.Refuse("events", list.Shown, Expected);
            return [];
        }

        return [.. list.Items.Select(item => EventReader.Read(item, fields.Problems)).OfType<VisitEvent>()];
    }
}
