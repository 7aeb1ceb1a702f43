using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class DeckFrictionPullTests
{
    private static readonly Mass Hundred = Mass.FromKilograms(100);

    // (216.133 - 20) / (100 x 9.80665) = 0.2, by hand.
    [Fact]
    public void FrictionIsTheExtraPullOverTheWeight()
    {
        Estimate<double> found = DeckFriction.FromPull(Hundred, Newtons(216.133), Newtons(20)).Value;
        Close.To(0.2, found.Value, 1e-12);

        // 2 % of each pull: sqrt(216.133^2 + 20^2) x 0.02 / 980.665 = 0.0044266, by hand.
        Close.To(0.0044266, found.StandardUncertainty, 1e-4);
    }

    [Fact]
    public void AnOwnUncertaintyReplacesTheDefault()
    {
        double two = DeckFriction.FromPull(Hundred, Newtons(216.133), Newtons(20)).Value.StandardUncertainty;
        double five = DeckFriction.FromPull(Hundred, Newtons(216.133), Newtons(20), 0.05).Value.StandardUncertainty;
        Close.To(2.5, five / two);
    }

    [Theory]
    [InlineData(100, 100)]
    [InlineData(90, 100)]
    public void AMassThatAddsNoPullContradicts(double loaded, double empty)
    {
        Shortfall missing = DeckFriction.FromPull(Hundred, Newtons(loaded), Newtons(empty)).Missing;
        Assert.Equal(Reason.ReadingsContradict, missing.Why);
        Assert.Equal(empty, missing.Needed);
        Assert.Equal(loaded, missing.Available);
        Assert.Equal("N", missing.Unit);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    public void AMassThatIsNotAboveNothingIsNamedWithItsValue(double kilograms)
    {
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(
            "mass",
            () => DeckFriction.FromPull(Mass.FromKilograms(kilograms), Newtons(200), Newtons(20))
        );
        Assert.Contains(
            FormattableString.Invariant($"{kilograms} kg is not above 0 kg"),
            error.Message,
            StringComparison.Ordinal
        );
    }

    private static Force Newtons(double value) => Force.FromNewtons(value);
}
