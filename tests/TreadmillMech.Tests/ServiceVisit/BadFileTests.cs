using System.Text;
using System.Text.RegularExpressions;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Files that are refused: where, what was found, what was expected; nothing is printed.</summary>
public sealed partial class BadFileTests
{
    // What is changed in the bundled visit, into what, the path that is told, what is found, what is expected.
    public static readonly TheoryData<string, string, string, string, string> OneMistake = new()
    {
        { "\"20 in\"", "\"20\"", "$.machine.runningBelt.width", "\"20\" without a unit", "mm, cm, m, in or ft" },
        { "\"20 in\"", "20", "$.machine.runningBelt.width", "20 without a unit", "mm, cm, m, in or ft" },
        { "\"20 in\"", "\"20 kg\"", "$.machine.runningBelt.width", "\"kg\" is no unit", "mm, cm, m, in or ft" },
        { "\"20 in\"", "\"50,8 cm\"", "$.machine.runningBelt.width", "\"50,8 cm\" with a comma", "a decimal point" },
        { "\"20 in\"", "\"NaN in\"", "$.machine.runningBelt.width", "\"NaN in\"", "a length" },
        { "\"20 in\"", "\"Infinity in\"", "$.machine.runningBelt.width", "\"Infinity in\"", "a length" },
        { "\"20 in\"", "\"1e400 in\"", "$.machine.runningBelt.width", "\"1e400 in\"", "a finite number" },
        { "\"20 in\"", "\"200 in\"", "$.machine.runningBelt.width", "\"200 in\"", "0.2 m to 1.2 m" },
        { "\"20 in\"", "\"-20 in\"", "$.machine.runningBelt.width", "\"-20 in\"", "0.2 m to 1.2 m" },
        { "\"20 in\"", "null", "$.machine.runningBelt.width", "null", "leave out what is not known" },
        { "\"20 in\"", "[]", "$.machine.runningBelt.width", "a list", "a length" },
        { "\"20 in\"", "true", "$.machine.runningBelt.width", "true", "a length" },
        { "\"width\"", "\"widht\"", "$.machine.runningBelt.widht", "\"widht\"", "\"width\"" },
        {
            "\"thickness\"",
            "\"zzzzzzzz\"",
            "$.machine.runningBelt.zzzzzzzz",
            "\"zzzzzzzz\"",
            "one of the fields width"
        },
        { "\"thickness\"", "\"width\"", "$.machine.runningBelt.width", "a second time", "every field once" },
        { "\"width\": \"20 in\", ", "", "$.machine.runningBelt", "no field \"width\"", "a length" },
        { "\"M8x1.25\"", "\"M8x9\"", "$.machine.takeUp.thread", "\"M8x9\"", "M8x1.25" },
        { "\"thread\": \"M8x1.25\",", "", "$.machine.takeUp", "no field \"thread\"", "\"lead\"" },
        { "\"bolts\": 2", "\"bolts\": 3", "$.machine.takeUp.bolts", "3", "1 to 2" },
        { "\"bolts\": 2", "\"bolts\": 1.5", "$.machine.takeUp.bolts", "1.5", "a whole count" },
        { "\"bolts\": 2", "\"bolts\": 1e400", "$.machine.takeUp.bolts", "1e400", "a finite number" },
        {
            "\"driveEnd\": \"front\"",
            "\"driveEnd\": \"left\"",
            "$.machine.driveEnd",
            "\"left\"",
            "\"front\", \"rear\""
        },
        {
            "\"sliding motor\"",
            "\"rubber band\"",
            "$.machine.driveBelt.tensioning",
            "\"rubber band\"",
            "\"sliding motor\""
        },
        { "\"canBrake\": false", "\"canBrake\": \"no\"", "$.machine.motor.canBrake", "\"no\"", "true or false" },
        { "\"Larkspur 12 (invented)\"", "\"\"", "$.machine.name", "\"\"", "a name" },
        { "\"118 kg\"", "\"118 lbf\"", "$.testDemand.person.mass", "\"lbf\" is no unit", "kg, g or lb" },
        { "\"118 kg\"", "\"1180 kg\"", "$.testDemand.person.mass", "\"1180 kg\"", "10 kg to 350 kg" },
        { "\"grade\": \"0 %\"", "\"grade\": 0", "$.testDemand.grade", "0 without a unit", "%" },
        { "\"0.5 turn\"", "\"50 turn\"", "$.earlierTurns", "\"50 turn\"", "-20 to 20" },
        { "\"left\": \"0.25 turn\"", "\"left\": \"9 turns\"", "$.events[10].left", "\"9 turns\"", "-5 to 5" },
        { "\"passes\": 50", "\"passes\": 0", "$.events[21].passes", "0", "1 to 10000" },
        { "\"passes\": 50", "\"passes\": 1e99", "$.events[21].passes", "1e99", "a whole count" },
        { "\"reading\": \"wipe\"", "\"reading\": \"wype\"", "$.events[0].reading", "\"wype\"", "\"wipe\"" },
        { "\"reading\": \"wipe\"", "\"action\": \"wipe\"", "$.events[0].action", "\"wipe\"", "\"takeUp\"" },
        { "\"reading\": \"wipe\", ", "", "$.events[0]", "neither \"reading\" nor \"action\"", "one of them" },
        {
            "{ \"reading\": \"slipTest\"",
            "{ \"action\": \"clean\", \"reading\": \"slipTest\"",
            "$.events[4]",
            "both",
            "one of them"
        },
        { "\"zeroed\": true,", "", "$.events[6]", "no field \"zeroed\"", "true or false" },
        {
            "\"where\": \"motor lead\"",
            "\"where\": \"hood\"",
            "$.events[6].where",
            "\"hood\"",
            "\"motor lead\", \"mains lead\""
        },
        {
            "\"form\": \"direct\"",
            "\"form\": \"alternating\"",
            "$.events[6].form",
            "an alternating-current clamp sees only the ripple",
            "reads direct current"
        },
        {
            "\"form\": \"alternating\"",
            "\"form\": \"direct\"",
            "$.events[20].form",
            "\"direct\" on a mains lead",
            "\"alternating\""
        },
        {
            "treadmillmech-visit/1",
            "treadmillmech-visit/2",
            "$.format",
            "treadmillmech-visit/2",
            "treadmillmech-visit/1"
        },
        { "\"events\": [", "\"events\": 3, \"x\": [", "$.events", "3", "a list of readings and actions" },
        { "\"1450 mm\"", "\"1450 mm\" \"m\"", "$.machine", "not JSON", "one complete JSON document" },
        { "\"1450 mm\"", "NaN", "$.machine.centreDistance", "not JSON", "one complete JSON document" },
        { "\"1450 mm\"", "\"\\ud800\"", "$.machine.centreDistance", "stands for no character", "whole characters" },
    };

