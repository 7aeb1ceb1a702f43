using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TreadmillMech.Json.Located;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>A visit: machine, demand, events in order, and what is known of the time before.</summary>
internal static class VisitShape
{
    private const string EarlierExpected = "a list of earlier visits, the oldest first";

    private static readonly ListKind<VisitEvent> Events = new(
        EventKind.Any,
        "a list of readings and actions, in the order in which they happened"
    );
    private static readonly ListKind<EarlierVisit> Earlier = new(
        HistoryShapes.EarlierVisit,
        EarlierExpected,
        OldestFirst
    );

    /// <summary>The visit with the name of its machine.</summary>
    internal static readonly ObjectShape<VisitFile> File = new(
        "visit",
        static it =>
        {
            it.Constant("format", FileFormats.Visit, VisitFile.Format);
            ShapeSlot<NamedMachine> machine = it.Need(
                "machine",
                MachineShapes.Named,
                static p => new NamedMachine(p.MachineName, p.Visit.Machine, p.Dynamics)
            );
            Rest(
                it,
                static p => p.Visit,
                static (p, visit) => p with { Visit = visit },
                (values, visit) =>
                    new()
                    {
                        MachineName = values.Get(machine).Name,
                        Dynamics = values.Get(machine).Dynamics,
                        Visit = visit(values.Get(machine).Machine),
                    }
            );
        }
    );

    /// <summary>The visit alone, for a machine without a name.</summary>
    internal static readonly ObjectShape<Visit> Unnamed = new(
        "visitAlone",
        static it =>
        {
            ShapeSlot<Treadmill> machine = it.Need("machine", MachineShapes.Machine, static p => p.Machine);
            Rest(it, static visit => visit, static (_, visit) => visit, (values, visit) => visit(values.Get(machine)));
        }
    );

    /// <summary>The fields that both have.</summary>
    private static void Rest<T>(
        ObjectShape<T> it,
        Func<T, Visit> visit,
        Func<T, Visit, T> with,
        Func<ShapeValues, Func<Treadmill, Visit>, T> make
    )
        where T : class
    {
        ShapeSlot<Demand> demand = it.Need("testDemand", DemandShapes.Demand, p => visit(p).TestDemand);
        it.May("day", JsonKinds.Day, p => visit(p).Day, (p, v) => with(p, visit(p) with { Day = v }));
        it.Optional(
            "earlier",
            Earlier,
            (T p, out ImmutableArray<EarlierVisit> value) =>
            {
                value = visit(p).Earlier;
                return !value.IsEmpty;
            },
            (p, v) => with(p, visit(p) with { Earlier = v })
        );
        it.May(
            "earlierTurns",
            JsonKinds.Turns,
            p => visit(p).EarlierTurns,
            (p, v) => with(p, visit(p) with { EarlierTurns = v }),
            "of both bolts since the belt was new"
        );
        it.Part("usage", HistoryShapes.Usage, p => visit(p).Usage, (p, v) => with(p, visit(p) with { Usage = v }));
        ShapeSlot<ImmutableArray<VisitEvent>> events = it.Need("events", Events, p => visit(p).Events);
        it.Between(NothingEarlierIsLater);
        it.Make(values =>
            make(
                values,
                machine =>
                    new()
                    {
                        Machine = machine,
                        TestDemand = values.Get(demand),
                        Events = values.Get(events),
                    }
            )
        );
    }

    private static bool OldestFirst(IReadOnlyList<(EarlierVisit Value, LocatedNode Node)> visits, FileProblems problems)
    {
        bool inOrder = true;
        for (int i = 1; i < visits.Count; i++)
        {
            if (visits[i].Value.Day < visits[i - 1].Value.Day)
            {
                LocatedNode at = visits[i].Node.Find("day")?.Value ?? visits[i].Node;
                string before = DayKind.Of(visits[i - 1].Value.Day);
                problems.Add(at, new($"{at.Shown}, which is before {before} of the visit above it", EarlierExpected));
                inOrder = false;
            }
        }

        return inOrder;
    }

    /// <summary>Refuses earlier visits that lie after this one.</summary>
    private static void NothingEarlierIsLater(ObjectReader fields)
    {
        if (!Day(fields.Find("day"), out DateOnly day))
        {
            return;
        }

        foreach (LocatedNode item in fields.Find("earlier")?.Items ?? [])
        {
            if (item.Find("day")?.Value is { } at && Day(at, out DateOnly earlier) && earlier > day)
            {
                fields.Refuse(at, new(at.Shown, $"a day not after that of this visit, {DayKind.Of(day)}"));
            }
        }
    }

    private static bool Day(LocatedNode? node, [MaybeNullWhen(false)] out DateOnly day)
    {
        day = default;
        return node is not null && JsonKinds.Day.Read(node, new(), out day);
    }
}
