using TreadmillMech.Service;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>What is known of the time before a visit.</summary>
internal static class HistoryShapes
{
    internal static readonly ObjectShape<Usage> Usage = new(
        "usage",
        static it =>
        {
            ShapeSlot<Duration> eachDay = it.Need(
                "eachDay",
                JsonKinds.Duration,
                static p => p.EachDay,
                "running time, averaged over all days"
            );
            ShapeSlot<Mass> meanMass = it.Need("meanMass", JsonKinds.Mass, static p => p.MeanMass);
            ShapeSlot<Speed> meanSpeed = it.Need("meanSpeed", JsonKinds.Speed, static p => p.MeanSpeed);
            it.Make(values =>
                new()
                {
                    EachDay = values.Get(eachDay),
                    MeanMass = values.Get(meanMass),
                    MeanSpeed = values.Get(meanSpeed),
                }
            );
        }
    );

    internal static readonly ObjectShape<EarlierVisit> EarlierVisit = new(
        "earlierVisit",
        static it =>
        {
            ShapeSlot<DateOnly> day = it.Need("day", JsonKinds.Day, static p => p.Day);
            it.May(
                "deckFriction",
                JsonKinds.PlainNumber,
                static p => p.DeckFriction,
                static (p, v) => p with { DeckFriction = v },
                "as left"
            );
            it.May(
                "frictionUncertainty",
                JsonKinds.PlainNumber,
                static p => p.FrictionUncertainty,
                static (p, v) => p with { FrictionUncertainty = v }
            );
            it.Set(
                "serviced",
                JsonKinds.Boolean,
                static p => p.Serviced,
                static (p, v) => p with { Serviced = v },
                "deck cleaned or lubricated"
            );
            it.May(
                "restTension",
                JsonKinds.Force,
                static p => p.RestTension,
                static (p, v) => p with { RestTension = v }
            );
            it.Set("turns", JsonKinds.Turns, static p => p.Turns, static (p, v) => p with { Turns = v });
            it.May(
                "slowing",
                JsonKinds.Acceleration,
                static p => p.Slowing,
                static (p, v) => p with { Slowing = v },
                "of the coasting empty belt"
            );
            it.May(
                "beltDrag",
                JsonKinds.Force,
                static p => p.BeltDrag,
                static (p, v) => p with { BeltDrag = v },
                "pull of the empty belt"
            );
            it.Make(values => new() { Day = values.Get(day) });
        }
    );
}
