using System.Collections.Immutable;
using TreadmillMech.Service;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Json.Shapes;

/// <summary>Results that users store: the sheet of a visit with all its parts, and estimates.</summary>
internal static class ResultShapes
{
    internal static readonly ObjectShape<Figure> Figure = new(
        "figure",
        static it =>
        {
            ShapeSlot<string> name = it.Need("name", ResultKinds.Text, static p => p.Name);
            ShapeSlot<double> value = it.Need("value", ResultKinds.Number, static p => p.Value);
            ShapeSlot<string> unit = it.Need("unit", ResultKinds.Text, static p => p.Unit);
            it.May(
                "standardUncertainty",
                ResultKinds.Number,
                static p => p.StandardUncertainty,
                static (p, v) => p with { StandardUncertainty = v }
            );
            it.May("lower", ResultKinds.Number, static p => p.Lower, static (p, v) => p with { Lower = v });
            it.May("upper", ResultKinds.Number, static p => p.Upper, static (p, v) => p with { Upper = v });
            it.Make(values => new(values.Get(name), values.Get(value), values.Get(unit)));
        }
    );

    internal static readonly ObjectShape<Threshold> Threshold = new(
        "threshold",
        static it =>
        {
            ShapeSlot<string> name = it.Need("name", ResultKinds.Text, static p => p.Name);
            ShapeSlot<double> value = it.Need("value", ResultKinds.Number, static p => p.Value);
            ShapeSlot<string> unit = it.Need("unit", ResultKinds.Text, static p => p.Unit);
            ShapeSlot<string> source = it.Need("source", ResultKinds.Text, static p => p.Source);
            it.Make(values => new(values.Get(name), values.Get(value), values.Get(unit), values.Get(source)));
        }
    );

    internal static readonly ObjectShape<NextStep> NextStep = new(
        "nextStep",
        static it =>
        {
            ShapeSlot<string> action = it.Need("action", ResultKinds.Text, static p => p.Action);
            ShapeSlot<string> expect = it.Need("expect", ResultKinds.Text, static p => p.Expect);
            ShapeSlot<string> stopAt = it.Need("stopAt", ResultKinds.Text, static p => p.StopAt);
            it.Part("undo", ResultKinds.Text, static p => p.Undo, static (p, v) => p with { Undo = v });
            it.May(
                "effortMinutes",
                JsonKinds.Count,
                static p => p.EffortMinutes,
                static (p, v) => p with { EffortMinutes = v }
            );
            it.Set("cautions", ResultKinds.Texts, static p => p.Cautions, static (p, v) => p with { Cautions = v });
            it.Make(values =>
                new()
                {
                    Action = values.Get(action),
                    Expect = values.Get(expect),
                    StopAt = values.Get(stopAt),
                }
            );
        }
    );

    internal static readonly ObjectShape<Finding> Finding = new(
        "finding",
        static it =>
        {
            ShapeSlot<Subject> subject = it.Need("subject", ResultWords.Subjects, static p => p.Subject);
            ShapeSlot<Severity> severity = it.Need("severity", ResultWords.Severities, static p => p.Severity);
            ShapeSlot<string> statement = it.Need("statement", ResultKinds.Text, static p => p.Statement);
            it.Part("number", Figure, static p => p.Number, static (p, v) => p with { Number = v });
            it.Part("limit", Threshold, static p => p.Limit, static (p, v) => p with { Limit = v });
            it.Set(
                "alsoBy",
                new ListKind<Threshold>(Threshold, "a list"),
                static p => p.AlsoBy,
                static (p, v) => p with { AlsoBy = v }
            );
            it.Set("for", ResultKinds.Texts, static p => p.For, static (p, v) => p with { For = v });
            it.Set("against", ResultKinds.Texts, static p => p.Against, static (p, v) => p with { Against = v });
            it.Part("next", NextStep, static p => p.Next, static (p, v) => p with { Next = v });
            it.Part("forOwner", ResultKinds.Text, static p => p.ForOwner, static (p, v) => p with { ForOwner = v });
            it.Make(values =>
                new()
                {
                    Subject = values.Get(subject),
                    Severity = values.Get(severity),
                    Statement = values.Get(statement),
                }
            );
        }
    );

