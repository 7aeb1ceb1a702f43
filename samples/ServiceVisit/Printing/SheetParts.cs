using System.Text.Json;
using TreadmillMech.Service;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>The parts of a sheet as JSON objects, one writer each.</summary>
internal static class SheetParts
{
    internal static void WriteStep(Utf8JsonWriter json, NextStep step)
    {
        json.WriteStartObject();
        StepFields(json, step);
        json.WriteEndObject();
    }

    internal static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("subject", Words.Joined(Words.Of(finding.Subject)));
        json.WriteString("severity", Words.Joined(Words.Of(finding.Severity)));
        json.WriteString("statement", finding.Statement);
        json.WriteFigure("number", finding.Number);
        json.WriteThreshold("limit", finding.Limit);
        json.WriteList("alsoBy", finding.AlsoBy, static (to, limit) => to.WriteThreshold(limit));
        json.WriteString("forOwner", finding.ForOwner);
        json.WriteTexts("for", finding.For);
        json.WriteTexts("against", finding.Against);
        if (finding.Next is { } next)
        {
            json.WriteStartObject("next");
            StepFields(json, next);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("next");
        }

        json.WriteEndObject();
    }

    internal static void WriteReading(Utf8JsonWriter json, ReadingRow row)
    {
        json.WriteStartObject();
        json.WriteString("kind", Words.Camel(row.Kind.ToString()));
        json.WriteString("name", row.Name);
        json.WriteString("unit", row.Unit);
        json.WriteFigure("asFound", row.AsFound);
        json.WriteFigure("asLeft", row.AsLeft);
        json.WriteThreshold("reference", row.Reference);
        json.WriteEndObject();
    }

    internal static void WriteBudget(Utf8JsonWriter json, TensionBudget budget)
    {
        json.WriteStartObject();
        json.WriteFinite("turnsThisVisit", budget.TurnsThisVisit);
        json.WriteFinite("earlierTurns", budget.EarlierTurns);
        json.WriteThreshold("mostTurns", budget.MostTurns);
        json.WriteFinite("turnsLeft", budget.TurnsLeft);
        json.WriteFinite("threadTurnsLeft", budget.ThreadTurnsLeft);
        json.WriteFigure("strainAdded", budget.StrainAdded);
        json.WriteAnswer("tension", budget.Tension);
        json.WriteString("limit", Words.Camel(budget.Limit.ToString()));
        json.WriteString("limitedBy", budget.LimitedBy);
        json.WriteEndObject();
    }

    internal static void WriteLadderStep(Utf8JsonWriter json, LadderStep step)
    {
        json.WriteStartObject();
        json.WriteFinite("turns", step.Turns);
        json.WriteFigure("strainAdded", step.StrainAdded);
        json.WriteAnswer("tension", step.Tension);
        json.WriteAnswer("margin", step.Margin);
        json.WriteEndObject();
    }

    internal static void WriteProposal(Utf8JsonWriter json, ReadingProposal proposal)
    {
        json.WriteStartObject();
        json.WriteString("reading", proposal.Reading);
        json.WriteString("settles", proposal.Settles);
        json.WriteString("gain", proposal.Gain);
        json.WriteNumber("minutes", proposal.Minutes);
        json.WriteEndObject();
    }

    internal static void WriteRefused(Utf8JsonWriter json, RefusedReading refused)
    {
        json.WriteStartObject();
        json.WriteNumber("event", refused.Event);
        json.WriteString("name", refused.Name);
        json.WriteString("why", refused.Why);
        json.WriteEndObject();
    }

    private static void StepFields(Utf8JsonWriter json, NextStep step)
    {
        json.WriteString("action", step.Action);
        json.WriteString("expect", step.Expect);
        json.WriteString("stopAt", step.StopAt);
        json.WriteString("undo", step.Undo);
        json.WriteTexts("cautions", step.Cautions);
    }
}
