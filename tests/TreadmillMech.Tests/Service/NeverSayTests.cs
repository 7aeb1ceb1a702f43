using System.Globalization;
using System.Text.RegularExpressions;
using FsCheck.Fluent;
using FsCheck.Xunit;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

/// <summary>What no sheet may ever say, over thousands of visits made of any events.</summary>
[Properties(Arbitrary = [typeof(RandomVisit)], MaxTest = 3000)]
public sealed partial class NeverSayTests
{
    /// <summary>Advice that hurts people or machines; what a sheet says against it is taken out before.</summary>
    [GeneratedRegex(
        @"(bigger|larger|stronger|higher) (breaker|fuse)|\brais(e|ing) |bypass|jumper|defeat|\bwait\b|\bminutes?\b"
            + @"|spacers|longer bolts|while (it|the belt|the machine) (runs|turns|is running)",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Forbidden();

    [GeneratedRegex(
        @"Fit no bigger breaker\.|raise no limit\.|Do not lengthen the adjustment with spacers or longer bolts\.",
        RegexOptions.IgnoreCase
    )]
    private static partial Regex Warnings();

    [GeneratedRegex(@"(?<=[.!?]) ")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"(?<!not )\b(tighten|loosen) (the|both)|^Take .* back", RegexOptions.IgnoreCase)]
    private static partial Regex TurnsABolt();

    [GeneratedRegex(@"\bboth (take-up )?bolts|, equally", RegexOptions.IgnoreCase)]
    private static partial Regex BothBolts();

    [GeneratedRegex(@"\d N\b|newton", RegexOptions.IgnoreCase)]
    private static partial Regex Newtons();

    [GeneratedRegex(@"\bN\b|newton|%|probab|likel", RegexOptions.IgnoreCase)]
    private static partial Regex NotForOwners();

    /// <summary>One visit, one sheet, every rule.</summary>
    [Property]
    public void NoSheetBreaksARule(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        NothingDangerousIsAdvised(random, sheet);
        SentencesOnDangerSayTheSafeThing(random, sheet);
        EveryStepSaysWhatToDoWhatToExpectAndWhenToStop(random, sheet);
        OneBoltIsNeverBoth(random, sheet);
        AMachineWithoutADriveBeltHearsOfNone(random, sheet);
        NoStepAsksForADemandBeyondThePlate(random, sheet);
        FindingsComeGravestFirstAndEveryLimitHasASource(random, sheet);
        TheVerdictIsThatOfTheGravestFinding(random, sheet);
        WithoutAStiffnessNoTurnIsGivenInNewtons(random, sheet);
        TheOwnersPageHasNoForcesAndNoProbabilities(random, sheet);
        NoTurnOfBothBoltsWithoutItsGuards(random, sheet);
        NoBoltIsTightenedBeyondTheTurnsLeft(random, sheet);
        WhoCleansTurnsOrReplacesIsToldToUnplugOrStandStill(random, sheet);
        WhoTestsUnderLoadIsToldWhoMay(random, sheet);
    }

    // Without this, a rule about advice that never comes could not fail.
    [Fact]
    public void TheVisitsReachEveryKindOfAdvice()
    {
        VisitSheet[] sheets = [.. RandomVisit.Arbitrary().Generator.Sample(4_000).Select(v => VisitReview.Of(v.Visit))];
        Assert.InRange(sheets.Count(s => s.AdvisesATurnOfBoth()), 7, 4_000);
        foreach (Subject subject in Enum.GetValues<Subject>())
        {
            Assert.InRange(sheets.Count(s => !s.Silent(subject)), 7, 4_000);
        }

        foreach (Verdict verdict in Enum.GetValues<Verdict>())
        {
            Assert.InRange(sheets.Count(s => s.Verdict == verdict), 7, 4_000);
        }

        Assert.InRange(sheets.Count(s => s.Ladder.Skip(1).Any(r => r.Tension.Found)), 7, 4_000);
        Assert.InRange(sheets.Count(s => s.Refused.Length > 0), 7, 4_000);
    }

    private static void NothingDangerousIsAdvised(RandomVisit random, VisitSheet sheet)
    {
        foreach (string line in SheetText.Lines(sheet))
        {
            Assert.DoesNotMatch(Forbidden(), Warnings().Replace(line, ""));
        }
    }

    private static void SentencesOnDangerSayTheSafeThing(RandomVisit random, VisitSheet sheet)
    {
        foreach (string sentence in SheetText.Lines(sheet).SelectMany(l => SentenceEnd().Split(l)))
        {
            Implies(sentence, "capacitor", "measure that the controller's capacitors are dead");
            Implies(sentence, "customer", "never a customer or patient");
            Implies(sentence, "patient", "never a customer or patient");
            Implies(sentence, "belt moves", "Keep hands, hair and cloth away");
            Implies(sentence, "key", "safety key");
            Implies(sentence, "take its safety key", "Unplug");
        }
    }

    private static void EveryStepSaysWhatToDoWhatToExpectAndWhenToStop(RandomVisit random, VisitSheet sheet)
    {
        Assert.Equal(sheet.Findings.Count(f => f.Next is not null), sheet.NextSteps.Length);
        foreach (NextStep step in sheet.NextSteps)
        {
            Assert.False(string.IsNullOrWhiteSpace(step.Action));
            Assert.False(string.IsNullOrWhiteSpace(step.Expect));
            Assert.False(string.IsNullOrWhiteSpace(step.StopAt));
            Assert.True(step.Undo is null || !string.IsNullOrWhiteSpace(step.Undo));
            Assert.True(step.Undo is not null || !TurnsABolt().IsMatch(step.Action), step.Action);
            Assert.NotEmpty(step.Cautions);
        }
    }

    private static void OneBoltIsNeverBoth(RandomVisit random, VisitSheet sheet)
    {
        if (random.Visit.Machine.TakeUp.Bolts == 1)
        {
            Assert.DoesNotContain(SheetText.Lines(sheet), line => BothBolts().IsMatch(line));
        }
    }

    private static void AMachineWithoutADriveBeltHearsOfNone(RandomVisit random, VisitSheet sheet)
    {
        if (random.Visit.Machine.DriveBelt is null)
        {
            Assert.DoesNotContain(
                SheetText.Lines(sheet),
                line =>
                    line.Contains("drive belt", StringComparison.OrdinalIgnoreCase)
                    && !line.Contains("has no drive belt", StringComparison.Ordinal)
            );
        }
    }

    /// <summary>Whoever is beyond the plate is never sent onto the belt again.</summary>
    private static void NoStepAsksForADemandBeyondThePlate(RandomVisit random, VisitSheet sheet)
    {
        Demand demand = random.Visit.TestDemand;
        if (
            demand.Person.Mass > (random.Visit.Machine.Plate?.LargestUserMass ?? demand.Person.Mass)
            || demand.Speed > (random.Visit.Machine.Plate?.HighestSpeed ?? demand.Speed)
        )
        {
            Assert.DoesNotContain(
                sheet.NextSteps.Select(s => s.Action).Concat(sheet.OneMoreReading.Select(p => p.Reading)),
                line => line.Contains("the test demand", StringComparison.Ordinal)
            );
        }
    }

    private static void FindingsComeGravestFirstAndEveryLimitHasASource(RandomVisit random, VisitSheet sheet)
    {
        Assert.Equal(sheet.Findings.OrderByDescending(f => f.Severity), sheet.Findings);
        Assert.All(sheet.Findings, f => Assert.False(string.IsNullOrWhiteSpace(f.Statement)));
        Assert.All(
            sheet.Findings,
            f => Assert.All(f.Limits, l => Assert.False(string.IsNullOrWhiteSpace(l.Source), f.Statement))
        );

        // A number that was judged has the limit beside it.
        Assert.All(
            sheet.Findings,
            f =>
                Assert.True(
                    f.Number is null || f.Severity == Severity.Note || f.Limit is not null || f.Limits.Length > 0,
                    f.Statement
                )
        );
        Assert.All(sheet.Findings, f => Assert.True(f.Number is null || double.IsFinite(f.Number.Value), f.Statement));
    }

    private static void TheVerdictIsThatOfTheGravestFinding(RandomVisit random, VisitSheet sheet)
    {
        Verdict gravest = sheet.Findings.Select(f => f.Severity).DefaultIfEmpty().Max() switch
        {
            Severity.OutOfService => Verdict.OutOfService,
            Severity.Restrict => Verdict.Restrict,
            _ when sheet.Verdict == Verdict.NotEnoughRead => Verdict.NotEnoughRead,
            _ => Verdict.Use,
        };
        Assert.Equal(gravest, sheet.Verdict);

        // Nobody declares fit what nobody tried: a test under load, or speeds under load beside unloaded ones.
        bool tried = random.Visit.Events.Any(static e =>
            e is SlipTestReading or SpeedReading { State: LoadState.Loaded }
        );
        Assert.True(tried || sheet.Verdict != Verdict.Use);
    }

    private static void WithoutAStiffnessNoTurnIsGivenInNewtons(RandomVisit random, VisitSheet sheet)
    {
        bool known =
            random.Visit.Machine.Belt.RelaxedForcePerWidth is not null
            || sheet.Readings.Any(r => r.Kind == ReadingKind.BeltStiffness);
        if (known)
        {
            return;
        }

        // A rung that leads back to the bolt position of the beginning, or of the last lift, needs no stiffness.
        TakeUpAction[] all = [.. random.Visit.Events.OfType<TakeUpAction>().Where(t => t.By == TurnedBy.Technician)];
        TakeUpAction[] since =
        [
            .. random
                .Visit.Events.Reverse()
                .TakeWhile(e => e is not LiftReading)
                .OfType<TakeUpAction>()
                .Where(t => t.By == TurnedBy.Technician),
        ];
        bool LeadsBack(double turns) =>
            ((TakeUpAction[][])[all, since]).Any(given =>
                given.Sum(t => t.LeftTurns) + turns == 0 && given.Sum(t => t.RightTurns) + turns == 0
            );
        // A margin there has the band of the stiffness in it.
        Assert.All(
            sheet.Ladder.Where(s => s.Turns > 0 && !LeadsBack(s.Turns)),
            s =>
            {
                Assert.False(s.Tension.Found);
                Assert.True(!s.Margin.Found || s.Margin.Value.StandardUncertainty > 0);
            }
        );
        Assert.All(
            sheet.NextSteps.Where(_ => !LeadsBack(0.25)),
            s => Assert.DoesNotMatch(Newtons(), s.Action + s.Expect + s.StopAt + s.Undo)
        );
        Assert.False(sheet.Budget.Tension.Found && !LeadsBack(0));
    }

    private static void TheOwnersPageHasNoForcesAndNoProbabilities(RandomVisit random, VisitSheet sheet)
    {
        Assert.All(sheet.OwnerPage, line => Assert.DoesNotMatch(NotForOwners(), line));
        Assert.True(sheet.OwnerPage.Length >= 2);
    }

    [Property(MaxTest = 300)]
    public void TextsDoNotFollowTheCulture(RandomVisit random)
    {
        string plain = SheetText.Of(VisitReview.Of(random.Visit));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = Commas.Culture;
            Assert.Equal(plain, SheetText.Of(VisitReview.Of(random.Visit)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static void NoTurnOfBothBoltsWithoutItsGuards(RandomVisit random, VisitSheet sheet)
    {
        if (sheet.AdvisesATurnOfBoth())
        {
            Guards guards = Guards.Of(random.Visit, sheet);
            Assert.True(guards.RollerWiped, "roller not wiped");
            Assert.True(guards.RollerDry, "lubricant or dust on the roller");
            Assert.True(guards.DriveBeltRead, "drive belt not ruled out");
            Assert.True(guards.Reference, "no lift and no slip test");
            Assert.True(guards.TurnsLeft >= 0.25 - 1e-9, $"turns left {guards.TurnsLeft}");
            Assert.True(guards.Retested, "work done since the last slip test");
        }
    }

    private static void NoBoltIsTightenedBeyondTheTurnsLeft(RandomVisit random, VisitSheet sheet)
    {
        if (sheet.Budget.TurnsLeft < 0.125)
        {
            Assert.All(sheet.NextSteps, s => Assert.DoesNotMatch("^(For reserve, t|T)ighten", s.Action));
        }
    }

    private static void WhoCleansTurnsOrReplacesIsToldToUnplugOrStandStill(RandomVisit random, VisitSheet sheet)
    {
        foreach (NextStep step in sheet.NextSteps)
        {
            bool hands = Regex.IsMatch(
                step.Action,
                "(?<!not )(tighten|loosen|clean|degrease|replace|wipe|slide|take both)",
                RegexOptions.IgnoreCase
            );
            bool safe = step.Cautions.Any(c => c.Contains("unplug", StringComparison.OrdinalIgnoreCase));
            bool still = step.Action.Contains("standing still", StringComparison.Ordinal);
            Assert.True(!hands || safe || still, step.Action);
        }
    }

    private static void WhoTestsUnderLoadIsToldWhoMay(RandomVisit random, VisitSheet sheet)
    {
        foreach (NextStep step in sheet.NextSteps)
        {
            bool test = Regex.IsMatch(step.Action, "slip test|under the test demand", RegexOptions.IgnoreCase);
            Assert.True(
                !test || step.Cautions.Any(c => c.Contains("never a customer", StringComparison.Ordinal)),
                step.Action
            );
        }
    }

    private static void Implies(string sentence, string word, string safe)
    {
        if (sentence.Contains(word, StringComparison.OrdinalIgnoreCase))
        {
            Assert.Contains(safe, sentence, StringComparison.OrdinalIgnoreCase);
        }
    }
}