    internal static readonly ObjectShape<RankedCause> RankedCause = new(
        "rankedCause",
        static it =>
        {
            ShapeSlot<Cause> cause = it.Need("cause", ResultWords.Causes, static p => p.Cause);
            ShapeSlot<double> probability = it.Need("probability", ResultKinds.Number, static p => p.Probability);
            ShapeSlot<ImmutableArray<string>> supports = it.Need("for", ResultKinds.Texts, static p => p.For);
            ShapeSlot<ImmutableArray<string>> against = it.Need("against", ResultKinds.Texts, static p => p.Against);
            it.Set(
                "limits",
                new ListKind<Threshold>(Threshold, "a list"),
                static p => p.Limits,
                static (p, v) => p with { Limits = v }
            );
            it.Make(values =>
                new(values.Get(cause), values.Get(probability), values.Get(supports), values.Get(against))
            );
        }
    );

    internal static readonly ObjectShape<DueDate> DueDate = new(
        "dueDate",
        static it =>
        {
            ShapeSlot<Answer<DateOnly>> byTrend = it.Need(
                "byTrend",
                new AnswerKind<DateOnly>(ResultKinds.Day),
                static p => p.ByTrend
            );
            ShapeSlot<Answer<(DateOnly First, DateOnly Last)>> trendBounds = it.Need(
                "trendBounds",
                new AnswerKind<(DateOnly First, DateOnly Last)>(ResultKinds.Period),
                static p => p.TrendBounds
            );
            ShapeSlot<Answer<DateOnly>> byUse = it.Need(
                "byUse",
                new AnswerKind<DateOnly>(ResultKinds.Day),
                static p => p.ByUse
            );
            ShapeSlot<(DateOnly First, DateOnly Last)> commonPractice = it.Need(
                "commonPractice",
                ResultKinds.Period,
                static p => p.CommonPractice
            );
            ShapeSlot<Threshold> limit = it.Need("limit", Threshold, static p => p.Limit);
            ShapeSlot<Threshold> workLimit = it.Need("workLimit", Threshold, static p => p.WorkLimit);
            ShapeSlot<Answer<Figure>> growthInAYear = it.Need(
                "growthInAYear",
                new AnswerKind<Figure>(Figure),
                static p => p.GrowthInAYear
            );
            ShapeSlot<Answer<Figure>> workOfWaitingAYear = it.Need(
                "workOfWaitingAYear",
                new AnswerKind<Figure>(Figure),
                static p => p.WorkOfWaitingAYear
            );
            ShapeSlot<Answer<Figure>> workOfAServedYear = it.Need(
                "workOfAServedYear",
                new AnswerKind<Figure>(Figure),
                static p => p.WorkOfAServedYear
            );
            ShapeSlot<Answer<Energy>> energyOfWaitingAYear = it.Need(
                "energyOfWaitingAYear",
                new AnswerKind<Energy>(JsonKinds.Energy),
                static p => p.EnergyOfWaitingAYear
            );
            it.Make(values =>
                new()
                {
                    ByTrend = values.Get(byTrend),
                    TrendBounds = values.Get(trendBounds),
                    ByUse = values.Get(byUse),
                    CommonPractice = values.Get(commonPractice),
                    Limit = values.Get(limit),
                    WorkLimit = values.Get(workLimit),
                    GrowthInAYear = values.Get(growthInAYear),
                    WorkOfWaitingAYear = values.Get(workOfWaitingAYear),
                    WorkOfAServedYear = values.Get(workOfAServedYear),
                    EnergyOfWaitingAYear = values.Get(energyOfWaitingAYear),
                }
            );
        }
    );

    internal static readonly ObjectShape<ReadingRow> ReadingRow = new(
        "readingRow",
        static it =>
        {
            ShapeSlot<ReadingKind> kind = it.Need("kind", ResultWords.ReadingKinds, static p => p.Kind);
            ShapeSlot<string> name = it.Need("name", ResultKinds.Text, static p => p.Name);
            ShapeSlot<string> unit = it.Need("unit", ResultKinds.Text, static p => p.Unit);
            it.Part("asFound", Figure, static p => p.AsFound, static (p, v) => p with { AsFound = v });
            it.Part("asLeft", Figure, static p => p.AsLeft, static (p, v) => p with { AsLeft = v });
            it.Part("reference", Threshold, static p => p.Reference, static (p, v) => p with { Reference = v });
            it.Make(values => new(values.Get(kind), values.Get(name), values.Get(unit), null, null, null));
        }
    );

    internal static readonly ObjectShape<RefusedReading> RefusedReading = new(
        "refusedReading",
        static it =>
        {
            ShapeSlot<int> place = it.Need("event", JsonKinds.Count, static p => p.Event);
            ShapeSlot<string> name = it.Need("name", ResultKinds.Text, static p => p.Name);
            ShapeSlot<string> why = it.Need("why", ResultKinds.Text, static p => p.Why);
            it.Make(values => new(values.Get(place), values.Get(name), values.Get(why)));
        }
    );

