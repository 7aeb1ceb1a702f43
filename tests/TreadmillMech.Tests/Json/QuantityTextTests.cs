using System.Globalization;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Shapes;
using TreadmillMech.Json.Units;
using TreadmillMech.Tests.ServiceVisit;

namespace TreadmillMech.Tests.Json;

/// <summary>What is a number with a unit, and what is not.</summary>
public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("20 in", 0.508)]
    [InlineData("20in", 0.508)]
    [InlineData("  20   in ", 0.508)]
    [InlineData("+20. in", 0.508)]
    [InlineData(".5 m", 0.5)]
    [InlineData("5e-1 m", 0.5)]
    [InlineData("5E2 mm", 0.5)]
    public void ANumberAndAUnit(string text, double metres)
    {
        Assert.Null(Read(text, out double si));
        Assert.Equal(metres, si, 1e-15);
    }

    [Theory]
    [InlineData("1,5 m", "comma")]
    [InlineData("1,000 mm", "comma")]
    [InlineData("20", "without a unit")]
    [InlineData("20 furlong", "no unit for it")]
    [InlineData("20 kg", "no unit for it")]
    [InlineData("20 IN", "no unit for it")]
    [InlineData("20 in in", "no unit for it")]
    [InlineData("1.2.3 m", "no unit for it")]
    [InlineData("5e m", "no unit for it")]
    [InlineData("NaN m", "does not begin with a number")]
    [InlineData("Infinity m", "does not begin with a number")]
    [InlineData("-∞ m", "does not begin with a number")]
    [InlineData("m", "does not begin with a number")]
    [InlineData("", "does not begin with a number")]
    [InlineData("- m", "does not begin with a number")]
    [InlineData(". m", "does not begin with a number")]
    [InlineData("٢٠ m", "does not begin with a number")]
    [InlineData("1e400 m", "not a finite number")]
    [InlineData("-1e400 m", "not a finite number")]
    public void AnythingElseIsRefused(string text, string why)
    {
        Refusal? refusal = Read(text, out _);
        Assert.NotNull(refusal);
        Assert.Contains(why, refusal.Found, StringComparison.Ordinal);
        Assert.Contains($"\"{text}\"", refusal.Found, StringComparison.Ordinal);
        Assert.Contains("mm, cm, m, in or ft", refusal.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void ABareJsonNumberHasNoUnit()
    {
        LocatedNode node = new(NodeKind.Number, "$", 1, 1) { Text = "20" };
        Refusal? refusal = QuantityText.Read(node, UnitTables.Length, out _);
        Assert.Contains("without a unit", refusal!.Found, StringComparison.Ordinal);
        Assert.Null(QuantityText.Read(node, UnitTables.Count, out double count));
        Assert.Equal(20, count);
    }

    [Theory]
    [InlineData(",", ".", "-")]
    [InlineData("٫", "٬", "\u061C-")]
    [InlineData(",", "\u00A0", "\u2212")]
    public void NoCultureHasASay(string decimalMark, string groupMark, string minus)
    {
        // The build runs without culture data, so cultures like de-DE, ar-SA and sv-SE are made by their marks.
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = decimalMark;
        culture.NumberFormat.NumberGroupSeparator = groupMark;
        culture.NumberFormat.NegativeSign = minus;
        try
        {
            CultureInfo.CurrentCulture = culture;
            Assert.Null(Read("-1.25 m", out double si));
            Assert.Equal(-1.25, si);
            Assert.NotNull(Read("1,25 m", out _));
            Assert.Equal(SheetPages.Text, SheetPages.Print());
            Assert.Equal(SheetPages.Json, SheetPages.Write());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static Refusal? Read(string text, out double si) =>
        QuantityText.Read(new(NodeKind.Text, "$", 1, 1) { Text = text }, UnitTables.Length, out si);
}
