using System.Collections.Immutable;
using System.Text.Json;
using TreadmillMech.Samples.ServiceVisit.Html;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The ranked causes as text, JSON and on the page.</summary>
public sealed class CauseTests
{
    private static readonly ImmutableArray<RankedCause> Causes =
    [
        new(Cause.OilOnDriveRoller, 0.87, ["Oil on the cloth.", "It slips though it is tight."], ["No squeal <here>."]),
        new(Cause.RunningBeltSlack, 0.094, [], []),
        new(Cause.PulleyLoose, 0.004, [], ["The pulley stands."]),
        new(Cause.NothingWrong, 0, [], []),
    ];

    [Fact]
    public void EveryCauseHasWordsOfItsOwn()
    {
        string[] words = [.. Enum.GetValues<Cause>().Select(Words.Of)];
        Assert.Equal(words.Length, words.Distinct().Count());
        Assert.DoesNotContain(Words.Of((Cause)(-1)), words);
        Assert.All(words, static text => Assert.Matches("^[a-z][a-z',\\- ]+$", text));
    }

    [Fact]
    public void TheTextRanksThemWithTheirEvidence()
    {
        Page page = new();
        CauseText.Write(page, Causes, "Counted by nobody.");
        string[] lines = page.ToString().Split('\n');
        Assert.Equal("CAUSES", lines[1]);
        string[] ranked = [.. lines.Where(static line => line.Contains(" %  ", StringComparison.Ordinal))];
        Assert.Equal(
            [
                "   87 %  there is oil on the drive roller",
                "    9 %  the running belt is slack",
                "  < 1 %  a pulley is loose on its shaft",
                "    0 %  nothing is wrong",
            ],
            ranked
        );
        Assert.Contains(lines, static line => line.EndsWith("Counted by nobody.", StringComparison.Ordinal));
        Assert.Contains("      For:     It slips though it is tight.", lines);
        Assert.Contains("      Against: No squeal <here>.", lines);
        Assert.All(lines, static line => Assert.InRange(line.Length, 0, Page.Width));
    }

    [Fact]
    public void TheJsonHoldsThemWhole()
    {
        string json = JsonText.Of(static to => to.WriteList("causes", Causes, CauseParts.WriteCause));
        JsonElement first = JsonDocument.Parse(json).RootElement.GetProperty("causes")[0];
        Assert.Equal("oilOnDriveRoller", first.GetProperty("cause").GetString());
        Assert.Equal(0.87, first.GetProperty("probability").GetDouble());
        Assert.Equal("Oil on the cloth.", first.GetProperty("for")[0].GetString());
        Assert.Equal("No squeal <here>.", first.GetProperty("against")[0].GetString());
    }

    [Fact]
    public void ThePageRanksThemEscaped()
    {
        Markup page = new();
        CauseHtml.Write(page, Causes, "Counted by nobody.");
        string html = page.ToString();
        Assert.Contains("<b>there is oil on the drive roller (87 %)</b>", html, StringComparison.Ordinal);
        Assert.Contains("No squeal &lt;here&gt;.", html, StringComparison.Ordinal);
        Assert.True(
            html.IndexOf("87 %", StringComparison.Ordinal) < html.IndexOf("9 %)", StringComparison.Ordinal)
                && html.IndexOf("9 %)", StringComparison.Ordinal) < html.IndexOf("&lt; 1 %", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void WithoutCausesThereIsNoSection()
    {
        Page page = new();
        CauseText.Write(page, [], "");
        CauseText.Write(page, default, "");
        Assert.Empty(page.ToString());
        Markup html = new();
        CauseHtml.Write(html, [], "");
        CauseHtml.Write(html, default, "");
        Assert.Empty(html.ToString());
    }
}
