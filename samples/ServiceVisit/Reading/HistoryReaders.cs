using TreadmillMech.Samples.ServiceVisit.Json;
using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>What is known of the time before this visit.</summary>
internal static class HistoryReaders
{
    private const string Expected = "a list of earlier visits, the oldest first";

    /// <summary>The earlier visits; empty where the file has none.</summary>
    internal static List<EarlierVisit> Earlier(ObjectReader fields)
    {
        if (fields.Find("earlier") is not { } list)
        {
            return [];
        }

        if (list.Kind != NodeKind.Array)
        {
            fields.Refuse("earlier", list.Shown, Expected);
            return [];
        }

        List<(EarlierVisit Visit, LocatedNode Node)> visits = [];
        foreach (LocatedNode item in list.Items)
        {
            if (One(item, fields.Problems) is { } visit)
            {
                visits.Add((visit, item.Find("day")?.Value ?? item));
            }
        }

        CheckOrder(visits, fields.Problems);
        return [.. visits.Select(static v => v.Visit)];
    }

    /// <summary>Refuses earlier visits that lie after this one.</summary>
    internal static void CheckAgainst(DateOnly day, ObjectReader fields)
    {
        foreach (LocatedNode item in fields.Find("earlier")?.Items ?? [])
        {
            if (item.Find("day")?.Value is { } at && DayText.Read(at, out DateOnly earlier) is null && earlier > day)
            {
                fields.Problems.Add(
                    at.Line,
                    at.Path,
                    at.Shown,
                    $"a day not after that of this visit, {DayText.Of(day)}"
                );
            }
        }
    }

    internal static Usage? Usage(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        Duration each = fields.Need("eachDay", Kinds.Duration);
        Mass mass = fields.Need("meanMass", Kinds.Mass);
        Speed speed = fields.Need("meanSpeed", Kinds.Speed);
        Usage? usage = fields.Make(() =>
            new Usage
            {
                EachDay = each,
                MeanMass = mass,
                MeanSpeed = speed,
            }
        );
        return fields.Finish(usage);
    }

    private static EarlierVisit? One(LocatedNode node, Problems problems)
    {
        ObjectReader fields = new(node, problems);
        DateOnly day = fields.Need("day", Kinds.Day);
        EarlierVisit? visit = fields.Make(() => new EarlierVisit { Day = day });
        visit = fields.Set(visit, "deckFriction", Kinds.PlainNumber, static (it, v) => it with { DeckFriction = v });
        visit = fields.Set(
            visit,
            "frictionUncertainty",
            Kinds.PlainNumber,
            static (it, v) => it with { FrictionUncertainty = v }
        );
        visit = fields.Set(visit, "serviced", Kinds.Boolean, static (it, v) => it with { Serviced = v });
        visit = fields.Set(visit, "restTension", Kinds.Force, static (it, v) => it with { RestTension = v });
        visit = fields.Set(visit, "turns", Kinds.Turns, static (it, v) => it with { Turns = v });
        visit = fields.Set(visit, "beltDrag", Kinds.Force, static (it, v) => it with { BeltDrag = v });
        return fields.Finish(visit);
    }

    private static void CheckOrder(List<(EarlierVisit Visit, LocatedNode Node)> visits, Problems problems)
    {
        for (int i = 1; i < visits.Count; i++)
        {
            if (visits[i].Visit.Day < visits[i - 1].Visit.Day)
            {
                LocatedNode at = visits[i].Node;
                problems.Add(
                    at.Line,
                    at.Path,
                    $"{at.Shown}, which is before {DayText.Of(visits[i - 1].Visit.Day)} of the visit above it",
                    Expected
                );
            }
        }
    }
}
