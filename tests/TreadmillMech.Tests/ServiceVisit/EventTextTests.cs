using TreadmillMech.Samples.ServiceVisit.Help;
using TreadmillMech.Samples.ServiceVisit.Printing;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.ServiceVisit;

/// <summary>Every event has a line of its own in the record; the example of the help has one of every kind.</summary>
public sealed class EventTextTests
{
    private static readonly Visit Example = VisitReaderTests.Read(ExampleVisit.Json).Visit;

    [Fact]
    public void EveryKindOfEventHasWords()
    {
        string[] lines = [.. Example.Events.Select(EventText.Of)];
        Assert.DoesNotContain(lines, static line => line.Contains("without words", StringComparison.Ordinal));
        Assert.Equal(lines.Length, lines.Distinct().Count());
    }

    [Theory]
    [InlineData("Cloth drawn over drive roller: dry")]
    [InlineData("Pitch of the drive belt's span: 88 Hz, span 188 mm")]
    [InlineData("Looked for rumble: not there")]
    [InlineData("Bolts turn: even")]
    [InlineData("Thread left: 30 mm")]
    [InlineData("Marks on the running belt: 1003 mm, as fitted 1000 mm")]
    [InlineData("Groove in the deck: 0.3 mm")]
    [InlineData("Shortest brush: 16 mm, at least 8 mm by the maker")]
    [InlineData("Slope across, right side high: 0.2 %")]
    [InlineData("Incline: 4.8 %, display 5 %")]
    [InlineData("Mains voltage, empty: 121 V")]
    [InlineData("Lift of 25 mm: 75 N")]
    [InlineData("Passes, empty: 30 passes in 34.4 s, display 9.66 km/h")]
    [InlineData("Temperature of motor case: 48 °C, air 21 °C")]
    [InlineData("Coast-down from 9.66 km/h: 3.1 s")]
    [InlineData("Mains power, empty, at 9.66 km/h: 140 W")]
    [InlineData("Cleaned: deck")]
    [InlineData("Deck lubricated: 15 mL")]
    [InlineData("Bolts turned: left +0.25 turn, right +0.25 turn")]
    [InlineData("Drive belt tensioned")]
    [InlineData("Slip test: it held")]
    [InlineData("Drift to the right: -2 mm in 50 passes, empty")]
    public void TheLineSaysWhatTheFileSays(string line) => Assert.Contains(line, Example.Events.Select(EventText.Of));
}
