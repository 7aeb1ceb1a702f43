using System.Globalization;
using TreadmillMech.Service;

namespace TreadmillMech.Tests.Service;

public sealed class FigureTests
{
    [Theory]
    [InlineData(1080.4, "N", "1080 N")]
    [InlineData(99.96, "N", "100 N")]
    [InlineData(12.34, "A", "12.3 A")]
    [InlineData(9.876, "A", "9.88 A")]
    [InlineData(1.5, "", "1.5")]
    [InlineData(0.21948, "%", "0.219 %")]
    [InlineData(0.02, "%", "0.02 %")]
    [InlineData(0, "turn", "0 turns")]
    [InlineData(-12.34, "mm", "-12.3 mm")]
    public void ValuesHaveSensibleDigits(double value, string unit, string text) =>
        Assert.Equal(text, new Figure("any", value, unit).ToString());

    [Fact]
    public void TheUncertaintyStandsBetweenValueAndUnit()
    {
        Assert.Equal("1080 ± 46.3 N", new Figure("strand tension", 1080, "N", 46.3).ToString());
        Assert.Equal("0.25 ± 0.012", new Figure("deck friction", 0.25, "", 0.012).ToString());
    }

    [Fact]
    public void AThresholdNamesItsSource() =>
        Assert.Equal("0.25 turn (a rule)", new Threshold("turns at a time", 0.25, "turn", "a rule").ToString());

    [Fact]
    public void NumbersDoNotFollowTheCulture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = Commas.Culture;
            Assert.Equal("1,5", 1.5.ToString(CultureInfo.CurrentCulture));
            Assert.Equal("9.88 ± 0.125 A", new Figure("current", 9.876, "A", 0.125).ToString());
            Assert.Equal("-0.25 % (a rule)", new Threshold("any", -0.25, "%", "a rule").ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
