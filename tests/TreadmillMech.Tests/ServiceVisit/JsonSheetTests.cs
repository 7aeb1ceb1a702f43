using System.Text.Json;
using TreadmillMech.Samples.ServiceVisit.Printing;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The sheet for machines.</summary>
public sealed class JsonSheetTests
{
    private static readonly JsonElement Root = JsonDocument.Parse(SheetPages.Json).RootElement;

    [Fact]
    public void TheNamesStay()
    {
        string[] names =
        [
            "format",
            "machine",
            "verdict",
            "verdictText",
            "safetyNow",
            "nextSteps",
            "findings",
            "causes",
            "chancesFrom",
            "readings",
            "budget",
            "due",
            "ladder",
            "driveBeltMargin",
            "notTold",
            "oneMoreReading",
            "refused",
            "notices",
            "ownerPage",
            "makerFirst",
        ];
        Assert.Equal(names, Root.EnumerateObject().Select(static field => field.Name));
        Assert.Equal("treadmillmech-sheet/1", Root.GetProperty("format").GetString());
        Assert.Equal("outOfService", Root.GetProperty("verdict").GetString());
    }

    [Fact]
    public void AMissingAnswerSaysWhyAndAboutWhat()
    {
        JsonElement tension = Root.GetProperty("budget").GetProperty("tension");
        Assert.Equal("inputUnknown", tension.GetProperty("missing").GetString());
        Assert.Equal("beltStiffness", tension.GetProperty("about").GetString());
        Assert.False(tension.TryGetProperty("value", out _));

        JsonElement slack = Root.GetProperty("ladder")[1].GetProperty("tension");
        Assert.Equal("slackBelt", slack.GetProperty("missing").GetString());
        Assert.Equal(120, slack.GetProperty("needed").GetDouble());
        Assert.Equal(80, slack.GetProperty("available").GetDouble());
        Assert.Equal("N", slack.GetProperty("unit").GetString());
    }

    [Fact]
    public void NumbersAreWhole()
    {
        JsonElement finding = Root.GetProperty("findings")[0];
        Assert.Equal("runningBelt", finding.GetProperty("subject").GetString());
        Assert.Equal("outOfService", finding.GetProperty("severity").GetString());
        Assert.Equal(0.06, finding.GetProperty("number").GetProperty("value").GetDouble());
        Assert.Equal(0.007, finding.GetProperty("number").GetProperty("standardUncertainty").GetDouble());
        Assert.Equal("a rule of thumb", finding.GetProperty("limit").GetProperty("source").GetString());
        Assert.Equal("The belt looks sound.", finding.GetProperty("against")[0].GetString());
        Assert.Equal(
            "The bolt is suddenly hard to turn.",
            finding.GetProperty("next").GetProperty("stopAt").GetString()
        );
        Assert.Equal(JsonValueKind.Null, Root.GetProperty("findings")[1].GetProperty("number").ValueKind);
        Assert.Equal(JsonValueKind.Null, Root.GetProperty("nextSteps")[1].GetProperty("undo").ValueKind);
        Assert.Equal(JsonValueKind.Null, Root.GetProperty("budget").GetProperty("earlierTurns").ValueKind);
        Assert.Equal(1.07, Root.GetProperty("ladder")[0].GetProperty("margin").GetProperty("value").GetDouble());
        Assert.Equal(4, Root.GetProperty("refused")[0].GetProperty("event").GetInt32());
        Assert.Equal(5, Root.GetProperty("oneMoreReading")[0].GetProperty("minutes").GetInt32());
        Assert.Equal(612, Root.GetProperty("readings")[0].GetProperty("asFound").GetProperty("value").GetDouble());
    }

    [Fact]
    public void ANumberThatIsNotFiniteIsNull()
    {
        string json = JsonSheet.Of(
            "x",
            SheetPages.Full with
            {
                Budget = SheetPages.Full.Budget with { TurnsLeft = double.NaN },
            }
        );
        JsonElement budget = JsonDocument.Parse(json).RootElement.GetProperty("budget");
        Assert.Equal(JsonValueKind.Null, budget.GetProperty("turnsLeft").ValueKind);
    }
}