    internal static readonly ObjectShape<TensionBudget> Budget = new(
        "tensionBudget",
        static it =>
        {
            ShapeSlot<double> turnsThisVisit = it.Need(
                "turnsThisVisit",
                ResultKinds.Number,
                static p => p.TurnsThisVisit
            );
            it.May(
                "earlierTurns",
                ResultKinds.Number,
                static p => p.EarlierTurns,
                static (p, v) => p with { EarlierTurns = v }
            );
            ShapeSlot<Threshold> mostTurns = it.Need("mostTurns", Threshold, static p => p.MostTurns);
            ShapeSlot<double> turnsLeft = it.Need("turnsLeft", ResultKinds.Number, static p => p.TurnsLeft);
            it.May(
                "threadTurnsLeft",
                ResultKinds.Number,
                static p => p.ThreadTurnsLeft,
                static (p, v) => p with { ThreadTurnsLeft = v }
            );
            ShapeSlot<Figure> strainAdded = it.Need("strainAdded", Figure, static p => p.StrainAdded);
            ShapeSlot<Answer<Figure>> tension = it.Need(
                "tension",
                new AnswerKind<Figure>(Figure),
                static p => p.Tension
            );
            ShapeSlot<TurnLimit> limit = it.Need("limit", ResultWords.TurnLimits, static p => p.Limit);
            ShapeSlot<string> limitedBy = it.Need("limitedBy", ResultKinds.Text, static p => p.LimitedBy);
            it.Make(values =>
                new()
                {
                    TurnsThisVisit = values.Get(turnsThisVisit),
                    MostTurns = values.Get(mostTurns),
                    TurnsLeft = values.Get(turnsLeft),
                    StrainAdded = values.Get(strainAdded),
                    Tension = values.Get(tension),
                    Limit = values.Get(limit),
                    LimitedBy = values.Get(limitedBy),
                }
            );
        }
    );

    internal static readonly ObjectShape<LadderStep> LadderStep = new(
        "ladderStep",
        static it =>
        {
            ShapeSlot<double> turns = it.Need("turns", ResultKinds.Number, static p => p.Turns);
            ShapeSlot<Figure> strainAdded = it.Need("strainAdded", Figure, static p => p.StrainAdded);
            ShapeSlot<Answer<Figure>> tension = it.Need(
                "tension",
                new AnswerKind<Figure>(Figure),
                static p => p.Tension
            );
            ShapeSlot<Answer<Figure>> margin = it.Need("margin", new AnswerKind<Figure>(Figure), static p => p.Margin);
            it.Make(values => new(values.Get(turns), values.Get(strainAdded), values.Get(tension), values.Get(margin)));
        }
    );

    internal static readonly ObjectShape<ReadingProposal> ReadingProposal = new(
        "readingProposal",
        static it =>
        {
            ShapeSlot<string> reading = it.Need("reading", ResultKinds.Text, static p => p.Reading);
            ShapeSlot<string> settles = it.Need("settles", ResultKinds.Text, static p => p.Settles);
            ShapeSlot<string> gain = it.Need("gain", ResultKinds.Text, static p => p.Gain);
            ShapeSlot<int> minutes = it.Need("minutes", JsonKinds.Count, Effort);
            it.Make(values => new(values.Get(reading), values.Get(settles), values.Get(gain), values.Get(minutes)));
        }
    );

