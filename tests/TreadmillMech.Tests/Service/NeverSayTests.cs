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

    // Without this, a rule about advice that never comes could not fail.
    [Fact]
    public void TheVisitsReachEveryKindOfAdvice()
    {
        VisitSheet[] sheets =
        [
            .. RandomVisit.Arbitrary().Generator.Sample(12_000).Select(v => VisitReview.Of(v.Visit)),
        ];
        Assert.InRange(sheets.Count(s => s.AdvisesATurnOfBoth()), 20, 12_000);
        foreach (Subject subject in Enum.GetValues<Subject>().Except([Subject.Motor]))
        {
            Assert.InRange(sheets.Count(s => !s.Silent(subject)), 20, 12_000);
        }

        foreach (Verdict verdict in Enum.GetValues<Verdict>())
        {
            Assert.InRange(sheets.Count(s => s.Verdict == verdict), 20, 12_000);
        }

        Assert.InRange(sheets.Count(s => s.Ladder.Skip(1).Any(r => r.Tension.Found)), 20, 12_000);
        Assert.InRange(sheets.Count(s => s.Refused.Length > 0), 20, 12_000);
    }

    [Property]
    public void NothingDangerousIsAdvised(RandomVisit random)
    {
        foreach (string line in SheetText.Lines(VisitReview.Of(random.Visit)))
        {
            Assert.DoesNotMatch(Forbidden(), Warnings().Replace(line, ""));
        }
    }

    [Property]
    public void SentencesOnDangerSayTheSafeThing(RandomVisit random)
    {
        foreach (
            string sentence in SheetText.Lines(VisitReview.Of(random.Visit)).SelectMany(l => SentenceEnd().Split(l))
        )
        {
            Implies(sentence, "capacitor", "measure that the controller's capacitors are dead");
            Implies(sentence, "customer", "never a customer or patient");
            Implies(sentence, "patient", "never a customer or patient");
            Implies(sentence, "belt moves", "Keep hands, hair and cloth away");
            Implies(sentence, "key", "safety key");
            Implies(sentence, "take its safety key", "Unplug");
        }
    }

    [Property]
    public void EveryStepSaysWhatToDoWhatToExpectAndWhenToStop(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
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

    [Property]
    public void OneBoltIsNeverBoth(RandomVisit random)
    {
        if (random.Visit.Machine.TakeUp.Bolts == 1)
        {
            Assert.DoesNotContain(SheetText.Lines(VisitReview.Of(random.Visit)), line => BothBolts().IsMatch(line));
        }
    }

    [Property]
    public void AMachineWithoutADriveBeltHearsOfNone(RandomVisit random)
    {
        if (random.Visit.Machine.DriveBelt is null)
        {
            Assert.DoesNotContain(
                SheetText.Lines(VisitReview.Of(random.Visit)),
                line =>
                    line.Contains("drive belt", StringComparison.OrdinalIgnoreCase)
                    && !line.Contains("has no drive belt", StringComparison.Ordinal)
            );
        }
    }

    /// <summary>Whoever is beyond the plate is never sent onto the belt again.</summary>
    [Property]
    public void NoStepAsksForADemandBeyondThePlate(RandomVisit random)
    {
        Demand demand = random.Visit.TestDemand;
        if (
            demand.Person.Mass > (random.Visit.Machine.Plate?.LargestUserMass ?? demand.Person.Mass)
            || demand.Speed > (random.Visit.Machine.Plate?.HighestSpeed ?? demand.Speed)
        )
        {
            VisitSheet sheet = VisitReview.Of(random.Visit);
            Assert.DoesNotContain(
                sheet.NextSteps.Select(s => s.Action).Concat(sheet.OneMoreReading.Select(p => p.Reading)),
                line => line.Contains("the test demand", StringComparison.Ordinal)
            );
        }
    }

    [Property]
    public void FindingsComeGravestFirstAndEveryLimitHasASource(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        Assert.Equal(sheet.Findings.OrderByDescending(f => f.Severity), sheet.Findings);
        Assert.All(sheet.Findings, f => Assert.False(string.IsNullOrWhiteSpace(f.Statement)));
        Assert.All(
            sheet.Findings,
            f => Assert.True(f.Limit is null || !string.IsNullOrWhiteSpace(f.Limit.Source), f.Statement)
        );
        Assert.All(sheet.Findings, f => Assert.True(f.Number is null || double.IsFinite(f.Number.Value), f.Statement));
    }

    [Property]
    public void TheVerdictIsThatOfTheGravestFinding(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        Verdict gravest = sheet.Findings.Select(f => f.Severity).DefaultIfEmpty().Max() switch
        {
            Severity.OutOfService => Verdict.OutOfService,
            Severity.Restrict => Verdict.Restrict,
            _ => Verdict.Use,
        };
        Assert.Equal(gravest, sheet.Verdict);
    }

    [Property]
    public void WithoutAStiffnessNoTurnIsGivenInNewtons(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        bool known =
            random.Visit.Machine.Belt.RelaxedForcePerWidth is not null
            || sheet.Readings.Any(r => r.Name.Contains("force per width", StringComparison.Ordinal));
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
        Assert.All(
            sheet.Ladder.Where(s => s.Turns > 0 && !LeadsBack(s.Turns)),
            s => Assert.False(s.Tension.Found || s.Margin.Found)
        );
        Assert.All(
            sheet.NextSteps.Where(_ => !LeadsBack(0.25)),
            s => Assert.DoesNotMatch(Newtons(), s.Action + s.Expect + s.StopAt + s.Undo)
        );
        Assert.False(sheet.Budget.Tension.Found && !LeadsBack(0));
    }

    [Property]
    public void TheOwnersPageHasNoForcesAndNoProbabilities(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        Assert.All(sheet.OwnerPage, line => Assert.DoesNotMatch(NotForOwners(), line));
        Assert.True(sheet.OwnerPage.Length >= 2);
    }

    [Property(MaxTest = 1000)]
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

    [Property]
    public void NoTurnOfBothBoltsWithoutItsGuards(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
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

    [Property]
    public void NoBoltIsTightenedBeyondTheTurnsLeft(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        if (sheet.Budget.TurnsLeft < 0.125)
        {
            Assert.All(sheet.NextSteps, s => Assert.DoesNotMatch("^(For reserve, t|T)ighten", s.Action));
        }
    }

    [Property]
    public void WhoCleansTurnsOrReplacesIsToldToUnplugOrStandStill(RandomVisit random)
    {
        foreach (NextStep step in VisitReview.Of(random.Visit).NextSteps)
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

    [Property]
    public void WhoTestsUnderLoadIsToldWhoMay(RandomVisit random)
    {
        foreach (NextStep step in VisitReview.Of(random.Visit).NextSteps)
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
