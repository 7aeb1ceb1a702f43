using System.Text.Json;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Samples.ServiceVisit.Compare;

/// <summary>Two visits side by side, for machines.</summary>
internal static class CompareJson
{
    internal const string Format = "treadmillmech-comparison/1";

    internal static string Of(Comparison comparison) =>
        JsonText.Of(json =>
        {
            json.WriteString("format", Format);
            json.WriteString("machine", comparison.Second.MachineName);
            Visit(json, "then", comparison.First, comparison.Then);
            Visit(json, "now", comparison.Second, comparison.Now);
            json.WriteFinite("daysBetween", comparison.DaysBetween);
            json.WriteFinite("turnsBetween", comparison.TurnsBetween);
            json.WriteList("changes", comparison.Changes, (writer, change) => WriteChange(writer, comparison, change));
            json.WriteList("newFindings", comparison.New, SheetParts.WriteFinding);
            json.WriteList("goneFindings", comparison.Gone, SheetParts.WriteFinding);
            json.WriteString("makerFirst", comparison.Now.MakerFirst);
        });

    private static void Visit(Utf8JsonWriter json, string name, VisitFile document, VisitSheet sheet)
    {
        json.WriteStartObject(name);
        if (document.Visit.Day is { } day)
        {
            json.WriteString("day", DayText.Of(day));
        }
        else
        {
            json.WriteNull("day");
        }

        json.WriteString("verdict", Words.Joined(Words.Of(sheet.Verdict)));
        json.WriteString("verdictText", sheet.VerdictText);
        json.WriteFinite("turns", BoltTurns.By(TurnedBy.Technician, document.Visit));
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, Comparison comparison, Change change)
    {
        json.WriteStartObject();
        json.WriteString("name", change.Name);
        json.WriteFigure("asLeftThen", change.Then);
        json.WriteFigure("asFoundNow", change.Found);
        json.WriteFigure("asLeftNow", change.Left);
        json.WriteFigure("change", change.Difference);
        json.WriteFigure("changeInAYear", comparison.InAYear(change));
        json.WriteString("meaning", Words.Camel(change.Trend.ToString()));
        json.WriteString("why", change.Why);
        json.WriteEndObject();
    }
}
