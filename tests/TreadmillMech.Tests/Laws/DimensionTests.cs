using System.Reflection;

namespace TreadmillMech.Tests.Laws;

/// <summary>
/// Laws know no unit system: shrink metre, kilogram, second and ampere, and the result changes by the factor of the
/// unit written beside it in the documentation. Wrong physics and wrong units in the text both fail.
/// </summary>
public sealed class DimensionTests
{
    /// <summary>Fits to measurements at a speed; their coefficients carry units.</summary>
    private static readonly string[] Fits =
    [
        "GaitLaws.WalkingDutyFactor",
        "GaitLaws.RunningDutyFactor",
        "GaitLaws.WalkingStepFrequency",
        "GaitLaws.RunningStepFrequency",
        "GaitLaws.WalkingThirdHarmonic",
        "GaitLaws.RunningThirdHarmonic",
        "GaitLaws.BrakingPeak",
        "GaitLaws.RunningBrakingShare",
        "ForeAftLaws.WalkingBrakingImpulse",
        "ForeAftLaws.RunningBrakingImpulse",
    ];

    /// <summary>Laws with the acceleration of free fall inside: seconds must shrink with the root of metres.</summary>
    private static readonly string[] Gravity =
    [
        "DeckLaws.FrictionFromPull",
        "DeckWearLaws.DropForce",
        "GaitLaws.MeanNormalForce",
        "GaitLaws.MeanTangentialForce",
        "GaitLaws.WalkRunSpeed",
    ];

    public static TheoryData<string> Laws => LawCatalogue.Names;

    [Theory]
    [InlineData("N m/A", 2, 1, -2, -1)]
    [InlineData("V s/rad = N m/A", 2, 1, -2, -1)]
    [InlineData("N2", 2, 2, -4, 0)]
    [InlineData("A/N", -1, -1, 2, 1)]
    [InlineData("m/m", 0, 0, 0, 0)]
    [InlineData("deg C", 0, 0, 0, 0)]
    [InlineData("Pa", -1, 1, -2, 0)]
    [InlineData("J/m2", 0, 1, -2, 0)]
    [InlineData("W/K", 2, 1, -3, 0)]
    [InlineData("1/K", 0, 0, 0, 0)]
    [InlineData("m4", 4, 0, 0, 0)]
    public void UnitsAreRead(string text, int metre, int kilogram, int second, int ampere) =>
        Assert.Equal(new Dimension(metre, kilogram, second, ampere), Dimension.Parse(text));

    [Fact]
    public void WordsAreNotUnits() => Assert.Null(Dimension.Parse("0 or more"));

    [Theory]
    [MemberData(nameof(Laws))]
    public void EveryParameterAndResultHasAUnit(string law)
    {
        Assert.NotNull(LawDocs.OfResult(law));
        Assert.All(
            LawCatalogue.All[law].GetParameters(),
            parameter => Assert.True(LawDocs.OfParameter(law, parameter) is not null, $"{law}: {parameter.Name}")
        );
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void ScalesWithTheUnits(string law)
    {
        if (Fits.Contains(law))
        {
            // Exempt only if it really is what the exemption is for.
            Assert.True(Misfit(law, 1, 1.7) > 0.01, $"{law} is homogeneous: take it off the list of fits");
            return;
        }

        Assert.True(Misfit(law, 1.9, Math.Sqrt(1.9)) < 1e-12, $"{law}: {Misfit(law, 1.9, Math.Sqrt(1.9))}");
        if (Gravity.Contains(law))
        {
            Assert.True(Misfit(law, 1.9, 0.6) > 0.01, $"{law} has no free fall inside: take it off the list");
            return;
        }

        Assert.True(Misfit(law, 1.9, 0.6) < 1e-12, $"{law}: {Misfit(law, 1.9, 0.6)}");
    }

    /// <summary>Largest relative difference between the law in new units and its value converted.</summary>
    private static double Misfit(string law, double metre, double second)
    {
        ParameterInfo[] parameters = LawCatalogue.All[law].GetParameters();
        double[] factors = [.. parameters.Select(p => Factor(LawDocs.OfParameter(law, p)!, metre, second))];
        double expected = Factor(LawDocs.OfResult(law)!, metre, second);
        double worst = 0;
        foreach (double[] place in Spread.Over(LawDomains.All[law].Arguments, 50))
        {
            double value = LawCatalogue.Value(law, place) * expected;
            double scaled = LawCatalogue.Value(law, [.. place.Select((x, i) => x * factors[i])]);
            worst = Math.Max(worst, Math.Abs(scaled - value) / Math.Max(Math.Abs(value), 1e-3 * Math.Abs(expected)));
        }

        return worst;
    }

    private static double Factor(Dimension unit, double metre, double second) => unit.Factor(metre, 2.3, second, 0.7);
}
