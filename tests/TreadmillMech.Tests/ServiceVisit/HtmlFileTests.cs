namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The page's file: written whole or not at all.</summary>
public sealed class HtmlFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("page-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void APageIsWrittenAndSaidSo()
    {
        string page = Path.Combine(folder, "page.html");
        Sample.Outcome outcome = Sample.Run("healthy", "--html", page);
        Assert.Equal((0, ""), (outcome.Code, outcome.Errors));
        Assert.Equal($"Page written: {page}\n", outcome.Output);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(page), StringComparison.Ordinal);
        Assert.Equal([page], Directory.GetFiles(folder));
    }

    [Fact]
    public void WithJsonBothAreWritten()
    {
        string page = Path.Combine(folder, "page.html");
        Sample.Outcome outcome = Sample.Run("--json", "--html", page);
        Assert.Equal(Sample.Run("--json").Output, outcome.Output);
        Assert.True(File.Exists(page));
    }

    [Fact]
    public void APageThatStandsThereIsReplaced()
    {
        string page = Path.Combine(folder, "page.html");
        File.WriteAllText(page, new string('x', 100_000));
        Assert.Equal(0, Sample.Run("--html", page).Code);
        string written = File.ReadAllText(page);
        Assert.EndsWith("</html>\n", written, StringComparison.Ordinal);
        Assert.DoesNotContain("xxxx", written, StringComparison.Ordinal);
        Assert.Equal([page], Directory.GetFiles(folder));
    }

    [Fact]
    public void ARefusedVisitLeavesThePageAsItWas()
    {
        string page = Path.Combine(folder, "page.html");
        File.WriteAllText(page, "as it was");
        string bad = Sample.Change(Sample.Healthy, "\"82 kg\"", "\"82\"").Text;
        Sample.Outcome outcome = Sample.RunOn(bad, "--html", page);
        Assert.Equal((2, ""), (outcome.Code, outcome.Output));
        Assert.Equal("as it was", File.ReadAllText(page));
        Assert.Equal([page], Directory.GetFiles(folder));
    }

    [Fact]
    public void APlaceThatCannotBeWrittenIsRefused()
    {
        string visit = Path.Combine(folder, "visit.json");
        File.WriteAllText(visit, Sample.Healthy);
        string[] places =
        [
            folder,
            Path.Combine(folder, "none", "page.html"),
            "/dev/null",
            "/dev/full",
            "",
            "a\0b",
            visit,
        ];
        foreach (string place in places)
        {
            Sample.Outcome outcome = Sample.Run(visit, "--html", place);
            Assert.Equal((2, ""), (outcome.Code, outcome.Output));
            Assert.EndsWith("Nothing written.\n", outcome.Errors, StringComparison.Ordinal);
        }

        Assert.Equal(Sample.Healthy, File.ReadAllText(visit));
        Assert.Equal([visit], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void AWriteThatFailsLeavesNothingHalfWritten()
    {
        // The part beside the page has a short name and is written; the move to a name longer than any fails.
        string page = Path.Combine(folder, new string('p', 300));
        Sample.Outcome outcome = Sample.Run("--html", page);
        Assert.Equal((2, ""), (outcome.Code, outcome.Output));
        Assert.Contains("could not be written", outcome.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void ALinkThatLeadsNowhereIsRefused()
    {
        string link = Path.Combine(folder, "page.html");
        File.CreateSymbolicLink(link, link);
        Assert.Equal(2, Sample.Run("--html", link).Code);
        Assert.Equal([link], Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void APageBehindALinkIsReplacedAndTheLinkStays()
    {
        string page = Path.Combine(folder, "page.html");
        string link = Path.Combine(folder, "link.html");
        File.WriteAllText(page, "old");
        File.CreateSymbolicLink(link, page);
        Assert.Equal(0, Sample.Run("--html", link).Code);
        Assert.Equal(page, new FileInfo(link).LinkTarget);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--html")]
    [InlineData("--html", "--json")]
    [InlineData("--html", "one.html", "--html", "two.html")]
    [InlineData("compare", "healthy", "--html", "page.html")]
    [InlineData("compare", "healthy")]
    [InlineData("compare", "healthy", "healthy", "healthy")]
    public void CommandsThatDoNotFitAreRefused(params string[] args)
    {
        Sample.Outcome outcome = Sample.Run(args);
        Assert.Equal((2, ""), (outcome.Code, outcome.Output));
        Assert.Contains("Expected: ", outcome.Errors, StringComparison.Ordinal);
    }
}
