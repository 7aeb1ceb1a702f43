using System.Text.RegularExpressions;
using FsCheck.Xunit;
using TreadmillMech.Json.Located;
using TreadmillMech.Json.Units;

namespace TreadmillMech.Tests.Json;

/// <summary>Numbers with units: what is written is read again to the last bit, and the schema's pattern agrees.</summary>
public sealed class UnitTextTests
{
    private static readonly string[] Numbers =
    [
        "20",
        "-20",
        "+20.",
        ".5",
        "1e-3",
        "5E+2",
        "",
        "-",
        ".",
        "1,5",
        "NaN",
        "Infinity",
        "1.2.3",
        "5e",
        "٢٠",
        "0x10",
        "1 000",
    ];

    [Property(MaxTest = 300)]
    public void AnyFiniteNumberComesBackToTheLastBit(long bits, int exponent)
    {
        // All bit patterns, and numbers of everyday size, whose texts are shorter.
        double any = BitConverter.Int64BitsToDouble(bits);
        double everyday = Math.ScaleB(1 + Math.Abs(bits / (double)long.MaxValue), exponent % 20);
        foreach (double si in (double[])[any, everyday, -everyday, bits / 1000.0, 0, -0.0])
        {
            if (!double.IsFinite(si))
            {
                continue;
            }

            foreach (UnitTable table in UnitTables.All)
            {
                string text = QuantityText.Write(table, si);
                Assert.Null(QuantityText.Read(Node(text), table, out double back));
                Assert.True(
                    BitConverter.DoubleToInt64Bits(si) == BitConverter.DoubleToInt64Bits(back),
                    $"{table.Kind}: {si:R} written as {text}, read as {back:R}"
                );
            }
        }
    }

    [Theory]
    [InlineData("a length", 0.508, "20 in")]
    [InlineData("a length", 0.05, "50 mm")]
    [InlineData("a length", 1.45, "1450 mm")]
    [InlineData("a length", 3.048, "10 ft")]
    [InlineData("a length", 0, "0 mm")]
    [InlineData("a speed", 2.68224, "6 mph")]
    [InlineData("a speed", 2.3, "2.3 m/s")]
    [InlineData("a share", 0.07, "7 %")]
    [InlineData("a share", 1e-8, "0.000001 %")]
    [InlineData("a share", 1e-12, "1E-10 %")]
    [InlineData("a volume", 15e-6, "15 mL")]
    [InlineData("a mass", 1e30, "1E30 kg")]
    [InlineData("a temperature", 21.5, "21.5 °C")]
    [InlineData("a length", 0.30000000000000004, "300.00000000000004 mm")]
    [InlineData("a force", 451.77774749885396, "451.77774749885396 N")]
    public void TheUnitWithTheFewestDigitsIsTaken(string kind, double si, string text) =>
        Assert.Equal(text, QuantityText.Write(UnitTables.All.Single(table => table.Kind == kind), si));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void WhatIsNotFiniteHasNoText(double si) =>
        Assert.Throws<ArgumentException>(() => QuantityText.Write(UnitTables.Length, si));

    [Fact]
    public void ThePatternTakesWhatTheReaderTakes()
    {
        string[] symbols =
        [
            .. UnitTables.All.SelectMany(static table => table.Units).Select(static unit => unit.Symbol).Distinct(),
            "N·m",
            "kg m²",
            "kg  m2",
            "IN",
            "furlong",
            "µ",
            "mm2",
        ];
        int taken = 0;
        foreach (UnitTable table in UnitTables.All)
        {
            Regex pattern = new(QuantityText.Pattern(table), RegexOptions.ECMAScript);
            foreach (string number in Numbers)
            {
                foreach (string symbol in symbols)
                {
                    foreach (string text in (string[])[$"{number} {symbol}", number + symbol, $"  {number}  {symbol} "])
                    {
                        bool read = QuantityText.Read(Node(text), table, out _) is null;
                        taken += read ? 1 : 0;
                        Assert.True(read == pattern.IsMatch(text), $"{table.Kind}: \"{text}\", reader {read}");
                    }
                }
            }
        }

        Assert.True(taken > 1000, $"Only {taken} texts were taken.");
    }

    private static LocatedNode Node(string text) => new(NodeKind.Text, "$", 1, 1) { Text = text };
}
