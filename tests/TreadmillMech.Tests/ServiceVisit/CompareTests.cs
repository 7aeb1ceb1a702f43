using System.Text.Json;
using TreadmillMech.Samples.ServiceVisit;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Two visits to one machine side by side.</summary>
public sealed class CompareTests
{
    private static readonly string Tight = Sample.Text(Bundled.OverTightened);

    private static readonly JsonElement Compared = JsonDocument
        .Parse(Sample.Run("compare", "healthy", "over-tightened", "--json").Output)
        .RootElement;

    [Fact]
    public void TheTurnsBetweenAreThoseThatNeitherVisitGave()
    {
        // 5.25 turns before the second visit, 0.25 before the first, and none of the first's own.
        Assert.Equal(5, Compared.GetProperty("turnsBetween").GetDouble(), 1e-12);
        string json = Sample.Change(Tight, "\"earlierTurns\": \"5.25 turns\",", "").Text;
        Assert.Equal(
            JsonValueKind.Null,
            JsonDocument
                .Parse(Two(Sample.Healthy, json, "--json").Output)
                .RootElement.GetProperty("turnsBetween")
                .ValueKind
        );
        Assert.Contains("not known", Two(Sample.Healthy, json).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TurnsThatSomebodyToldOfAreBetweenTheVisits()
    {
        string told = Sample
            .Change(
                Tight,
                "\"events\": [",
                "\"events\": [ { \"action\": \"takeUp\", \"left\": \"0.5 turn\", \"right\": \"1 turn\", \"by\": \"somebody before\" },"
            )
            .Text;
        JsonElement root = JsonDocument.Parse(Two(Sample.Healthy, told, "--json").Output).RootElement;
        Assert.Equal(5 + 0.75, root.GetProperty("turnsBetween").GetDouble(), 1e-12);
        Assert.Equal(-2, root.GetProperty("now").GetProperty("turns").GetDouble(), 1e-12);
    }

    [Fact]
    public void TheChangeIsWhatHappenedBetweenTheVisits()
    {
        JsonElement tension = Change(Compared, "Strand tension at rest");
        double then = Value(tension, "asLeftThen");
        double now = Value(tension, "asFoundNow");
        Assert.Equal(now - then, Value(tension, "change"), 1e-9);

        // The states that were chosen: 1150 N, and five turns of 1.25 mm on 8 N/mm later.
        double loop = (2 * 1450) + (Math.PI * (62 + 52) / 2);
        double gain = 5 * 2 * 1.25 / loop * 100 * 8 * 500;
        Assert.InRange(now - then, 0.93 * gain, 1.07 * gain);
        double noise = Math.Sqrt(
            Math.Pow(Spread(tension, "asLeftThen"), 2) + Math.Pow(Spread(tension, "asFoundNow"), 2)
        );
        Assert.Equal(noise, Spread(tension, "change"), 1e-9);
        Assert.Equal("changed", tension.GetProperty("meaning").GetString());
    }

    [Fact]
    public void WhatCostsMoreCurrentGotWorse()
    {
        JsonElement current = Change(Compared, "Motor current under load");
        Assert.Equal("worse", current.GetProperty("meaning").GetString());

        // 5.6 A then, without an uncertainty of its own: 2 % by the meter's default.
        double now = Value(current, "asFoundNow");
        Assert.Equal(0.02 * Math.Sqrt((5.6 * 5.6) + (now * now)), Spread(current, "change"), 1e-9);
        string text = Sample.Run("compare", "healthy", "over-tightened").Output;
        int worse = text.IndexOf("GOT WORSE", StringComparison.Ordinal);
        int better = text.IndexOf("GOT BETTER", StringComparison.Ordinal);
        Assert.Contains("Motor current under load: 5.6 A", text[worse..better], StringComparison.Ordinal);
        Assert.DoesNotContain("Strand tension", text[worse..better], StringComparison.Ordinal);
        Assert.All(text.Split('\n'), static line => Assert.InRange(line.Length, 0, 100));
    }

    [Fact]
    public void TheSameVisitTwiceIsWithinTheNoise()
    {
        JsonElement same = JsonDocument.Parse(Sample.Run("compare", "healthy", "healthy", "--json").Output).RootElement;
        foreach (JsonElement change in same.GetProperty("changes").EnumerateArray())
        {
            // The drift is written down without an uncertainty.
            bool judged = !change.GetProperty("name").GetString()!.StartsWith("Drift", StringComparison.Ordinal);
            Assert.Equal(judged ? "same" : "notJudged", change.GetProperty("meaning").GetString());
            Assert.Equal(0, Value(change, "change"));
        }

        Assert.Empty(same.GetProperty("newFindings").EnumerateArray());
        Assert.Empty(same.GetProperty("goneFindings").EnumerateArray());
    }

    [Fact]
    public void AChangeBelowTwiceItsUncertaintyIsNoise()
    {
        // The pull gives friction: 158 N less 40 N over 80 kg. Two newtons more are 1.7 %, the scale's noise 2 %.
        Assert.Equal("same", Meaning("160 N"));

        // Forty newtons more are a third.
        Assert.Equal("worse", Meaning("198 N"));
        Assert.Equal("better", Meaning("120 N"));

        static string Meaning(string pull)
        {
            string json = Sample.Change(Sample.Healthy, "\"158 N\"", $"\"{pull}\"").Text;
            JsonElement root = JsonDocument.Parse(Two(Sample.Healthy, json, "--json").Output).RootElement;
            return Change(root, "Deck friction").GetProperty("meaning").GetString()!;
        }
    }

    [Fact]
    public void LoadsUnderAnotherDemandAreNotCompared()
    {
        string json = Sample.Change(Tight, "\"82 kg\"", "\"95 kg\"").Text;
        JsonElement root = JsonDocument.Parse(Two(Sample.Healthy, json, "--json").Output).RootElement;
        JsonElement current = Change(root, "Motor current under load");
        Assert.Equal("notComparable", current.GetProperty("meaning").GetString());
        Assert.Contains("different demands", current.GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, current.GetProperty("change").ValueKind);
        Assert.Equal("changed", Change(root, "Strand tension at rest").GetProperty("meaning").GetString());
    }

    [Theory]
    [InlineData("Bramble 3 (invented)", "Bramble 4 (invented)", "name: ")]
    [InlineData(
        "\"width\": \"500 mm\"",
        "\"width\": \"540 mm\"",
        "runningBelt.width: 500 mm in the first, 540 mm in the second"
    )]
    [InlineData("\"diameter\": \"60 mm\"", "\"diameter\": \"64 mm\"", "driveRoller.diameter: ")]
    [InlineData("\"diameter\": \"50 mm\"", "\"diameter\": \"54 mm\"", "tailRoller.diameter: ")]
    [InlineData("\"1450 mm\"", "\"1500 mm\"", "centreDistance: ")]
    [InlineData("\"driveEnd\": \"front\"", "\"driveEnd\": \"rear\"", "driveEnd: ")]
    [InlineData("\"bolts\": 2", "\"bolts\": 1", "takeUp.bolts: 2 in the first, 1 in the second")]
    [InlineData("\"M8x1.25\"", "\"M10x1.5\"", "takeUp.thread (lead): ")]
    [InlineData("\"28 mm\"", "\"32 mm\"", "driveBelt.motorPulleyDiameter: ")]
    [InlineData("\"84 mm\"", "\"90 mm\"", "driveBelt.rollerPulleyDiameter: ")]
    [InlineData("\"sliding motor\"", "\"stretch fit\"", "driveBelt.tensioning: ")]
    public void OtherMachinesAreRefusedByWhatDiffers(string from, string to, string told)
    {
        Sample.Outcome outcome = Two(Sample.Healthy, Sample.Change(Sample.Healthy, from, to).Text);
        Assert.Equal((2, ""), (outcome.Code, outcome.Output));
        Assert.Contains(told, outcome.Errors, StringComparison.Ordinal);
        Assert.Equal(3, outcome.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void ANameTypedOtherwiseIsTheSameMachine()
    {
        string json = Sample.Change(Sample.Healthy, "Bramble 3 (invented)", "bramble-3, INVENTED").Text;
        Assert.Equal(0, Two(Sample.Healthy, json).Code);
    }

    [Fact]
    public void TheLaterVisitFirstIsRefused()
    {
        string earlier = Sample.Change(Tight, "\"day\": \"2026-05-09\"", "\"day\": \"2025-04-09\"").Text;
        Assert.Equal(0, Two(earlier, Tight).Code);
        Assert.Contains("the earlier visit is given first", Two(Tight, earlier).Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileThatIsRefusedIsToldByItsName()
    {
        Sample.Outcome outcome = Sample.Run("compare", "healthy", "nowhere.json");
        Assert.Equal((2, ""), (outcome.Code, outcome.Output));
        Assert.Contains("nowhere.json", outcome.Errors, StringComparison.Ordinal);
    }

    // 2026-05-09 is 119 days after 2026-01-10: January 21, February 28, March 31, April 30, May 9.
    [Fact]
    public void TheDaysBetweenAndThePaceAreTold()
    {
        string then = Day(Sample.Healthy, "2026-01-10");
        JsonElement root = JsonDocument.Parse(Two(then, Day(Tight, "2026-05-09"), "--json").Output).RootElement;
        Assert.Equal(119, root.GetProperty("daysBetween").GetInt32());
        JsonElement current = Change(root, "Motor current under load");
        Assert.Equal(Value(current, "change") * 365.25 / 119, Value(current, "changeInAYear"), 1e-9);
        string text = Two(then, Day(Tight, "2026-05-09")).Output;
        Assert.Contains("119 days apart.", text, StringComparison.Ordinal);
        Assert.Contains("at this pace", text, StringComparison.Ordinal);

        // Over three weeks a change is no pace.
        string soon = Two(then, Day(Tight, "2026-01-31")).Output;
        Assert.Contains("21 days apart.", soon, StringComparison.Ordinal);
        Assert.DoesNotContain("at this pace", soon, StringComparison.Ordinal);
        Assert.Contains("one day", Two(then, Day(Tight, "2026-01-10")).Output, StringComparison.Ordinal);

        static string Day(string json, string day) =>
            System.Text.RegularExpressions.Regex.Replace(
                json,
                "\"day\": \"[^\"]*\"",
                $"\"day\": \"{day}\"",
                System.Text.RegularExpressions.RegexOptions.None,
                TimeSpan.FromSeconds(5)
            );
    }

    [Fact]
    public void AComparisonIsAPageAsWell()
    {
        string folder = Directory.CreateTempSubdirectory("compare-").FullName;
        try
        {
            string place = Path.Combine(folder, "page.html");
            Sample.Outcome outcome = Sample.Run("compare", "healthy", "over-tightened", "--html", place);
            Assert.Equal(0, outcome.Code);
            string page = File.ReadAllText(place);
            Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
            Assert.EndsWith("</html>\n", page, StringComparison.Ordinal);
            Assert.DoesNotContain(
                "http",
                page.Replace("http-equiv", "", StringComparison.Ordinal),
                StringComparison.Ordinal
            );
            Assert.Contains("Got worse", page, StringComparison.Ordinal);
            Assert.Contains("Motor current under load: 5.6 A", page, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static Sample.Outcome Two(string first, string second, params string[] options)
    {
        string folder = Directory.CreateTempSubdirectory("compare-").FullName;
        try
        {
            string a = Path.Combine(folder, "first.json");
            string b = Path.Combine(folder, "second.json");
            File.WriteAllText(a, first);
            File.WriteAllText(b, second);
            return Sample.Run(["compare", a, b, .. options]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static JsonElement Change(JsonElement root, string name) =>
        root.GetProperty("changes")
            .EnumerateArray()
            .First(change => change.GetProperty("name").GetString()!.StartsWith(name, StringComparison.Ordinal));

    private static double Value(JsonElement change, string which) =>
        change.GetProperty(which).GetProperty("value").GetDouble();

    private static double Spread(JsonElement change, string which) =>
        change.GetProperty(which).GetProperty("standardUncertainty").GetDouble();
}
