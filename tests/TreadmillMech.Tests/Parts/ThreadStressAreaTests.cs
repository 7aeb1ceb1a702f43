using TreadmillMech.Parts;

namespace TreadmillMech.Tests.Parts;

/// <summary>Stress areas against the standards' tables.</summary>
public sealed class ThreadStressAreaTests
{
    // ISO 898-1, table of stress areas, coarse pitch (read) and M8x1 (from memory); half a unit of the last digit.
    [Theory]
    [InlineData("M6", 20.1)]
    [InlineData("M8", 36.6)]
    [InlineData("M10", 58.0)]
    [InlineData("M12", 84.3)]
    [InlineData("M8x1", 39.2)]
    public void MetricAreasAreThoseOfIso898(string thread, double squareMillimetres) =>
        Assert.Equal(squareMillimetres, ScrewThread.Parse(thread).StressArea!.Value.SquareMillimeters, tolerance: 0.05);

    // Shigley's Mechanical Engineering Design, 9th ed., Table 8-2, p. 413, from ANSI B1.1-1974 (read).
    [Theory]
    [InlineData("1/4-20 UNC", 0.0318)]
    [InlineData("1/4-28 UNF", 0.0364)]
    [InlineData("5/16-18 UNC", 0.0524)]
    [InlineData("3/8-16 UNC", 0.0775)]
    [InlineData("3/8-24 UNF", 0.0878)]
    public void UnifiedAreasAreThoseOfAnsiB1(string thread, double squareInches) =>
        Assert.Equal(squareInches, ScrewThread.Parse(thread).StressArea!.Value.SquareInches, tolerance: 0.00005);
}
