using TreadmillMech.Service.Events;
using UnitsNet;
using static TreadmillMech.Json.Shapes.EventWords;

namespace TreadmillMech.Json.Shapes;

/// <summary>Further readings of belts, bolts, motor, frame and mains, and what was seen, heard or smelt.</summary>
internal static class FurtherReadingShapes
{
    internal static readonly ObjectShape<PassesReading> Passes = new(
        "reading-passes",
        static it =>
        {
            it.Constant("reading", Readings, "passes");
            ShapeSlot<LoadState> state = it.Need("state", WordTables.States, static p => p.State);
            ShapeSlot<int> passes = it.Need(
                "passes",
                JsonKinds.Count,
                static p => p.Passes,
                "passes of a mark on the belt, counted"
            );
            ShapeSlot<Duration> time = it.Need("time", JsonKinds.Duration, static p => p.Time);
            it.May("display", JsonKinds.Speed, static p => p.Display, static (p, v) => p with { Display = v });
            Uncertainty(it);
            it.Make(values =>
                new()
                {
                    State = values.Get(state),
                    Passes = values.Get(passes),
                    Time = values.Get(time),
                }
            );
        }
    );

    internal static readonly ObjectShape<SpanFrequencyReading> SpanFrequency = new(
        "reading-spanFrequency",
        static it =>
        {
            it.Constant("reading", Readings, "spanFrequency");
            ShapeSlot<Frequency> frequency = it.Need(
                "frequency",
                JsonKinds.Frequency,
                static p => p.Frequency,
                "pitch of the plucked span of the drive belt"
            );
            it.May("span", JsonKinds.Length, static p => p.Span, static (p, v) => p with { Span = v });
            Uncertainty(it);
            it.Make(values => new() { Frequency = values.Get(frequency) });
        }
    );

    internal static readonly ObjectShape<MarksReading> Marks = new(
        "reading-marks",
        static it =>
        {
            it.Constant("reading", Readings, "marks");
            ShapeSlot<Length> distance = it.Need(
                "distance",
                JsonKinds.Length,
                static p => p.Distance,
                "of two marks along the running belt"
            );
            ShapeSlot<Length> asFitted = it.Need("asFitted", JsonKinds.Length, static p => p.AsFitted);
            Uncertainty(it);
            it.Make(values => new() { Distance = values.Get(distance), AsFitted = values.Get(asFitted) });
        }
    );

    internal static readonly ObjectShape<ThreadReading> Thread = new(
        "reading-thread",
        static it =>
        {
            it.Constant("reading", Readings, "thread");
            ShapeSlot<Length> left = it.Need(
                "left",
                JsonKinds.Length,
                static p => p.Left,
                "on the shorter side, for tightening"
            );
            Uncertainty(it);
            it.Make(values => new() { Left = values.Get(left) });
        }
    );

    internal static readonly ObjectShape<BoltReading> Bolts = new(
        "reading-bolts",
        static it =>
        {
            it.Constant("reading", Readings, "bolts");
            ShapeSlot<BoltFeel> feel = it.Need("feel", WordTables.BoltFeels, static p => p.Feel);
            Uncertainty(it);
            it.Make(values => new() { Feel = values.Get(feel) });
        }
    );

    internal static readonly ObjectShape<GrooveReading> Groove = new(
        "reading-groove",
        static it =>
        {
            it.Constant("reading", Readings, "groove");
            ShapeSlot<Length> depth = it.Need(
                "depth",
                JsonKinds.Length,
                static p => p.Depth,
                "under a straightedge on the deck"
            );
            Uncertainty(it);
            it.Make(values => new() { Depth = values.Get(depth) });
        }
    );

    internal static readonly ObjectShape<TemperatureReading> Temperature = new(
        "reading-temperature",
        static it =>
        {
            it.Constant("reading", Readings, "temperature");
            ShapeSlot<WarmPlace> place = it.Need("place", WordTables.WarmPlaces, static p => p.Place);
            ShapeSlot<Temperature> temperature = it.Need(
                "temperature",
                JsonKinds.Celsius,
                static p => p.Temperature,
                "after half an hour or more"
            );
            ShapeSlot<Temperature> air = it.Need("air", JsonKinds.Celsius, static p => p.Air);
            Uncertainty(it);
            it.Make(values =>
                new()
                {
                    Place = values.Get(place),
                    Temperature = values.Get(temperature),
                    Air = values.Get(air),
                }
            );
        }
    );

    internal static readonly ObjectShape<CoastDownReading> CoastDown = new(
        "reading-coastDown",
        static it =>
        {
            it.Constant("reading", Readings, "coastDown");
            ShapeSlot<Speed> from = it.Need(
                "from",
                JsonKinds.Speed,
                static p => p.From,
                "empty belt, from pulling the safety key to rest"
            );
            ShapeSlot<Duration> time = it.Need("time", JsonKinds.Duration, static p => p.Time);
            Uncertainty(it);
            it.Make(values => new() { From = values.Get(from), Time = values.Get(time) });
        }
    );

    internal static readonly ObjectShape<BrushReading> Brush = new(
        "reading-brush",
        static it =>
        {
            it.Constant("reading", Readings, "brush");
            ShapeSlot<Length> left = it.Need("left", JsonKinds.Length, static p => p.Left, "shortest brush");
            it.May(
                "least",
                JsonKinds.Length,
                static p => p.Least,
                static (p, v) => p with { Least = v },
                "by the maker"
            );
            Uncertainty(it);
            it.Make(values => new() { Left = values.Get(left) });
        }
    );

    internal static readonly ObjectShape<MainsVoltageReading> MainsVoltage = new(
        "reading-mainsVoltage",
        static it =>
        {
            it.Constant("reading", Readings, "mainsVoltage");
            ShapeSlot<LoadState> state = it.Need("state", WordTables.States, static p => p.State);
            ShapeSlot<ElectricPotential> voltage = it.Need("voltage", JsonKinds.Voltage, static p => p.Voltage);
            Uncertainty(it);
            it.Make(values => new() { State = values.Get(state), Voltage = values.Get(voltage) });
        }
    );

    internal static readonly ObjectShape<InclineReading> Incline = new(
        "reading-incline",
        static it =>
        {
            it.Constant("reading", Readings, "incline");
            ShapeSlot<Ratio> measured = it.Need("measured", JsonKinds.Share, static p => p.Measured);
            ShapeSlot<Ratio> display = it.Need("display", JsonKinds.Share, static p => p.Display);
            Uncertainty(it);
            it.Make(values => new() { Measured = values.Get(measured), Display = values.Get(display) });
        }
    );

    internal static readonly ObjectShape<LevelReading> Level = new(
        "reading-level",
        static it =>
        {
            it.Constant("reading", Readings, "level");
            ShapeSlot<Ratio> across = it.Need(
                "across",
                JsonKinds.Share,
                static p => p.Across,
                "positive where the right side is high"
            );
            Uncertainty(it);
            it.Make(values => new() { Across = values.Get(across) });
        }
    );

    internal static readonly ObjectShape<SymptomReading> Symptom = new(
        "reading-symptom",
        static it =>
        {
            it.Constant("reading", Readings, "symptom");
            ShapeSlot<Symptom> symptom = it.Need("symptom", WordTables.Symptoms, static p => p.Symptom);
            ShapeSlot<bool> present = it.Need(
                "present",
                JsonKinds.Boolean,
                static p => p.Present,
                "false: looked for, and not there"
            );
            Uncertainty(it);
            it.Make(values => new() { Symptom = values.Get(symptom), Present = values.Get(present) });
        }
    );
}
