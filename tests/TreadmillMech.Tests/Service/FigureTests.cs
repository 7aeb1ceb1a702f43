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

    /// <summary>JCGM 100:2008, 7.2.6: at most two digits of the uncertainty, and the value to the same place; rounded by hand.</summary>
    [Theory]
    [InlineData(1080.4, "N", 46.3, "1080 ± 46 N")]
    [InlineData(464.2, "N", 127, "460 ± 130 N")]
    [InlineData(1, "", 0.0691, "1.000 ± 0.069")]
    [InlineData(0.25, "", 0.012, "0.250 ± 0.012")]
    [InlineData(0.3, "V s/rad", 0.002, "0.3000 ± 0.0020 V s/rad")]
    [InlineData(-0.0004, "%", 0.94, "0.00 ± 0.94 %")]
    [InlineData(2.98, "", 0.847, "2.98 ± 0.85")]
    [InlineData(1, "A", 0, "1 A")]
    public void TheUncertaintyHasTwoDigitsAndTheValueEndsAtTheSamePlace(
        double value,
        string unit,
        double uncertainty,
        string text
    ) => Assert.Equal(text, new Figure("any", value, unit, uncertainty).ToString());

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
            Assert.Equal("9.88 ± 0.13 A", new Figure("current", 9.876, "A", 0.126).ToString());
            Assert.Equal("-0.25 % (a rule)", new Threshold("any", -0.25, "%", "a rule").ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
