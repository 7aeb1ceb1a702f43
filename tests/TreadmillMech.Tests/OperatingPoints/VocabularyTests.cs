using System.Globalization;
using TreadmillMech.Tests.Parts;

namespace TreadmillMech.Tests.OperatingPoints;

/// <summary>The words an answer is given in.</summary>
public sealed class VocabularyTests
{
    private static readonly Shortfall Slack = new(Reason.SlackBelt, "TensionNow", 10, 9, "N");

    [Fact]
    public void AFoundAnswerHasItsValue()
    {
        Answer<double> answer = 1.5;
        Assert.True(answer.Found);
        Assert.Equal(1.5, answer.Value);
        Assert.Equal(1.5, answer.Or(2));
        Assert.True(answer.Is(out double value));
        Assert.Equal(1.5, value);
        Assert.Equal(Reason.Found, answer.Missing.Why);
    }

    [Fact]
    public void AMissingAnswerHasItsReason()
    {
        Answer<double> answer = Slack;
        Assert.False(answer.Found);
        Assert.Equal(2, answer.Or(2));
        Assert.False(answer.Is(out double value));
        Assert.Equal(0, value);
        Assert.Equal(Slack, answer.Missing);
        InvalidOperationException refusal = Assert.Throws<InvalidOperationException>(() => answer.Value);
        Assert.Equal("No answer. SlackBelt: TensionNow needs 10 N, available 9 N.", refusal.Message);
    }

    [Fact]
    public void TheDefaultAnswersNothing()
    {
        Answer<double> answer = default;
        Assert.False(answer.Found);
        Assert.Equal(new Shortfall(Reason.InputUnknown, ""), answer.Missing);
        Assert.Equal(answer, (Answer<double>)new Shortfall(Reason.InputUnknown, ""));
        Assert.Throws<InvalidOperationException>(() => answer.Value);
        Assert.NotEmpty(answer.ToString());
        Assert.Equal("", new Answer<string>().Or(""));
    }

    [Fact]
    public void AFurtherQuestionIsAskedOnlyOfAFoundAnswer()
    {
        Assert.Equal("1.5", ((Answer<double>)1.5).Then(v => v.ToString(CultureInfo.InvariantCulture)).Value);
        int asked = 0;
        Answer<int> next = ((Answer<double>)Slack).Then(_ => ++asked);
        Assert.Equal(Slack, next.Missing);
        Assert.Equal(0, asked);
        Assert.Equal(Reason.InputUnknown, default(Answer<double>).Then(_ => ++asked).Missing.Why);
        Assert.Throws<ArgumentNullException>(() => ((Answer<double>)1).Then<int>(null!));
    }

    [Fact]
    public void AnswersAreEqualByValueOrByReason()
    {
        Answer<double> one = 1;
        Answer<double> missing = Slack;
        Assert.True(one == (Answer<double>)1.0);
        Assert.True(one != (Answer<double>)2.0);
        Assert.True(missing == (Answer<double>)Slack);
        Assert.True(missing != one);
        Assert.False(missing.Equals((Answer<double>)(Slack with { Needed = 11 })));
        Assert.Equal(one.GetHashCode(), ((Answer<double>)1.0).GetHashCode());
        Assert.Equal(missing.GetHashCode(), ((Answer<double>)Slack).GetHashCode());
        Assert.False(one.Equals(1.0 as object));
        Assert.NotEqual(default, (Answer<double>)0.0);
    }

    [Fact]
    public void AShortfallSaysItsNumbersWhereItHasAny()
    {
        Assert.Equal("InputUnknown: BeltDrag", new Shortfall(Reason.InputUnknown, "BeltDrag").ToString());
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = PartEqualityTests.CommaCulture();
            Assert.Equal(
                "CurrentLimit: MeanCurrent needs 12.35 A, available -0.5 A",
                new Shortfall(Reason.CurrentLimit, "MeanCurrent", 12.3456, -0.5, "A").ToString()
            );
            Assert.Equal("-0.5 to 1.25", new Bounds(-0.5, 1.25).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, true)]
    [InlineData(1.5, true)]
    [InlineData(0.999, false)]
    [InlineData(2.001, false)]
    [InlineData(double.NaN, false)]
    public void BoundsHoldTheirEndsAndNoNaN(double value, bool inside) =>
        Assert.Equal(inside, new Bounds(1, 2).Holds(value));

    [Fact]
    public void NoticesAreASetOfRows()
    {
        Notice[] table =
        [
            new("A", "a", "1", new(0, 1), "first"),
            new("B", "b", "m", new(2, 3), "second"),
            new("C", "c", "s", new(4, 5), "third"),
        ];
        Notices none = default;
        Notices both = new Notices(1) | new Notices(4);
        Assert.True(none.None);
        Assert.Equal(0, none.Count);
        Assert.Empty(none.Describe(table));
        Assert.False(both.None);
        Assert.Equal(2, both.Count);
        Assert.Equal(["A", "C"], both.Describe(table).Select(notice => notice.Subject));
        Assert.Equal(both, new Notices(5) | new Notices(1));
        Assert.Equal(("no notices", "1 notice", "2 notices"), ($"{none}", $"{new Notices(2)}", $"{both}"));
        Assert.Equal("B (b) lies outside 2 to 3 m, the range of second.", table[1].ToString());
        Assert.Equal("A (a) lies outside 0 to 1, the range of first.", table[0].ToString());
        Assert.Throws<ArgumentNullException>(() => none.Describe(null!));
    }
}
