using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class SpanTensionTests
{
    // Verma, Concepts of Physics 1, Ex. 15.7: 0.04 kg/m, 0.40 m, 16 N sound at 25 Hz.
    [Fact]
    public void AStringSoundsAsPrinted()
    {
        SpanTension tension = SpanTension.FromFrequency(Mass(0.04, 0.001), Span(0.40, 0.002), Hertz(25, 0.25)).Value;
        Assert.Equal(16, tension.AsString.Value.Newtons, tolerance: 1e-9);

        // Mass once, length and frequency squared.
        double relative = Math.Sqrt((0.025 * 0.025) + (4 * 0.005 * 0.005) + (4 * 0.01 * 0.01));
        Assert.Equal(16 * relative, tension.AsString.StandardUncertainty.Newtons, tolerance: 1e-9);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "BendingStiffness"), tension.Tension.Missing);
    }

    // The rule of the trade: at a deflection of span/64 the force is a sixteenth of the tension.
    [Fact]
    public void ADeflectionOfASixtyFourthTakesASixteenthOfTheTension()
    {
        SpanTension tension = SpanTension.FromDeflection(Newtons(10, 0.1), Span(0.005, 5e-5), Span(0.32, 0)).Value;
        Assert.Equal(160, tension.AsString.Value.Newtons, tolerance: 1e-9);
        Assert.Equal(160 * Math.Sqrt(2) * 0.01, tension.AsString.StandardUncertainty.Newtons, tolerance: 1e-9);
    }

    // The frequency of a beam in tension on simple supports is that of a string pulled harder by pi2 EI/l2.
    [Theory]
    [InlineData(0.2, 0.02)]
    [InlineData(0.12, 0.05)]
    public void AShortStiffSpanReadsHigh(double meters, double stiffness)
    {
        double pulled = 150 + (Math.PI * Math.PI * stiffness / (meters * meters));
        double frequency = Math.Sqrt(pulled / 0.06) / (2 * meters);
        SpanTension tension = SpanTension
            .FromFrequency(Mass(0.06, 0), Span(meters, 0), Hertz(frequency, 0), Bending(stiffness, 0.3 * stiffness))
            .Value;
        Assert.Equal(pulled, tension.AsString.Value.Newtons, tolerance: 1e-9 * pulled);
        Assert.Equal(150, tension.Tension.Value.Value.Newtons, tolerance: 1e-9 * pulled);
        Assert.Equal((pulled / 150) - 1, tension.ReadsHighBy.Value.DecimalFractions, tolerance: 1e-9);

        // What is taken off is known to 30 %, and nothing else is off.
        Assert.Equal(0.3 * (pulled - 150), tension.Tension.Value.StandardUncertainty.Newtons, tolerance: 1e-9 * pulled);
    }

    // Deflection of a beam in tension with its load in the middle: F l/(4 T) (1 - tanh u/u), u2 = T l2/(4 EI). The inverse
    // reads low by 4 % at most.
    [Theory]
    [InlineData(200, 0.02)]
    [InlineData(100, 0.2)]
    public void ADeflectionOfAStiffSpanIsReadWithinFourPercent(double newtons, double stiffness)
    {
        double u = Math.Sqrt(newtons * 0.3 * 0.3 / (4 * stiffness));
        double down = 5 * 0.3 / (4 * newtons) * (1 - (Math.Tanh(u) / u));
        SpanTension tension = SpanTension
            .FromDeflection(Newtons(5, 0), Span(down, 0), Span(0.3, 0), Bending(stiffness, 0))
            .Value;
        Assert.InRange(tension.Tension.Value.Value.Newtons, 0.96 * newtons, newtons);
        Assert.True(tension.AsString.Value.Newtons > newtons);
    }

    [Fact]
    public void WithoutBendingBothAgree()
    {
        SpanTension tension = SpanTension.FromFrequency(Mass(0.06, 0), Span(0.3, 0), Hertz(60, 0), Bending(0, 0)).Value;
        Assert.Equal(tension.AsString.Value.Newtons, tension.Tension.Value.Value.Newtons, tolerance: 1e-12);
        Assert.Equal(0, tension.ReadsHighBy.Value.DecimalFractions, tolerance: 1e-12);
    }

    [Fact]
    public void ABendingThatSoundsHigherThanTheReadingContradictsIt() =>
        Assert.Equal(
            Reason.ReadingsContradict,
            SpanTension.FromFrequency(Mass(0.06, 0), Span(0.1, 0), Hertz(20, 0), Bending(1, 0)).Missing.Why
        );

    [Fact]
    public void ALargeDeflectionIsNotRead() =>
        Assert.Equal(
            Reason.NotInRange,
            SpanTension.FromDeflection(Newtons(10, 0), Span(0.03, 0), Span(0.3, 0)).Missing.Why
        );

    [Fact]
    public void BadReadingsAreNamed()
    {
        ArgumentOutOfRangeException value = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            SpanTension.FromFrequency(Mass(0.04, 0), Span(10, 0), Hertz(25, 0))
        );
        Assert.Contains("span: 10 m is outside 0.03 m to 3 m", value.Message, StringComparison.Ordinal);
        ArgumentOutOfRangeException spread = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            SpanTension.FromFrequency(Mass(0.04, 0), Span(0.4, -0.1), Hertz(25, 0))
        );
        Assert.Contains("span.StandardUncertainty: -0.1 m", spread.Message, StringComparison.Ordinal);
    }

    private static Estimate<LinearDensity> Mass(double value, double uncertainty) =>
        new(LinearDensity.FromKilogramsPerMeter(value), LinearDensity.FromKilogramsPerMeter(uncertainty));

    private static Estimate<Length> Span(double value, double uncertainty) =>
        new(Length.FromMeters(value), Length.FromMeters(uncertainty));

    private static Estimate<Frequency> Hertz(double value, double uncertainty) =>
        new(Frequency.FromHertz(value), Frequency.FromHertz(uncertainty));

    private static Estimate<Force> Newtons(double value, double uncertainty) =>
        new(Force.FromNewtons(value), Force.FromNewtons(uncertainty));

    private static Estimate<BendingStiffness> Bending(double value, double uncertainty) =>
        new(BendingStiffness.FromNewtonSquareMeters(value), BendingStiffness.FromNewtonSquareMeters(uncertainty));
}
