using TreadmillMech.Json;

namespace TreadmillMech.Samples.ServiceVisit.Help;

/// <summary>The fields, in words, as the library lists them. An asterisk marks those that must be there.</summary>
internal static class FieldList
{
    private const string Reading = "reading";
    private const string Action = "action";
    private const string EveryReading = "uncertainty";

    // Where an object stands in the file, when its name alone does not say it.
    private static readonly Dictionary<string, string> Places = new(StringComparer.Ordinal)
    {
        ["visit"] = "the file",
        ["roller"] = "driveRoller, tailRoller",
        ["demand"] = "testDemand",
        ["earlierVisit"] = "earlier (a list)",
        ["reading-currentOfMotor"] = "reading current (motor lead)",
        ["reading-currentOfMains"] = "reading current (mains lead)",
    };

    /// <summary>Object and fields, then field and words.</summary>
    internal static IEnumerable<(string Object, string Fields)> All() =>
        [
            .. VisitFile
                .Fields.GroupBy(static f => f.Owner)
                .Select(static owner => (Place(owner.Key), string.Join(", ", owner.Where(Told).Select(Text)))),
            ("every reading", "uncertainty (relative standard uncertainty)"),
            .. VisitFile
                .Fields.Where(static f => !f.Choices.IsEmpty)
                .GroupBy(static f => (f.Name, Words: string.Join(", ", f.Choices)))
                .Select(static same => ($"words: {same.Key.Name}{Of(same)}", same.Key.Words)),
        ];

    /// <summary>The objects whose field it is, where others have a field of the same name with other words.</summary>
    private static string Of(IEnumerable<FormatField> fields)
    {
        FormatField first = fields.First();
        bool alone = VisitFile.Fields.All(other =>
            other.Name != first.Name || other.Choices.IsEmpty || other.Choices.SequenceEqual(first.Choices)
        );
        return alone ? "" : $" of {Place(first.Owner).Split(' ')[1]}";
    }

    private static string Place(string owner) =>
        Places.TryGetValue(owner, out string? place) ? place : owner.Replace('-', ' ');

    // The name of an event is its heading, and what every reading may have stands in a row of its own.
    private static bool Told(FormatField field) => field.Name is not (Reading or Action or EveryReading);

    private static string Text(FormatField field) =>
        $"{field.Name}{(field.Required ? "*" : "")}{(field.Note.Length > 0 ? $" ({field.Note})" : "")}";
}
