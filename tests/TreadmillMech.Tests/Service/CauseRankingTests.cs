using FsCheck.Xunit;
using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service;

[Properties(Arbitrary = [typeof(RandomVisit)], MaxTest = 300)]
public sealed class CauseRankingTests
{
    /// <summary>By hand from Bayes' rule with no evidence at all: the priors, the same whatever the machine.</summary>
    [Fact]
    public void WithoutReadingsThePriorsRemain()
    {
        VisitSheet sheet = Visits.Review(Machines.Plain with { Plate = null });
        Assert.Equal(1, sheet.Causes.Sum(c => c.Probability), 1e-12);
        Assert.All(sheet.Causes, c => Assert.Empty(c.For));
        Assert.InRange(sheet.Causes[0].Probability, 0.1, 0.2);
    }

    [Property]
    public void ProbabilitiesAddUpAndComeInOrder(RandomVisit random)
    {
        VisitSheet sheet = VisitReview.Of(random.Visit);
        Assert.Equal(Enum.GetValues<Cause>().Length, sheet.Causes.Select(c => c.Cause).Distinct().Count());
        Assert.Equal(1, sheet.Causes.Sum(c => c.Probability), 1e-9);
        Assert.Equal(sheet.Causes.OrderByDescending(c => c.Probability), sheet.Causes);
        Assert.All(sheet.Causes, c => Assert.InRange(c.Probability, 0, 1));
    }

    // Bayes' rule: evidence e for one cause against another multiplies their odds by the ratio of its likelihoods, whatever
    // else is known. The same reading in two visits must move the odds alike.
    [Fact]
    public void OneReadingMovesTheOddsByTheSameFactorEverywhere()
    {
        SymptomReading squeal = new() { Symptom = Symptom.HighSqueal, Present = true };
        double alone = Odds(Visits.Review(squeal)) / Odds(Visits.Review(Absent));
        double withMore =
            Odds(Visits.Review(Happened.RollerDry, Happened.Slips, squeal))
            / Odds(Visits.Review(Happened.RollerDry, Happened.Slips, Absent));
        Assert.Equal(alone, withMore, 1e-9 * alone);
        Assert.True(alone > 1);
    }

    [Fact]
    public void OilWipedOffTheRollerSpeaksForOilAndAgainstASlackBelt()
    {
        VisitSheet sheet = Visits.Review(Happened.RollerOily, Happened.Slips);
        Assert.Equal(Cause.OilOnDriveRoller, sheet.Causes[0].Cause);
        Assert.Contains("There is oil on the drive roller.", sheet.Causes[0].For);
        RankedCause slack = Assert.Single(sheet.Causes, c => c.Cause == Cause.RunningBeltSlack);
        Assert.Contains("There is oil on the drive roller.", slack.Against);
    }

    [Fact]
    public void BeforeAndAfterDecides()
    {
        VisitEvent[] slipping = [Happened.Slips, Happened.Turned(0.5), Happened.Holds];
        Assert.Equal(Cause.RunningBeltSlack, Visits.Review(slipping).Causes[0].Cause);
        VisitEvent[] cleaned = [Happened.Slips, Happened.Cleaned(CleanedPlace.Rollers), Happened.Holds];
        Assert.Equal(Cause.OilOnDriveRoller, Visits.Review(cleaned).Causes[0].Cause);
    }

    [Fact]
    public void TurnsThatSomebodyGaveBeforeAreNotOfThisVisit()
    {
        VisitSheet sheet = Visits.Review(Happened.Turned(2) with { By = TurnedBy.SomebodyBefore });
        Assert.Equal(0, sheet.Budget.TurnsThisVisit);
        Assert.Equal(2, sheet.Budget.EarlierTurns);
        Assert.Equal(2, sheet.Budget.TurnsLeft);
    }

    private static SymptomReading Absent { get; } = new() { Symptom = Symptom.HighSqueal, Present = false };

    private static double Odds(VisitSheet sheet) =>
        Of(sheet, Cause.DriveBeltGlazed) / Of(sheet, Cause.RunningBeltSlack);

    private static double Of(VisitSheet sheet, Cause cause) => sheet.Causes.Single(c => c.Cause == cause).Probability;
}
