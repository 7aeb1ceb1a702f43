using System.Text;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using TreadmillMech.Json;
using TreadmillMech.Samples.ServiceVisit;
using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Samples.ServiceVisit.Html;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Whatever happens to a file: it is read, or it is refused with a reason. It never ends in an exception.</summary>
public sealed class FuzzTests
{
    private const string Example = "the example of the help";

    public static TheoryData<string> Visits => [Bundled.Healthy, Bundled.Slipping, Example];

    [Theory]
    [MemberData(nameof(Visits))]
    public void CutAtEveryByte(string name)
    {
        byte[] whole = Encoding.UTF8.GetBytes(Text(name));
        int end = Encoding.UTF8.GetString(whole).TrimEnd().Length;
        for (int length = 0; length < whole.Length; length++)
        {
            bool taken = ReadOrRefused(whole[..length]);
            Assert.True(!taken || length >= end, $"Cut after {length} bytes, but taken.");
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void ChangedAtRandomBytes(string name)
    {
        byte[] whole = Encoding.UTF8.GetBytes(Text(name));
        Random random = new(20_261);
        for (int round = 0; round < 4000; round++)
        {
            byte[] changed = [.. whole];
            for (int i = random.Next(1, 4); i > 0; i--)
            {
                changed[random.Next(changed.Length)] = (byte)random.Next(256);
            }

            ReadOrRefused(changed);
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void DigitsAndMarksChangedForOthers(string name)
    {
        // Changes that keep the file valid JSON get past the parser, to the values themselves.
        byte[] whole = Encoding.UTF8.GetBytes(Text(name));
        int[] places = [.. Enumerable.Range(0, whole.Length).Where(i => whole[i] is >= (byte)'0' and <= (byte)'9')];
        byte[] marks = [.. "0123456789.,-+eE%NI "u8];
        Random random = new(20_262);
        for (int round = 0; round < 4000; round++)
        {
            byte[] changed = [.. whole];
            for (int i = random.Next(1, 6); i > 0; i--)
            {
                changed[places[random.Next(places.Length)]] = marks[random.Next(marks.Length)];
            }

            ReadOrRefused(changed);
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void WithoutEachField(string name)
    {
        string text = Text(name);
        int fields = Fields(JsonNode.Parse(text)!).Count();
        for (int field = 0; field < fields; field++)
        {
            JsonNode root = JsonNode.Parse(text)!;
            (JsonObject owner, string key) = Fields(root).ElementAt(field);
            owner.Remove(key);
            PrintedOrRefused(root.ToJsonString());
        }

        Assert.True(fields > 100);
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void WithEachValueOfAnotherKind(string name)
    {
        string text = Text(name);
        int fields = Fields(JsonNode.Parse(text)!).Count();
        string[] others =
        [
            "null",
            "[]",
            "{}",
            "true",
            "1e400",
            "-7",
            "\"\"",
            "\"1e300 kg\"",
            "\"-1e300 W\"",
            "\"front\"",
        ];
        for (int field = 0; field < fields; field++)
        {
            foreach (string other in others)
            {
                JsonNode root = JsonNode.Parse(text)!;
                (JsonObject owner, string key) = Fields(root).ElementAt(field);
                owner[key] = JsonNode.Parse(other);
                ReadOrRefused(Encoding.UTF8.GetBytes(root.ToJsonString()));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void WithoutEachEvent(string name)
    {
        string text = Text(name);
        int events = JsonNode.Parse(text)!["events"]!.AsArray().Count;
        for (int gone = 0; gone <= events; gone++)
        {
            JsonNode root = JsonNode.Parse(text)!;
            JsonArray left = root["events"]!.AsArray();
            if (gone < events)
            {
                left.RemoveAt(gone);
            }
            else
            {
                left.Clear();
            }

            Assert.Equal(Program.Done, PrintedOrRefused(root.ToJsonString()));
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void WithEventsInAnyOrder(string name)
    {
        string text = Text(name);
        Random random = new(20_263);
        for (int round = 0; round < 100; round++)
        {
            JsonNode root = JsonNode.Parse(text)!;
            JsonNode[] events = [.. root["events"]!.AsArray().Select(static e => e!.DeepClone())];
            random.Shuffle(events);
            root["events"] = new JsonArray(events);
            Assert.Equal(Program.Done, PrintedOrRefused(root.ToJsonString()));
        }
    }

    [Theory]
    [MemberData(nameof(Visits))]
    public void WithOtherDigitsAndStillPrinted(string name)
    {
        byte[] whole = Encoding.UTF8.GetBytes(Text(name));
        int[] places = [.. Enumerable.Range(0, whole.Length).Where(i => whole[i] is >= (byte)'0' and <= (byte)'9')];
        Random random = new(20_264);
        int printed = 0;
        for (int round = 0; round < 400; round++)
        {
            byte[] changed = [.. whole];
            for (int i = random.Next(1, 4); i > 0; i--)
            {
                changed[places[random.Next(places.Length)]] = (byte)random.Next('0', '9' + 1);
            }

            printed += PrintedOrRefused(Encoding.UTF8.GetString(changed)) == Program.Done ? 1 : 0;
        }

        Assert.True(printed > 50, $"Only {printed} were printed.");
    }

    private static string Text(string name) => name == Example ? ExampleVisit.Json : Sample.Text(name);

    /// <summary>The exit code of a whole run, which is never that of a fault.</summary>
    private static int PrintedOrRefused(string text)
    {
        Sample.Outcome outcome = Sample.RunOn(text, "--json");
        Assert.True(outcome.Code is Program.Done or Program.Refused, $"{outcome.Errors}{text}");
        Assert.Equal(outcome.Code == Program.Done, outcome.Errors.Length == 0);
        Assert.Equal(outcome.Code == Program.Refused, outcome.Output.Length == 0);
        if (outcome.Code == Program.Done)
        {
            AssertDrawn(VisitReaderTests.Read(text));
        }

        return outcome.Code;
    }

    /// <summary>Whatever is printed can be drawn as well.</summary>
    private static void AssertDrawn(VisitFile document)
    {
        string page = VisitPage.Of(document, VisitReview.Of(document.Visit));
        Assert.NotNull(XDocument.Parse(page[page.IndexOf("<html", StringComparison.Ordinal)..]).Root);
        Assert.DoesNotContain("NaN", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", page, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", page, StringComparison.Ordinal);
    }

    /// <summary>Whether the file was taken; where it was not, there is a reason with a place.</summary>
    private static bool ReadOrRefused(byte[] bytes)
    {
        Parsed<VisitFile> parsed = VisitFile.ReadUtf8(bytes);
        Assert.Equal(parsed.Found, parsed.Problems.IsEmpty);
        Assert.All(
            parsed.Describe("visit.json"),
            static line =>
                Assert.Matches(@"^visit\.json, line [0-9]+, \$.*: found .+; expected .+\.$|^[0-9]+ more", line)
        );
        return parsed.Found;
    }

    private static IEnumerable<(JsonObject Owner, string Key)> Fields(JsonNode node) =>
        node switch
        {
            JsonObject fields => fields
                .Select(field => (fields, field.Key))
                .Concat(
                    fields
                        .Where(static field => field.Value is not null)
                        .SelectMany(static field => Fields(field.Value!))
                )
                .ToList(),
            JsonArray items => items.OfType<JsonNode>().SelectMany(Fields),
            _ => [],
        };
}
