using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>The page: everything of the sheet is on it, in order, and it fits the width.</summary>
public sealed class TextSheetTests
{
    [Fact]
    public void SectionsStandInTheOrderOfUse()
    {
        string[] headings =
        [
            "VERDICT: OUT OF SERVICE",
            "SAFETY NOW",
            "WHAT TO DO NEXT",
            "WHY",
            "READINGS",
            "TENSION BUDGET",
            "WHAT ONE MORE READING WOULD SETTLE",
            "READINGS NOT USED",
            "NOTICES",
            "FOR THE OWNER",
            "The maker's manual",
        ];
        int at = 0;
        foreach (string heading in headings)
        {
            int next = SheetPages.Text.IndexOf(heading, at, StringComparison.Ordinal);
            Assert.True(next >= at, $"{heading} is missing or out of order.");
            at = next;
        }
    }

    [Theory]
    [InlineData("Larkspur 12 (invented)")]
    [InlineData("Nobody steps on it until the drive belt is replaced.")]
    [InlineData("- Hang a sign on the console.")]
    [InlineData("1. Unplug the machine, then give both bolts a quarter turn.")]
    [InlineData("2. Clean the deck.")]
    [InlineData("At the retest: The belt holds under the test demand.")]
    [InlineData("Stop at:       The bolt is suddenly hard to turn.")]
    [InlineData("To undo:       Turn both bolts back by a quarter turn.")]
    [InlineData("Caution:       Do not adjust while the belt moves.")]
    [InlineData("running belt (out of service): The running belt slips on its drive roller.")]
    [InlineData("slip of the belt 0.060 ± 0.007")]
    [InlineData("slip 0.02 (a rule of thumb)")]
    [InlineData("For:     The ratio of roller and belt fell.")]
    [InlineData("Against: The belt looks sound.")]
    [InlineData("612 ± 31 N")]
    [InlineData("0.170 ± 0.020")]
    [InlineData("+0.75 turn of at most 2 turns (a rule of thumb)")]
    [InlineData("1.25 turns, limited by the most turns in one visit")]
    [InlineData("23.4 turns")]
    [InlineData("0.120 ± 0.010 %")]
    [InlineData("not known: belt stiffness")]
    [InlineData("660 ± 40 N")]
    [InlineData("1.07 ± 0.05")]
    [InlineData("the readings do not tell")]
    [InlineData("A lift of 25 mm. About 5 min. It settles: the strand tension to a tenth.")]
    [InlineData("Event 5, motor current: The meter was not zeroed; zero it and read again.")]
    [InlineData("The speed lies outside the range of the relation.")]
    [InlineData("Please leave it unplugged.")]
    public void EverythingIsOnThePage(string text) => Assert.Contains(text, SheetPages.Text, StringComparison.Ordinal);

    [Fact]
    public void NoLineIsWiderThanThePage()
    {
        string wide = string.Join(" ", Enumerable.Repeat("word", 60)) + " " + new string('x', 250);
        VisitSheet sheet = SheetPages.Full with
        {
            VerdictText = wide,
            SafetyNow = [wide],
            Readings = [new(ReadingKind.RestTension, wide, "N", null, null, new(wide, 1, "N", wide))],
        };
        Assert.All(TextSheet.Of(wide, sheet).Split('\n'), static line => Assert.InRange(line.Length, 0, 100));
    }

    [Fact]
    public void WrappingLosesNothing()
    {
        string wide = string.Join(" ", Enumerable.Range(0, 80).Select(static i => $"word{i}"));
        string page = TextSheet.Of("x", SheetPages.Full with { VerdictText = wide });
        Assert.Contains(wide, string.Join(' ', page.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)));
    }

    [Fact]
    public void AnEmptySheetSaysSoInWords()
    {
        string page = TextSheet.Of("x", SheetPages.Empty);
        Assert.Contains("VERDICT: USE\n", page, StringComparison.Ordinal);
        Assert.Contains("Nothing at this visit.", page, StringComparison.Ordinal);
        Assert.Contains("None: all readings were used.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void ThePageIsPlainText() =>
        Assert.DoesNotContain(SheetPages.Text, static c => char.IsControl(c) && c != '\n');

    [Fact]
    public void EveryReasonHasWordsOfItsOwn()
    {
        string[] words =
        [
            .. Enum.GetValues<Reason>()
                .Where(static reason => reason != Reason.Found)
                .Select(static reason => Words.Of(new Shortfall(reason, "BeltDrag"))),
        ];
        Assert.Equal(words.Length, words.Distinct().Count());
        Assert.All(words, static text => Assert.EndsWith(": belt drag", text, StringComparison.Ordinal));
        Assert.DoesNotContain(words, static text => text.StartsWith("no answer", StringComparison.Ordinal));
    }
}
