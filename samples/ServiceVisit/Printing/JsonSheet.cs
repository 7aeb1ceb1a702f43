using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The sheet for machines: the same content as the page, under names that stay.</summary>
internal static class JsonSheet
{
    internal const string Format = "treadmillmech-sheet/1";

    // Readable text: the document is not put into a web page, so plus-minus and degree signs need no escape.
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    internal static string Of(string machineName, VisitSheet sheet)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteString("machine", machineName);
            json.WriteString("verdict", Words.Joined(Words.Of(sheet.Verdict)));
            json.WriteString("verdictText", sheet.VerdictText);
            json.WriteTexts("safetyNow", sheet.SafetyNow);
            json.WriteList("nextSteps", sheet.NextSteps, SheetParts.WriteStep);
            json.WriteList("findings", sheet.Findings, SheetParts.WriteFinding);
            json.WriteList("readings", sheet.Readings, SheetParts.WriteReading);
            json.WritePropertyName("budget");
            SheetParts.WriteBudget(json, sheet.Budget);
            json.WriteList("ladder", sheet.Ladder, SheetParts.WriteLadderStep);
            json.WriteList("oneMoreReading", sheet.OneMoreReading, SheetParts.WriteProposal);
            json.WriteList("refused", sheet.Refused, SheetParts.WriteRefused);
            json.WriteTexts("notices", sheet.Notices);
            json.WriteTexts("ownerPage", sheet.OwnerPage);
            json.WriteString("makerFirst", sheet.MakerFirst);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