    [Theory]
    [MemberData(nameof(OneMistake))]
    public void OneMistakeIsToldWithItsPlace(string from, string to, string path, string found, string expected)
    {
        (string text, int line) = Sample.Change(Sample.Slipping, from, to);
        Sample.Outcome outcome = Sample.RunOn(text);
        Assert.Equal(2, outcome.Code);
        Assert.Empty(outcome.Output);
        string told = Assert.Single(outcome.Errors.Split('\n'), complaint => Place(complaint) == path);
        Assert.StartsWith($"{outcome.File}, ", told, StringComparison.Ordinal);
        Assert.Contains(found, Part(told, "found ", "; expected"), StringComparison.Ordinal);
        Assert.Contains(
            expected,
            told[told.IndexOf("; expected", StringComparison.Ordinal)..],
            StringComparison.Ordinal
        );
        Assert.EndsWith("Nothing written.\n", outcome.Errors, StringComparison.Ordinal);

        // What is missing is told at the object it is missing from, which may begin on an earlier line.
        int at = int.Parse(Part(told, ", line ", ", $"), System.Globalization.CultureInfo.InvariantCulture);
        bool exact = !found.StartsWith("no field", StringComparison.Ordinal);
        Assert.InRange(at, exact ? line : 1, line);
    }

    [Fact]
    public void ThePathAndLineOfAMissingFieldAreThoseOfItsObject()
    {
        Sample.Outcome outcome = Sample.RunOn("{\n\"format\": \"treadmillmech-visit/1\",\n\"machine\":\n{\n}}");
        Assert.Contains(", line 4, $.machine: found no field \"name\"", outcome.Errors, StringComparison.Ordinal);
        Assert.Contains(", line 4, $.machine: found no field \"takeUp\"", outcome.Errors, StringComparison.Ordinal);
        Assert.Contains(", line 1, $: found no field \"events\"", outcome.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void SeveralMistakesAreToldInOrderOfLine()
    {
        string text = Sample.Change(Sample.Slipping, "\"50 mm\"", "\"50\"").Text;
        text = Sample.Change(text, "\"118 kg\"", "\"118\"").Text;
        text = Sample.Change(text, "\"20 in\"", "\"20\"").Text;
        string errors = Sample.RunOn(text).Errors;
        string[] paths = [.. errors.Split('\n').Select(Place).Where(static path => path.Length > 0)];
        Assert.Equal(
            ["$.machine.runningBelt.width", "$.machine.tailRoller.diameter", "$.testDemand.person.mass"],
            paths
        );
    }

    [Fact]
    public void AMisspeltRequiredFieldIsOneMistake()
    {
        string text = Sample.Change(Sample.Slipping, "\"width\"", "\"wdith\"").Text;
        Assert.Equal(2, Sample.RunOn(text).Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public void TheClampIsRefusedThoughMoreIsMissing()
    {
        string text = Sample.Change(Sample.Slipping, "\"form\": \"direct\"", "\"form\": \"alternating\"").Text;
        string errors = Sample.RunOn(Sample.Change(text, "\"zeroed\": true,", "").Text).Errors;
        Assert.Contains("sees only the ripple", errors, StringComparison.Ordinal);
        Assert.Contains("no field \"zeroed\"", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void AValueOutOfRangeIsToldInTheUnitOfTheRange()
    {
        string text = Sample.Change(Sample.Slipping, "\"20 in\"", "\"200 in\"").Text;
        Assert.Contains(
            "a value from 0.2 m to 1.2 m; this is 5.08 m.",
            Sample.RunOn(text).Errors,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void TenMistakesAreEnough()
    {
        string text = Sample.Slipping.Replace("\"reading\"", "\"raeding\"", StringComparison.Ordinal);
        string[] lines = Sample.RunOn(text).Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(12, lines.Length);
        Assert.Matches("^[0-9]+ more not shown", lines[10]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n ")]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("3")]
    [InlineData("null")]
    [InlineData("\"treadmillmech-visit/1\"")]
    [InlineData("{} {}")]
    public void ADocumentThatIsNoVisitIsRefusedAtItsRoot(string text)
    {
        Sample.Outcome outcome = Sample.RunOn(text);
        Assert.Equal(2, outcome.Code);
        Assert.Empty(outcome.Output);
        Assert.Contains(", $: found ", outcome.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void NestingWithoutEndIsRefused() => Assert.Equal(2, Sample.RunOn(new string('[', 100000)).Code);

    [Fact]
    public void BytesThatAreNoTextAreRefusedOnTheirLine()
    {
        Sample.Outcome outcome = Sample.RunOn([.. "{\n\n\"a\": \""u8, 0xC3, 0x28, .. "\"}"u8]);
        Assert.Equal(2, outcome.Code);
        Assert.Contains("line 3, $: found bytes that are not UTF-8", outcome.Errors, StringComparison.Ordinal);
        Assert.Equal(2, Sample.RunOn(Encoding.Unicode.GetBytes(Sample.Healthy)).Code);
    }

    [Fact]
    public void AMissingFileAFolderAndAFileTooLargeAreRefusedByName()
    {
        string none = Path.Combine(Path.GetTempPath(), $"none-{Guid.NewGuid():N}.json");
        foreach (string name in (string[])[none, Path.Combine(none, "deeper"), Path.GetTempPath(), "", "a\0b"])
        {
            Sample.Outcome outcome = Sample.Run(name);
            Assert.Equal(2, outcome.Code);
            Assert.Empty(outcome.Output);
            Assert.Contains("found ", outcome.Errors, StringComparison.Ordinal);
            Assert.Contains("expected ", outcome.Errors, StringComparison.Ordinal);
        }

        Assert.Contains(none, Sample.Run(none).Errors, StringComparison.Ordinal);
        Assert.Contains("1 MiB", Sample.RunOn(new byte[(1 << 20) + 1]).Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--jsno")]
    [InlineData("-x")]
    [InlineData("one.json", "two.json")]
    public void ACommandThatIsNotKnownIsRefused(params string[] args)
    {
        Sample.Outcome outcome = Sample.Run(args);
        Assert.Equal(2, outcome.Code);
        Assert.Empty(outcome.Output);
        Assert.Contains("Found ", outcome.Errors, StringComparison.Ordinal);
        Assert.Contains("Expected: ", outcome.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void TextFromAFileCannotSteerATerminal()
    {
        string text = Sample.Change(Sample.Slipping, "\"20 in\"", "\"\\u001b[2J\\u202e\\n 20 in\"").Text;
        string errors = Sample.RunOn(text).Errors;
        Assert.DoesNotContain(errors, static c => c != '\n' && (char.IsControl(c) || c == '\u202e'));
        Assert.Equal(2, errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    private static string Place(string complaint) => Complaint().Match(complaint).Groups["path"].Value;

    private static string Part(string text, string after, string before)
    {
        int start = text.IndexOf(after, StringComparison.Ordinal) + after.Length;
        return text[start..text.IndexOf(before, start, StringComparison.Ordinal)];
    }

    [GeneratedRegex(@", line [0-9]+, (?<path>\$.*?): found ", RegexOptions.ExplicitCapture)]
    private static partial Regex Complaint();
}
