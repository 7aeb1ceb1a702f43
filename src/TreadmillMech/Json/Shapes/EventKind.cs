using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using TreadmillMech.Json.Located;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>One event: an object that names a reading or an action, and holds its fields.</summary>
internal sealed class EventKind : JsonKind<VisitEvent>
{
    internal static readonly EventKind Any = new();

    private const string ReadingField = "reading";
    private const string ActionField = "action";

    private static readonly Dictionary<string, IEventShape> Readings = new(StringComparer.Ordinal)
    {
        ["bolts"] = Of(FurtherReadingShapes.Bolts),
        ["brush"] = Of(FurtherReadingShapes.Brush),
        ["coastDown"] = Of(FurtherReadingShapes.CoastDown),
        ["current"] = new CurrentChoice(),
        ["driveBelt"] = Of(ReadingShapes.DriveBelt),
        ["groove"] = Of(FurtherReadingShapes.Groove),
        ["incline"] = Of(FurtherReadingShapes.Incline),
        ["level"] = Of(FurtherReadingShapes.Level),
        ["lift"] = Of(ReadingShapes.Lift),
        ["lockedPull"] = Of(ReadingShapes.LockedPull),
        ["mainsPower"] = Of(ReadingShapes.MainsPower),
        ["mainsVoltage"] = Of(FurtherReadingShapes.MainsVoltage),
        ["marks"] = Of(FurtherReadingShapes.Marks),
        ["passes"] = Of(FurtherReadingShapes.Passes),
        ["pull"] = Of(ReadingShapes.Pull),
        ["slipTest"] = Of(ReadingShapes.SlipTest),
        ["spanFrequency"] = Of(FurtherReadingShapes.SpanFrequency),
        ["speeds"] = Of(ReadingShapes.Speeds),
        ["symptom"] = Of(FurtherReadingShapes.Symptom),
        ["temperature"] = Of(FurtherReadingShapes.Temperature),
        ["thread"] = Of(FurtherReadingShapes.Thread),
        ["tracking"] = Of(ReadingShapes.Tracking),
        ["wipe"] = Of(ReadingShapes.Wipe),
    };

    private static readonly Dictionary<string, IEventShape> Actions = new(StringComparer.Ordinal)
    {
        ["clean"] = Of(ActionShapes.Clean),
        ["driveBelt"] = Of(ActionShapes.DriveBelt),
        ["lubricate"] = Of(ActionShapes.Lubricate),
        ["takeUp"] = Of(ActionShapes.TakeUp),
    };

    internal override string Expected => ObjectReader.ExpectedObject;

    /// <summary>The shapes of all events.</summary>
    internal static IEnumerable<IEventShape> All => Readings.Values.Concat(Actions.Values);

    internal override bool Read(LocatedNode node, FileProblems problems, [MaybeNullWhen(false)] out VisitEvent value)
    {
        value = null;
        ObjectReader fields = new(node, problems);
        if (node.Kind != NodeKind.Object)
        {
            return false;
        }

        bool reading = node.Find(ReadingField) is not null;
        bool action = node.Find(ActionField) is not null;
        if (reading == action)
        {
            string names = reading ? "both \"reading\" and \"action\"" : "neither \"reading\" nor \"action\"";
            problems.Add(node, new(names, "one of them, to say what kind of event it is"));
            return false;
        }

        // Of an event of a kind that is not known nothing more can be said: its other fields are left alone.
        WordTable<string> words = reading ? EventWords.Readings : EventWords.Actions;
        if (!fields.Need(reading ? ReadingField : ActionField, words, out string? word))
        {
            return false;
        }

        value = fields.Finish((reading ? Readings : Actions)[word].ReadFields(fields));
        return value is not null;
    }

    internal override void Write(Utf8JsonWriter json, VisitEvent value)
    {
        json.WriteStartObject();
        bool written = All.Any(shape => shape.TryWriteFields(json, value));
        json.WriteEndObject();
        if (!written)
        {
            throw new ArgumentException($"{value.GetType().Name} has no form in a file.", nameof(value));
        }
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Json.WriteStartArray("anyOf");
        foreach (INamedShape shape in All.SelectMany(static shape => shape.Shapes))
        {
            schema.Json.WriteStartObject();
            schema.Reference(shape);
            schema.Json.WriteEndObject();
        }

        schema.Json.WriteEndArray();
    }

    private static EventShape<T> Of<T>(ObjectShape<T> shape)
        where T : VisitEvent => new(shape);
}
