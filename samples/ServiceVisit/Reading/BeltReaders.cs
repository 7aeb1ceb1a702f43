using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>Further readings of the two belts and the take-up, one reader each.</summary>
internal static class BeltReaders
{
    internal static VisitEvent? Passes(ObjectReader fields)
    {
        LoadState state = fields.Need("state", WordTables.States.Kind);
        int passes = fields.Need("passes", Kinds.Count);
        Duration time = fields.Need("time", Kinds.Duration);
        PassesReading? reading = fields.Make(() =>
            new PassesReading
            {
                State = state,
                Passes = passes,
                Time = time,
            }
        );
        return fields.Set(reading, "display", Kinds.Speed, static (it, v) => it with { Display = v });
    }

    internal static VisitEvent? SpanFrequency(ObjectReader fields)
    {
        Frequency frequency = fields.Need("frequency", Kinds.Frequency);
        SpanFrequencyReading? reading = fields.Make(() => new SpanFrequencyReading { Frequency = frequency });
        return fields.Set(reading, "span", Kinds.Length, static (it, v) => it with { Span = v });
    }

    internal static VisitEvent? Marks(ObjectReader fields)
    {
        Length distance = fields.Need("distance", Kinds.Length);
        Length fitted = fields.Need("asFitted", Kinds.Length);
        return fields.Make(() => new MarksReading { Distance = distance, AsFitted = fitted });
    }

    internal static VisitEvent? Thread(ObjectReader fields)
    {
        Length left = fields.Need("left", Kinds.Length);
        return fields.Make(() => new ThreadReading { Left = left });
    }

    internal static VisitEvent? Bolts(ObjectReader fields)
    {
        BoltFeel feel = fields.Need("feel", WordTables.BoltFeels.Kind);
        return fields.Make(() => new BoltReading { Feel = feel });
    }

    internal static VisitEvent? Groove(ObjectReader fields)
    {
        Length depth = fields.Need("depth", Kinds.Length);
        return fields.Make(() => new GrooveReading { Depth = depth });
    }
}
