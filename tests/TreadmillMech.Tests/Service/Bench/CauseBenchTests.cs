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
    public void TheFirstStepServesTheCause() => Assert.InRange(BenchPage.Runs[0].Run.RightAction, 0.9, 1);

    [Fact]
    public void ThePageIsThatOfTheBench() => Assert.Equal(File.ReadAllText(PagePath), BenchPage.Text());

    [Fact(Explicit = true)]
    public void WritesTheBench() => File.WriteAllText(PagePath, BenchPage.Text());
}
