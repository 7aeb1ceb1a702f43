using System.Text.RegularExpressions;
using System.Xml.Linq;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Samples.ServiceVisit.Html;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The page: whole, self-contained, and readable without seeing its charts.</summary>
public sealed partial class HtmlPageTests
{
    public static TheoryData<string> Visits => [.. Bundled.All.Select(static visit => visit.Name), ""];

    [Theory]
    [MemberData(nameof(Visits))]
    public void EveryElementIsClosedAndThePageIsSelfContained(string name)
    {
        string page = Page(name);
        XElement root = Parsed(page);
        Assert.StartsWith("<!DOCTYPE html>\n", page, StringComparison.Ordinal);
        Assert.Equal("en", root.Attribute("lang")!.Value);
        Assert.Contains(root.Descendants("meta"), static m => m.Attribute("name")?.Value == "viewport");
        Assert.Contains(root.Descendants("meta"), static m => m.Attribute("charset")?.Value == "utf-8");
        Assert.Empty(root.Descendants("script"));
        Assert.DoesNotContain(
            root.DescendantsAndSelf().Attributes(),
            static a =>
                a.Name.LocalName is "src" or "srcset" or "xlink"
                || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal)
        );
        Assert.All(root.Descendants().Attributes("href"), static a => Assert.Matches("^(#[a-z]+|data:,)$", a.Value));
        Assert.DoesNotMatch("https?://|url\\(|@import", page);
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void EveryChartHasATitleADescriptionAndTextThatIsText(string name)
    {
        XElement root = Parsed(Page(name));
        List<XElement> charts = [.. root.Descendants("svg")];
        Assert.NotEmpty(charts);
        foreach (XElement chart in charts)
        {
            Assert.Equal("img", chart.Attribute("role")!.Value);
            string[] named = chart.Attribute("aria-labelledby")!.Value.Split(' ');
            Assert.Equal(named[0], chart.Element("title")!.Attribute("id")!.Value);
            Assert.Equal(named[1], chart.Element("desc")!.Attribute("id")!.Value);
            Assert.Matches("[a-z]{3}.*[0-9].*\\.$", chart.Element("desc")!.Value);
            Assert.NotEmpty(chart.Elements("text"));
            Assert.DoesNotContain("NaN", chart.ToString(), StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", chart.ToString(), StringComparison.Ordinal);
        }

        string[] ids = [.. root.Descendants().Attributes("id").Select(static a => a.Value)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void NothingIsDrawnOutsideItsDrawing(string name)
    {
        foreach (XElement chart in Parsed(Page(name)).Descendants("svg"))
        {
            double[] box = Numbers(chart.Attribute("viewBox")!.Value);
            foreach (XElement shape in chart.Elements())
            {
                double[] across = [.. Values(shape, "x", "x1", "x2", "cx")];
                double[] down = [.. Values(shape, "y", "y1", "y2", "cy")];
                Assert.All(across, x => Assert.InRange(x, 0, box[2]));
                Assert.All(down, y => Assert.InRange(y, 0, box[3]));
                if (shape.Name.LocalName == "text")
                {
                    // Sans-serif letters of 12 px are about 6.6 px wide on the mean.
                    double width = 6.6 * shape.Value.Length;
                    double before = shape.Attribute("class")!.Value.Split(' ')[0] switch
                    {
                        "right" => width,
                        "middle" => width / 2,
                        _ => 0,
                    };
                    Assert.InRange(across[0] - before, -8, box[2]);
                    Assert.InRange(across[0] - before + width, 0, box[2] + 8);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void HeadingsStepDownOneAtATime(string name)
    {
        int[] levels =
        [
            .. Parsed(Page(name))
                .Descendants()
                .Where(static e => Heading().IsMatch(e.Name.LocalName))
                .Select(static e => e.Name.LocalName[1] - '0'),
        ];
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, static level => level == 1);
        Assert.All(levels.Zip(levels[1..]), static pair => Assert.InRange(pair.Second, 2, pair.First + 1));
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void EverythingOfTheSheetIsOnThePage(string name)
    {
        VisitFile document = VisitReaderTests.Read(Text(name));
        VisitSheet sheet = VisitReview.Of(document.Visit);
        XElement root = Parsed(VisitPage.Of(document, sheet));
        string technician = Part(root, "technician").Value;
        IEnumerable<string> texts =
        [
            sheet.VerdictText,
            sheet.MakerFirst,
            .. sheet.SafetyNow,
            .. sheet.NextSteps.SelectMany(static s => (string[])[s.Action, s.Expect, s.StopAt, .. s.Cautions]),
            .. sheet.Findings.SelectMany(static f => (string[])[f.Statement, .. f.For, .. f.Against]),
            .. sheet.Readings.SelectMany(static r => (string[])[r.Name, $"{r.AsFound}", $"{r.AsLeft}"]),
            .. sheet.Notices,
            .. sheet.Refused.Select(static r => r.Why),
            .. sheet.OneMoreReading.Select(static r => r.Settles),
            $"{sheet.Budget.StrainAdded}",
        ];
        Assert.All(texts, text => Assert.Contains(text, technician, StringComparison.Ordinal));
        string owner = Part(root, "owner").Value;
        Assert.All(sheet.OwnerPage, text => Assert.Contains(text, owner, StringComparison.Ordinal));
        Assert.Contains(sheet.MakerFirst, owner, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void TheOwnersPartHasNoForcesAndNoProbabilities(string name)
    {
        string owner = Part(Parsed(Page(name)), "owner").Value;
        Assert.DoesNotMatch(@"[0-9] ?(N|kN|lbf|Nm|N/mm)\b|probab|likel|±", owner);
    }

    [Fact]
    public void AHostileNameStaysAName()
    {
        const string Hostile = "<script>alert(1)</script> & \\\"q\\\" '";
        string json = Sample.Change(Sample.Slipping, "Larkspur 12 (invented)", Hostile).Text;
        VisitFile document = VisitReaderTests.Read(json);
        string page = VisitPage.Of(document, VisitReview.Of(document.Visit));
        XElement root = Parsed(page);
        Assert.Empty(root.Descendants("script"));
        Assert.Equal("<script>alert(1)</script> & \"q\" '", root.Descendants("h1").Single().Value);
    }

    [Fact]
    public void ThePageIsLight() =>
        Assert.All(Bundled.All, static visit => Assert.InRange(Page(visit.Name).Length, 5_000, 60_000));

    private static string Page(string name)
    {
        VisitFile document = VisitReaderTests.Read(Text(name));
        return VisitPage.Of(document, VisitReview.Of(document.Visit));
    }

    private static string Text(string name) => name.Length == 0 ? ExampleVisit.Json : Sample.Text(name);

    private static XElement Parsed(string page) =>
        XDocument.Parse(page[page.IndexOf("<html", StringComparison.Ordinal)..]).Root!;

    private static XElement Part(XElement root, string id) =>
        root.Descendants("section").Single(section => section.Attribute("id")?.Value == id);

    private static IEnumerable<double> Values(XElement shape, params string[] names) =>
        names.Select(name => shape.Attribute(name)).OfType<XAttribute>().Select(static a => Numbers(a.Value)[0]);

    private static double[] Numbers(string text) =>
        [.. text.Split(' ').Select(static n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture))];

    [GeneratedRegex("^h[1-6]$")]
    private static partial Regex Heading();
}