    internal static readonly ObjectShape<VisitSheet> Sheet = new(
        "visitSheet",
        static it =>
        {
            ShapeSlot<Verdict> verdict = it.Need("verdict", ResultWords.Verdicts, static p => p.Verdict);
            ShapeSlot<string> verdictText = it.Need("verdictText", ResultKinds.Text, static p => p.VerdictText);
            ShapeSlot<ImmutableArray<string>> safetyNow = it.Need(
                "safetyNow",
                ResultKinds.Texts,
                static p => p.SafetyNow
            );
            ShapeSlot<string> makerFirst = it.Need("makerFirst", ResultKinds.Text, static p => p.MakerFirst);
            ShapeSlot<ImmutableArray<NextStep>> nextSteps = it.Need(
                "nextSteps",
                new ListKind<NextStep>(NextStep, "a list"),
                static p => p.NextSteps
            );
            ShapeSlot<ImmutableArray<Finding>> findings = it.Need(
                "findings",
                new ListKind<Finding>(Finding, "a list"),
                static p => p.Findings
            );
            ShapeSlot<ImmutableArray<RankedCause>> causes = it.Need(
                "causes",
                new ListKind<RankedCause>(RankedCause, "a list"),
                static p => p.Causes
            );
            ShapeSlot<string> chancesFrom = it.Need("chancesFrom", ResultKinds.Text, static p => p.ChancesFrom);
            ShapeSlot<Answer<DueDate>> due = it.Need("due", new AnswerKind<DueDate>(DueDate), static p => p.Due);
            ShapeSlot<ImmutableArray<ReadingRow>> readings = it.Need(
                "readings",
                new ListKind<ReadingRow>(ReadingRow, "a list"),
                static p => p.Readings
            );
            ShapeSlot<ImmutableArray<RefusedReading>> refused = it.Need(
                "refused",
                new ListKind<RefusedReading>(RefusedReading, "a list"),
                static p => p.Refused
            );
            ShapeSlot<TensionBudget> budget = it.Need("budget", Budget, static p => p.Budget);
            ShapeSlot<Answer<Figure>> driveBeltMargin = it.Need(
                "driveBeltMargin",
                new AnswerKind<Figure>(Figure),
                static p => p.DriveBeltMargin
            );
            ShapeSlot<Treadmill> machineAsLeft = it.Need(
                "machineAsLeft",
                MachineShapes.Machine,
                static p => p.MachineAsLeft
            );
            ShapeSlot<ImmutableArray<LadderStep>> ladder = it.Need(
                "ladder",
                new ListKind<LadderStep>(LadderStep, "a list"),
                static p => p.Ladder
            );
            ShapeSlot<ImmutableArray<ReadingProposal>> oneMoreReading = it.Need(
                "oneMoreReading",
                new ListKind<ReadingProposal>(ReadingProposal, "a list"),
                static p => p.OneMoreReading
            );
            ShapeSlot<ImmutableArray<string>> notices = it.Need("notices", ResultKinds.Texts, static p => p.Notices);
            ShapeSlot<ImmutableArray<string>> notTold = it.Need("notTold", ResultKinds.Texts, static p => p.NotTold);
            ShapeSlot<ImmutableArray<string>> ownerPage = it.Need(
                "ownerPage",
                ResultKinds.Texts,
                static p => p.OwnerPage
            );
            it.Make(values =>
                new()
                {
                    Verdict = values.Get(verdict),
                    VerdictText = values.Get(verdictText),
                    SafetyNow = values.Get(safetyNow),
                    MakerFirst = values.Get(makerFirst),
                    NextSteps = values.Get(nextSteps),
                    Findings = values.Get(findings),
                    Causes = values.Get(causes),
                    ChancesFrom = values.Get(chancesFrom),
                    Due = values.Get(due),
                    Readings = values.Get(readings),
                    Refused = values.Get(refused),
                    Budget = values.Get(budget),
                    DriveBeltMargin = values.Get(driveBeltMargin),
                    MachineAsLeft = values.Get(machineAsLeft),
                    Ladder = values.Get(ladder),
                    OneMoreReading = values.Get(oneMoreReading),
                    Notices = values.Get(notices),
                    NotTold = values.Get(notTold),
                    OwnerPage = values.Get(ownerPage),
                }
            );
        }
    );

    internal static readonly ObjectShape<TensionEstimate> Tension = new(
        "tensionEstimate",
        static it =>
        {
            ShapeSlot<Estimate<Force>> restTension = it.Need(
                "restTension",
                ResultKinds.EstimateOfForce,
                static p => p.RestTension
            );
            ShapeSlot<Estimate<ForcePerLength>> relaxedForcePerWidth = it.Need(
                "relaxedForcePerWidth",
                ResultKinds.EstimateOfForcePerLength,
                static p => p.RelaxedForcePerWidth
            );
            it.Set(
                "covariance",
                JsonKinds.Force,
                static p => p.Covariance,
                static (p, v) => p with { Covariance = v },
                "of tension and logarithm of stiffness"
            );
            ShapeSlot<bool> stiffnessObserved = it.Need(
                "stiffnessObserved",
                JsonKinds.Boolean,
                static p => p.StiffnessObserved
            );
            ShapeSlot<double> misfit = it.Need("misfit", ResultKinds.Number, static p => p.Misfit);
            it.Make(values =>
                new()
                {
                    RestTension = values.Get(restTension),
                    RelaxedForcePerWidth = values.Get(relaxedForcePerWidth),
                    StiffnessObserved = values.Get(stiffnessObserved),
                    Misfit = values.Get(misfit),
                }
            );
        }
    );

    private static int Effort(ReadingProposal proposal)
    {
        (_, _, _, int minutes) = proposal;
        return minutes;
    }
}
