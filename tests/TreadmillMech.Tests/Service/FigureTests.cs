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

    /// <summary>
    /// The first two: the examples of the rule of the Particle Data Group in the documentation of pdground 0.1.4; the others
    /// rounded by hand after that rule.
    /// </summary>
    [Theory]
    [InlineData(12.2135, "", 0.03215, "12.214 ± 0.032")]
    [InlineData(12.2135, "", 0.06515, "12.21 ± 0.07")]
    [InlineData(1080.4, "N", 46.3, "1080 ± 50 N")]
    [InlineData(464.2, "N", 127, "460 ± 130 N")]
    [InlineData(1, "", 0.0691, "1.00 ± 0.07")]
    [InlineData(0.25, "", 0.012, "0.250 ± 0.012")]
    [InlineData(0.3, "V s/rad", 0.002, "0.3000 ± 0.0020 V s/rad")]
    [InlineData(-0.0004, "%", 0.94, "0.0 ± 0.9 %")]
    [InlineData(2.98, "", 0.847, "3.0 ± 0.8")]
    [InlineData(0.444, "%", 0.996, "0.4 ± 1.0 %")]
    [InlineData(7.27, "%", 0.3551, "7.3 ± 0.4 %")]
    [InlineData(7.25, "%", 0.3541, "7.25 ± 0.35 %")]
    [InlineData(1, "A", 0, "1 A")]
    public void TheUncertaintyHasOneOrTwoDigitsAndTheValueEndsAtTheSamePlace(
        double value,
        string unit,
        double uncertainty,
        string text
    ) => Assert.Equal(text, new Figure("any", value, unit, uncertainty).ToString());

    [Fact]
    public void ABentIntervalStandsInPlaceOfTheUncertainty() =>
        Assert.Equal(
            "460 (310 to 880) N",
            new Figure("strand tension of the drive belt", 464.2, "N", 127) { Lower = 312, Upper = 876 }.ToString()
        );

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
