using System.Collections.Immutable;
using TreadmillMech.Service.Causes;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Intervals;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service;

/// <summary>Goes through a visit and says what it comes to.</summary>
/// <remarks>
/// What is unknown stays unknown: without a lift test the answer is in turns and retests, never in invented forces.
/// Readings that cannot be right are not used, and named.
/// </remarks>
public static class VisitReview
{
    /// <summary>The sheet of a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="options">Limits and default uncertainties; the defaults where null.</param>
    /// <exception cref="ArgumentNullException">The visit is null.</exception>
    public static VisitSheet Of(Visit visit, VisitOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(visit);
        VisitFacts facts = new(visit, options ?? VisitOptions.Default);
        TensionBudget budget = BudgetOf.Facts(facts);
        ImmutableArray<RankedCause> causes = CauseRanking.Of(facts);
        (Cause? Settles, Finding Finding)[] dangers = [.. SafetyRules.Of(facts, causes)];
        HashSet<Cause> settled = [.. dangers.Select(static d => d.Settles).OfType<Cause>()];
        Finding[] found =
        [
            .. InOrder(
                dangers
                    .Select(static d => d.Finding)
                    .Concat(LimitRules.Of(facts))
                    .Concat(RollerRules.Of(facts))
                    .Concat(SlipRules.Of(facts, budget, causes))
                    .Concat(DeckRules.Of(facts))
                    .Concat(TrackingRules.Of(facts, budget, causes))
                    .Concat(SpeedRules.Of(facts))
                    .Concat(CauseRules.Of(facts, causes, settled))
                    .Concat(ReadingRules.Of(facts))
            ),
        ];
        ReadingProposal[] proposals = [.. Proposals.Of(facts, causes)];
        if (found.All(static f => f.Next is null) && ReadNext.Of(facts, causes, proposals) is { } read)
        {
            found = [.. found, read];
        }

        Verdict verdict = Judge(found, facts);
        ImmutableArray<Finding> findings =
            verdict == Verdict.NotEnoughRead ? [.. found, .. NotRead.Of(facts)] : [.. found];
        ImmutableArray<ReadingProposal> oneMore =
        [
            .. proposals.Where(p => verdict != Verdict.OutOfService || Unplugged(p)),
        ];
        ImmutableArray<NextStep> steps =
        [
            .. findings.Select(f => f.Next).OfType<NextStep>().Select(s => OnceMended(s, verdict)),
        ];
        return new()
        {
            Verdict = verdict,
            VerdictText = Text(verdict, findings, facts),
            SafetyNow = SafetyNow(verdict),
            NextSteps = steps,
            Findings = findings,
            Causes = causes,
            ChancesFrom = CauseRanking.Source(facts.Options),
            Due = DueDates.Of(facts),
            Readings = [.. ReadingTable.Of(facts)],
            Refused = [.. facts.Refused],
            Budget = budget,
            Ladder = SlipBracket.Ladder(facts, Math.Min(VisitFacts.LongestLadder, budget.TurnsLeft)),
            DriveBeltMargin = facts.DriveBeltMargin,
            MachineAsLeft = facts.Machine,
            NotTold = [.. QuantityWords.NotTold(facts)],
            MakerFirst = Cautions.MakerFirst,
            OneMoreReading = oneMore,
            Notices = [.. facts.Point.NoticeTexts.Select(n => n.ToString())],
            OwnerPage = [.. OwnerPage.Of(verdict, findings)],
        };
    }

    /// <summary>
    /// Safety first: the gravest severity. Within one severity the step that is quickest for what it settles, those of unknown
    /// effort last; a finding without a step needs no place before one that has.
    /// </summary>
    private static IEnumerable<Finding> InOrder(IEnumerable<Finding> findings) =>
        findings
            .OrderByDescending(static f => f.Severity)
            .ThenBy(static f => f.Next is null)
            .ThenBy(static f => f.Next?.EffortMinutes ?? int.MaxValue);

    /// <summary>Out of service, what needs somebody on the belt waits until that is mended.</summary>
    private static NextStep OnceMended(NextStep step, Verdict verdict) =>
        verdict == Verdict.OutOfService && step.Cautions.Contains(Cautions.TestUser, StringComparer.Ordinal)
            ? step with
            {
                Cautions = [Cautions.OnceMended, .. step.Cautions],
            }
            : step;

    /// <summary>Whether a reading is taken with the machine unplugged, and nobody on it.</summary>
    private static bool Unplugged(ReadingProposal proposal) =>
        proposal.Reading.Contains("machine unplugged", StringComparison.OrdinalIgnoreCase);

    /// <summary>The gravest finding decides; where none is grave, a machine is fit only if somebody tried it.</summary>
    private static Verdict Judge(Finding[] findings, VisitFacts facts) =>
        findings.Select(static f => f.Severity).DefaultIfEmpty().Max() switch
        {
            Severity.OutOfService => Verdict.OutOfService,
            Severity.Restrict => Verdict.Restrict,
            _ => facts.Slip.Judged && !NotRead.UntriedSinceWork(facts) ? Verdict.Use : Verdict.NotEnoughRead,
        };

    private static string Text(Verdict verdict, ImmutableArray<Finding> findings, VisitFacts facts) =>
        verdict switch
        {
            Verdict.NotEnoughRead when !facts.Used<Reading>().Any() =>
                "Nothing was read at this visit and slip was not tested: it does not tell whether the machine may be used.",
            Verdict.NotEnoughRead when facts.Slip.Judged =>
                $"Not enough was read to say that it may be used: slip was not tested since the last work on belts or rollers. Nothing read speaks against use within {facts.Say.Plate}.",
            Verdict.NotEnoughRead =>
                $"Not enough was read to say that it may be used: slip was not tested at this visit. Nothing read speaks against use within {facts.Say.Plate}.",
            Verdict.Use when findings.Any(f => f.Severity == Severity.Attend) =>
                $"May be used within {facts.Say.Plate}; the steps below are due.",
            Verdict.Use => $"May be used within {facts.Say.Plate}.",
            Verdict.Restrict when OwnerPage.OnlyTheUser(findings) =>
                $"Not for users above the maker's plate: {findings[0].Statement}",
            Verdict.Restrict =>
                $"Walking only, by light users, until mended: {findings.First(f => f.Subject != Subject.User).Statement}",
            _ => $"Out of service until mended: {findings[0].Statement}",
        };

    private static ImmutableArray<string> SafetyNow(Verdict verdict) =>
        [
            .. verdict == Verdict.OutOfService
                ? ["Unplug the machine, take its safety key and mark it: nobody steps on it."]
                : Array.Empty<string>(),
            Cautions.Unplug,
            Cautions.StandStill,
            Cautions.Clear,
            Cautions.Key,
            Cautions.TestUser,
            Cautions.Electrical,
        ];
}
