namespace TreadmillMech.Service.Review;

/// <summary>How far the running belt may still be tightened at this visit.</summary>
internal static class BudgetOf
{
    internal static TensionBudget Facts(VisitFacts facts)
    {
        Threshold most = facts.Options.MostTurns;
        double lead = Si.Length.ToSi(facts.Visit.Machine.TakeUp.Thread.Lead);
        double? thread = facts.Visit.Machine.TakeUp.ThreadLeft is { } left
            ? Math.Max(0, (Si.Length.ToSi(left) / lead) - Math.Max(facts.LeftTurns, facts.RightTurns))
            : null;
        double byVisit = Math.Max(0, most.Value - facts.Turns);
        bool threadFirst = thread is { } turns && turns < byVisit;
        return new()
        {
            TurnsThisVisit = facts.Turns,
            EarlierTurns = facts.Visit.EarlierTurns,
            MostTurns = most,
            TurnsLeft = threadFirst ? thread!.Value : byVisit,
            ThreadTurnsLeft = thread,
            StrainAdded = new("elongation added", 100 * QuarterTurns.Strain(facts.Visit.Machine, facts.Turns), "%"),
            Tension = facts.TensionNow,
            LimitedBy = threadFirst ? "the thread left on the bolts" : most.Name,
        };
    }
}
