using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Tests.Parts;

/// <summary>Which designations are read, what they mean, and how everything else is refused.</summary>
public sealed class ThreadDesignationTests
{
    // Pitches: ISO 261, coarse and fine; threads per inch: ASME B1.1, UNC and UNF.
    [Theory]
    [InlineData("M8x1.25", "M8x1.25", 8, 1.25)]
    [InlineData("M8", "M8x1.25", 8, 1.25)]
    [InlineData("M10", "M10x1.5", 10, 1.5)]
    [InlineData("m8 x 1.25", "M8x1.25", 8, 1.25)]
    [InlineData("M8X1", "M8x1", 8, 1)]
    [InlineData("M8×1", "M8x1", 8, 1)]
    [InlineData(" M6 ", "M6x1", 6, 1)]
    [InlineData("M12x1.50", "M12x1.5", 12, 1.5)]
    public void AMetricDesignationGivesDiameterAndPitch(string text, string name, double diameter, double pitch)
    {
        ScrewThread thread = ScrewThread.Parse(text);
        Assert.Equal(name, thread.Designation);
        Assert.Equal(name, thread.ToString());
        Assert.Equal(ThreadFamily.Metric, thread.Family);
        Assert.Equal(diameter, thread.NominalDiameter!.Value.Millimeters, 9);
        Assert.Equal(pitch, thread.Lead.Millimeters, 9);
    }

    [Theory]
    [InlineData("3/8-16 UNC", "3/8-16 UNC", 0.375, 16)]
    [InlineData("5/16-24 UNF", "5/16-24 UNF", 0.3125, 24)]
    [InlineData("5/16-18 unc", "5/16-18 UNC", 0.3125, 18)]
    [InlineData("  1/4-20   UNC ", "1/4-20 UNC", 0.25, 20)]
    public void AUnifiedDesignationGivesDiameterAndThreadsPerInch(string text, string name, double inches, int count)
    {
        ScrewThread thread = ScrewThread.Parse(text);
        Assert.Equal(name, thread.Designation);
        Assert.Equal(ThreadFamily.Unified, thread.Family);
        Assert.Equal(inches, thread.NominalDiameter!.Value.Inches, 9);
        Assert.Equal(1.0 / count, thread.Lead.Inches, 9);
    }

    [Theory]
    [InlineData("M8x1,25")]
    [InlineData("M8,5")]
    [InlineData("M8x3")]
    [InlineData("M8x1.25x20")]
    [InlineData("M7.5")]
    [InlineData("M0")]
    [InlineData("M-8")]
    [InlineData("M8x-1.25")]
    [InlineData("M8x")]
    [InlineData("Mx1")]
    [InlineData("M 8 x 1 . 25")]
    [InlineData("M1e1")]
    [InlineData("MNaN")]
    [InlineData("MInfinity")]
    [InlineData("M99999999999999999999")]
    [InlineData("3/8-17 UNC")]
    [InlineData("3/8-24 UNC")]
    [InlineData("3/8-16")]
    [InlineData("3/8-16UNC")]
    [InlineData("3/8-16 BSW")]
    [InlineData("3/7-16 UNC")]
    [InlineData("3/8--16 UNC")]
    [InlineData("3/8-16 UNC UNC")]
    [InlineData("8x1.25")]
    [InlineData("M")]
    [InlineData("x")]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("measured")]
    [InlineData("\u0660")]
    [InlineData("M\u0668")]
    public void AnythingElseIsRefusedWithTheAcceptedForms(string text)
    {
        Assert.False(ScrewThread.TryParse(text, out ScrewThread? none));
        Assert.Null(none);
        FormatException refusal = Assert.Throws<FormatException>(() => ScrewThread.Parse(text));
        Assert.Contains($"\"{text}\"", refusal.Message, StringComparison.Ordinal);
        foreach (string form in (string[])["M8x1.25", "M10", "3/8-16 UNC", "5/16-24 UNF"])
        {
            Assert.Contains(form, refusal.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void EveryFormThatTheRefusalListsIsAccepted()
    {
        string message = Assert.Throws<FormatException>(() => ScrewThread.Parse("?")).Message;
        string[] quoted = message.Split('"');
        string[] forms = [.. quoted.Where((_, place) => place % 2 == 1).Skip(1)];
        Assert.Equal(4, forms.Length);
        Assert.All(forms, form => Assert.True(ScrewThread.TryParse(form, out _), form));
    }

    [Fact]
    public void NullIsNoDesignation()
    {
        Assert.Throws<ArgumentNullException>(() => ScrewThread.Parse(null!));
        Assert.False(ScrewThread.TryParse(null, out _));
    }

    [Fact]
    public void AMeasuredLeadKnowsNoDiameterAndNoStressArea()
    {
        // Ten turns, 15 mm of travel.
        ScrewThread thread = ScrewThread.FromMeasuredLead(Length.FromMillimeters(15.0 / 10));
        Assert.Equal(ThreadFamily.Measured, thread.Family);
        Assert.Null(thread.NominalDiameter);
        Assert.Null(thread.StressArea);
        Assert.Equal(1.5, thread.Lead.Millimeters, 12);
        Assert.Equal("measured, 1.5 mm a turn", thread.ToString());
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(6)]
    public void AMeasuredLeadAtTheEndsOfItsRangeIsAccepted(double millimetres) =>
        Assert.Equal(
            millimetres,
            ScrewThread.FromMeasuredLead(Length.FromMillimeters(millimetres)).Lead.Millimeters,
            9
        );

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(0.199)]
    [InlineData(6.01)]
    public void AMeasuredLeadOutsideItsRangeIsRefusedByName(double millimetres)
    {
        OutOfRangeException refusal = Assert.Throws<OutOfRangeException>(() =>
            ScrewThread.FromMeasuredLead(Length.FromMillimeters(millimetres))
        );
        Assert.Contains("lead", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("0.0002 m to 0.006 m", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("M8", 0.25, 0.3125)]
    [InlineData("M10", -2, -3)]
    [InlineData("5/16-18 UNC", 18, 25.4)]
    public void TurnsTimesLeadIsTravel(string text, double turns, double millimetres) =>
        Assert.Equal(millimetres, ScrewThread.Parse(text).Travel(turns).Millimeters, 9);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void TurnsThatAreNoFiniteNumberAreRefused(double turns) =>
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => ScrewThread.Parse("M8").Travel(turns));

    [Fact]
    public void TheSameThreadWrittenInTwoWaysIsEqual()
    {
        Assert.Equal(ScrewThread.Parse("M8"), ScrewThread.Parse("m8 x 1.25"));
        Assert.Equal(ScrewThread.Parse("M8").GetHashCode(), ScrewThread.Parse("m8 x 1.25").GetHashCode());
        Assert.NotEqual(ScrewThread.Parse("M8"), ScrewThread.Parse("M8x1"));
        Assert.Equal(
            ScrewThread.FromMeasuredLead(Length.FromInches(0.05)),
            ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.27))
        );
    }
}
