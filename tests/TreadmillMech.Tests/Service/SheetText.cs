using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service;

/// <summary>Everything a sheet says, line by line.</summary>
internal static class SheetText
{
    internal static string Of(VisitSheet sheet) => string.Join('\n', Lines(sheet));

    internal static IEnumerable<string> Lines(VisitSheet sheet) =>
        [
            sheet.Verdict.ToString(),
            sheet.VerdictText,
            .. sheet.SafetyNow,
            sheet.MakerFirst,
            .. sheet.NextSteps.SelectMany(Lines),
            .. sheet.Findings.SelectMany(Lines),
            .. sheet.Readings.Select(r => $"{r.Name} [{r.Unit}] {r.AsFound} {r.AsLeft} {r.Reference}"),
            .. sheet.Refused.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Event} {r.Name} {r.Why}")),
            $"{sheet.Budget.StrainAdded} {sheet.Budget.Tension} {sheet.Budget.LimitedBy} {sheet.Budget.MostTurns}",
            string.Create(
                CultureInfo.InvariantCulture,
                $"{sheet.Budget.TurnsThisVisit} {sheet.Budget.TurnsLeft} {sheet.Budget.ThreadTurnsLeft} {sheet.Budget.EarlierTurns}"
            ),
            .. sheet.Ladder.Select(s =>
                string.Create(CultureInfo.InvariantCulture, $"{s.Turns}") + $" {s.StrainAdded} {s.Tension} {s.Margin}"
            ),
            .. sheet.OneMoreReading.Select(r => $"{r.Reading} {r.Settles} {r.Gain}"),
            .. sheet.NotTold,
            .. sheet.Notices,
            .. sheet.OwnerPage,
        ];

    internal static IEnumerable<string> Lines(NextStep step) =>
        [step.Action, step.Expect, step.StopAt, step.Undo ?? "", .. step.Cautions];

    private static IEnumerable<string> Lines(Finding finding) =>
        [
            $"{finding.Subject} {finding.Severity}",
            finding.Statement,
            $"{finding.Number} {finding.Limit}",
            .. finding.AlsoBy.Select(l => l.ToString()),
            finding.ForOwner ?? "",
            .. finding.For,
            .. finding.Against,
            .. finding.Next is { } next ? Lines(next) : [],
        ];
}
