using TreadmillMech.Samples.ServiceVisit.Sheet;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The sheet for machines: the same content as the page, under names that stay.</summary>
internal static class JsonSheet
{
    internal const string Format = "treadmillmech-sheet/1";

    internal static string Of(string machineName, VisitSheet sheet, StepForecast? forecast = null) =>
        JsonText.Of(json =>
        {
            json.WriteString("format", Format);
            json.WriteString("machine", machineName);
            json.WriteString("verdict", Words.Joined(Words.Of(sheet.Verdict)));
            json.WriteString("verdictText", sheet.VerdictText);
            json.WriteTexts("safetyNow", sheet.SafetyNow);
            json.WriteList("nextSteps", sheet.NextSteps, SheetParts.WriteStep);
            json.WriteList("findings", sheet.Findings, SheetParts.WriteFinding);
            json.WriteList("causes", SheetExtras.Causes(sheet), CauseParts.WriteCause);
            json.WriteString("chancesFrom", sheet.ChancesFrom);
            json.WriteList("readings", sheet.Readings, SheetParts.WriteReading);
            json.WritePropertyName("budget");
            SheetParts.WriteBudget(json, sheet.Budget);
            ForecastText.Write(json, forecast);
            json.WriteDue("due", sheet.Due);
            json.WriteList("ladder", sheet.Ladder, SheetParts.WriteLadderStep);
            json.WriteAnswer("driveBeltMargin", sheet.DriveBeltMargin);
            json.WriteTexts("notTold", sheet.NotTold);
            json.WriteList("oneMoreReading", sheet.OneMoreReading, SheetParts.WriteProposal);
            json.WriteList("refused", sheet.Refused, SheetParts.WriteRefused);
            json.WriteTexts("notices", sheet.Notices);
            json.WriteTexts("ownerPage", sheet.OwnerPage);
            json.WriteString("makerFirst", sheet.MakerFirst);
        });
}
