using System.Text.Json;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The healthy and the slipping visit from end to end.</summary>
/// <remarks>
/// The readings were made up from machines whose state was chosen first, with reading errors of a percent or two laid on:
/// a slack one of 650 N, 5.5 N/mm and deck friction 0.18, and a sound one of 1150 N, 8 N/mm and 0.15. The sheets must find
/// those again. Other expected values are worked out by hand from the files.
/// </remarks>
public sealed class BundledVisitTests
{
    private static readonly string SlippingPage = Sample.Run().Output;
    private static readonly string HealthyPage = Sample.RunOn(Sample.Healthy).Output;
    private static readonly JsonElement Slipping = JsonDocument.Parse(Sample.Run("--json").Output).RootElement;
    private static readonly JsonElement Healthy = JsonDocument
        .Parse(Sample.RunOn(Sample.Healthy, "--json").Output)
        .RootElement;

    [Fact]
    public void WithoutArgumentsTheSlippingMachineIsReviewed()
    {
        Sample.Outcome outcome = Sample.Run();
        Assert.Equal(0, outcome.Code);
        Assert.Empty(outcome.Errors);
        Assert.StartsWith("Visit sheet: Larkspur 12 (invented)\n", outcome.Output, StringComparison.Ordinal);
        string end = outcome.Output[outcome.Output.LastIndexOf("\n\n", StringComparison.Ordinal)..];
        Assert.Contains("dotnet run --project samples/ServiceVisit -- FILE", end, StringComparison.Ordinal);
        string ofFile = Sample.RunOn(Sample.Slipping).Output;
        Assert.Equal(ofFile, outcome.Output[..ofFile.Length]);
        Assert.DoesNotContain("-- FILE", ofFile, StringComparison.Ordinal);
    }

    [Fact]
    public void TheSlippingMachineIsFoundSlackAndHoldsAfterThreeQuarters()
    {
        JsonElement belt = Findings(Slipping, "runningBelt").First();
        Assert.Equal("attend", belt.GetProperty("severity").GetString());
        Assert.Contains("+0.5 turn", belt.GetProperty("statement").GetString(), StringComparison.Ordinal);
        Assert.Contains("+0.75 turn", belt.GetProperty("statement").GetString(), StringComparison.Ordinal);
        Assert.Empty(Findings(Slipping, "driveBelt"));
        Assert.Equal("use", Slipping.GetProperty("verdict").GetString());
        Assert.Contains("0.25 turn", Slipping.GetProperty("nextSteps")[0].GetProperty("action").GetString());
    }

    [Fact]
    public void TheSlipIsThatOfTheSpeedsRead()
    {
        // Loaded 7.50 mph at 1099 rpm against unloaded 8.00 mph at 1102 rpm.
        double slip = 100 * (1 - (7.50 / 1099 / (8.00 / 1102)));
        Assert.Equal(slip, Value(Reading(Slipping, "Slip of the running belt"), "asFound"), 0.01);

        // Motor and roller: 3297 to 1099 against 3306 to 1102, both 3 to 1.
        Assert.Equal(0, Value(Reading(Slipping, "Slip of the drive belt"), "asFound"), 0.01);
    }

    [Fact]
    public void TheStateThatWasChosenIsFoundAgain()
    {
        AssertNear(650, Value(Reading(Slipping, "Strand tension at rest"), "asFound"), 0.1);
        AssertNear(0.18, Value(Reading(Slipping, "Deck friction"), "asFound"), 0.1);
        AssertNear(5.5, Value(Reading(Slipping, "Belt's relaxed force"), "asFound"), 0.2);
        AssertNear(1150, Value(Reading(Healthy, "Strand tension at rest"), "asFound"), 0.1);
        AssertNear(8, Value(Reading(Healthy, "Belt's relaxed force"), "asFound"), 0.2);

        // The pull: 158 N less 40 N over 80 kg.
        AssertNear((158 - 40) / (80 * 9.80665), Value(Reading(Healthy, "Deck friction"), "asFound"), 0.01);
    }

    [Fact]
    public void TheTensionBudgetIsThatOfTheTurns()
    {
        JsonElement budget = Slipping.GetProperty("budget");
        Assert.Equal(0.75, budget.GetProperty("turnsThisVisit").GetDouble(), 1e-12);
        Assert.Equal(0.5, budget.GetProperty("earlierTurns").GetDouble());

        // 30 mm of thread at 1.25 mm a turn, three quarters of a turn used.
        Assert.Equal((30 / 1.25) - 0.75, budget.GetProperty("threadTurnsLeft").GetDouble(), 1e-9);

        // Each bolt moved by 0.75 turn of 1.25 mm; a loop of twice 1450 mm and half a turn on rollers of 62 and 52 mm.
        double loop = (2 * 1450) + (Math.PI * (62 + 52) / 2);
        JsonElement strain = budget.GetProperty("strainAdded");
        Assert.Equal("%", strain.GetProperty("unit").GetString());
        AssertNear(100 * 2 * 0.75 * 1.25 / loop, strain.GetProperty("value").GetDouble(), 0.001);

        Assert.Equal(0, Healthy.GetProperty("budget").GetProperty("turnsThisVisit").GetDouble(), 1e-12);
    }

