namespace TreadmillMech.Tests.Laws;

/// <summary>Every law over its whole domain: finite, of the right sign and trend, with exact derivatives.</summary>
public sealed class LawSweepTests
{
    private const int Points = 200;

    public static TheoryData<string> Laws => LawCatalogue.Names;

    [Fact]
    public void EveryLawHasADomainAndEveryDomainALaw() =>
        Assert.Equal(LawCatalogue.All.Keys.Order(), LawDomains.All.Keys.Order());

    [Theory]
    [MemberData(nameof(Laws))]
    public void IsFiniteAndOfTheRightSign(string law)
    {
        LawDomain domain = LawDomains.All[law];
        foreach (double[] place in Spread.Over(domain.Arguments, Points))
        {
            double value = LawCatalogue.Value(law, place);
            Assert.True(double.IsFinite(value), $"{law} is {value} at {string.Join(", ", place)}");
            if (domain.Sign != Sign.Either)
            {
                Assert.True(
                    value > 0 == (domain.Sign == Sign.Positive) && value != 0,
                    $"{law} is {value} at {string.Join(", ", place)}"
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void FollowsTheTrendOfEachArgument(string law)
    {
        Argument[] arguments = LawDomains.All[law].Arguments;
        foreach (double[] place in Spread.Over(arguments, Points))
        {
            double value = LawCatalogue.Value(law, place);
            for (int i = 0; i < arguments.Length; i++)
            {
                if (arguments[i].Trend == Trend.Either)
                {
                    continue;
                }

                // Half of the way to the upper end: a step that stays inside.
                double[] beyond = [.. place];
                beyond[i] += 0.5 * (arguments[i].To - place[i]);
                double rise = LawCatalogue.Value(law, beyond) - value;
                double slope = LawCatalogue.WithSlope(law, place, i).Slope;
                string where = $"{law}, argument {i}, at {string.Join(", ", place)}: rise {rise}, slope {slope}";
                Assert.True(rise != 0 && rise > 0 == (arguments[i].Trend == Trend.Rises), where);
                Assert.True(slope != 0 && slope > 0 == (arguments[i].Trend == Trend.Rises), where);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void HasTheDerivativeOfCentralDifferences(string law)
    {
        Argument[] arguments = LawDomains.All[law].Arguments;
        foreach (double[] place in Spread.Over(arguments, Points))
        {
            double value = LawCatalogue.Value(law, place);
            for (int i = 0; i < arguments.Length; i++)
            {
                double range = arguments[i].To - arguments[i].From;
                Dual<Real> dual = LawCatalogue.WithSlope(law, place, i);
                double difference = Close.Slope(
                    x => LawCatalogue.Value(law, [.. place[..i], x, .. place[(i + 1)..]]),
                    place[i],
                    1e-5 * range
                );

                // The difference rounds by 1e-16 of the value over its step, and bends by the third derivative.
                double allowed = 1e-7 * (Math.Abs(difference) + (Math.Abs(value) / range));
                Close.Within(value, dual.Value, 1e-15 * Math.Abs(value));
                Close.Within(difference, dual.Slope, allowed);
            }
        }
    }
}
