using TreadmillMech.Service;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>Simulated visits with hidden causes: how often the right cause stands first.</summary>
public sealed class CauseBenchTests
{
    private static string PagePath => Path.Combine(SourceTree.Root(), "docs", "articles", "causes-bench.md");

    [Fact]
    public void TheRightCauseStandsFirst() => Assert.InRange(BenchPage.Runs[0].Run.RightFirst, 0.95, 1);

    [Fact]
    public void NoGuardIsEverBroken() => Assert.All(BenchPage.Runs, r => Assert.Equal(0, r.Run.GuardsBroken));

    [Fact]
    public void FewPartsAreReplacedInVain() =>
        Assert.All(BenchPage.Runs, r => Assert.InRange(r.Run.UnneededParts, 0, 0.05));

    [Fact]
    public void TheFirstStepServesTheCause() => Assert.InRange(BenchPage.Runs[0].Run.RightAction, 0.95, 1);

    // Of the lines with error put into the model only the tension is asked: its lifts have none.
    [Fact]
    public void IntervalsHoldWhatTheySay() =>
        Assert.All(
            BenchPage.Runs,
            r =>
            {
                Held(r.Run, ReadingKind.RestTension);
                if (r.Run.ModelIsRight)
                {
                    Held(r.Run, ReadingKind.DeckFriction);
                }
            }
        );

    /// <summary>What the sheet proposes to read next pays.</summary>
    [Fact]
    public void ProposedReadingsTellTheCausesApart()
    {
        Assert.True(BenchPage.Runs[2].Run.RightFirst > BenchPage.Runs[1].Run.RightFirst + 0.01);
        Assert.True(BenchPage.Runs[4].Run.RightFirst > BenchPage.Runs[3].Run.RightFirst + 0.03);
    }

    /// <summary>Chances that are stated are right at least as often, twice the error of so many visits aside.</summary>
    [Fact]
    public void NoChanceIsStatedTooHigh()
    {
        IEnumerable<Calibration> runs =
        [
            .. BenchPage.Runs.Select(r => r.Run).Where(r => r.ModelIsRight).Select(r => r.Calibration),
        ];
        IEnumerable<Calibration> bins = BenchPage.Bins.Select(bin => Calibration.Between(runs, bin.From, bin.To));
        Assert.All(
            [.. runs, .. bins],
            some =>
            {
                Assert.True(some.Visits > 100);
                Assert.InRange(some.Right, some.Stated - (2 * some.Error), 1);
            }
        );
    }

    /// <summary>93 to 97 %, twice the binomial error of so many visits aside.</summary>
    private static void Held(BenchRun run, ReadingKind kind)
    {
        (int told, double held) = run.Coverage(kind);
        double error = 2 * Math.Sqrt(0.95 * 0.05 / told);
        Assert.True(told > 200);
        Assert.InRange(held, 0.93 - error, 0.97 + error);
    }

    [Fact]
    public void ThePageIsThatOfTheBench() => Assert.Equal(File.ReadAllText(PagePath), BenchPage.Text());

    [Fact(Explicit = true)]
    public void WritesTheBench() => File.WriteAllText(PagePath, BenchPage.Text());
}