    [Fact]
    public void TheHealthyMachineMayBeUsedAndNeedsNothing()
    {
        Assert.Equal("use", Healthy.GetProperty("verdict").GetString());
        Assert.Empty(Healthy.GetProperty("nextSteps").EnumerateArray());
        Assert.All(
            Healthy.GetProperty("findings").EnumerateArray(),
            static finding => Assert.Equal("note", finding.GetProperty("severity").GetString())
        );
        Assert.Empty(Healthy.GetProperty("refused").EnumerateArray());
        Assert.Contains("VERDICT: USE", HealthyPage, StringComparison.Ordinal);
        Assert.Contains("Nothing at this visit.", HealthyPage, StringComparison.Ordinal);
    }

    [Fact]
    public void PageAndJsonSayTheSame()
    {
        AssertSame(SlippingPage, Slipping);
        AssertSame(HealthyPage, Healthy);
    }

    [Fact]
    public void PagesFitTheWidthAndNameOnlyInventedMachines()
    {
        foreach (string page in (string[])[SlippingPage, HealthyPage])
        {
            Assert.All(page.Split('\n'), static line => Assert.InRange(line.Length, 0, 100));
            Assert.Contains("(invented)", page, StringComparison.Ordinal);
            Assert.Contains("not a statement of conformity", Flat(page), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TheOwnersPageHasNoForces()
    {
        foreach (JsonElement sheet in (JsonElement[])[Slipping, Healthy])
        {
            Assert.NotEmpty(sheet.GetProperty("ownerPage").EnumerateArray());
            Assert.All(
                sheet.GetProperty("ownerPage").EnumerateArray(),
                static text => Assert.DoesNotMatch(@"[0-9] (N|kN|lbf)\b|probab", text.GetString()!)
            );
        }
    }

    private static void AssertSame(string page, JsonElement sheet)
    {
        string flat = Flat(page);
        Assert.Contains(Flat(sheet.GetProperty("verdictText").GetString()!), flat, StringComparison.Ordinal);
        foreach (JsonElement finding in sheet.GetProperty("findings").EnumerateArray())
        {
            Assert.Contains(Flat(finding.GetProperty("statement").GetString()!), flat, StringComparison.Ordinal);
        }

        foreach (JsonElement step in sheet.GetProperty("nextSteps").EnumerateArray())
        {
            Assert.Contains(Flat(step.GetProperty("action").GetString()!), flat, StringComparison.Ordinal);
        }

        foreach (JsonElement row in sheet.GetProperty("readings").EnumerateArray())
        {
            foreach (string when in (string[])["asFound", "asLeft"])
            {
                if (row.GetProperty(when).ValueKind == JsonValueKind.Object)
                {
                    Assert.Contains(Shown(row.GetProperty(when)), page, StringComparison.Ordinal);
                }
            }
        }

        foreach (JsonElement rung in sheet.GetProperty("ladder").EnumerateArray())
        {
            Assert.Contains(Shown(rung.GetProperty("tension")), page, StringComparison.Ordinal);
        }
    }

    private static string Shown(JsonElement figure)
    {
        JsonElement spread = figure.GetProperty("standardUncertainty");
        return new Figure(
            "",
            figure.GetProperty("value").GetDouble(),
            figure.GetProperty("unit").GetString()!,
            spread.ValueKind == JsonValueKind.Null ? null : spread.GetDouble()
        )
        {
            Lower = End("lower"),
            Upper = End("upper"),
        }.ToString();

        double? End(string name) => figure.TryGetProperty(name, out JsonElement end) ? end.GetDouble() : null;
    }

    private static JsonElement Reading(JsonElement sheet, string name) =>
        sheet
            .GetProperty("readings")
            .EnumerateArray()
            .First(row => row.GetProperty("name").GetString()!.StartsWith(name, StringComparison.Ordinal));

    private static double Value(JsonElement row, string when) => row.GetProperty(when).GetProperty("value").GetDouble();

    private static IEnumerable<JsonElement> Findings(JsonElement sheet, string subject) =>
        sheet
            .GetProperty("findings")
            .EnumerateArray()
            .Where(finding => finding.GetProperty("subject").GetString() == subject);

    private static void AssertNear(double expected, double actual, double share) =>
        Assert.InRange(actual, expected * (1 - share), expected * (1 + share));

    private static string Flat(string text) =>
        string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
