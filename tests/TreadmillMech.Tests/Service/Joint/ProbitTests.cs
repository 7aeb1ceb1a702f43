using System.Globalization;
using TreadmillMech.Service.Estimation.Joint;
using TreadmillMech.Tests.Laws;

namespace TreadmillMech.Tests.Service.Joint;

/// <summary>Functions of the normal distribution against scipy.special, see Service/Generators/joint_visit.py.</summary>
public sealed class ProbitTests
{
    [Theory]
    [InlineData(-40)]
    [InlineData(-24)]
    [InlineData(-8)]
    [InlineData(-1.5)]
    [InlineData(0)]
    [InlineData(0.7)]
    [InlineData(3)]
    public void LogarithmAndSlopeAreScipys(double distance)
    {
        // Beyond 25 the first term of the tail stands for it: off by 1/w^2 of the slope's last part.
        double tolerance = distance < -25 ? 1e-6 : 1e-8;
        Close.To(Table("log", distance), Probit.LogProbability(distance), tolerance);
        Close.To(Table("slope", distance), Probit.Slope(distance), tolerance);
    }

    [Fact]
    public void FarOnItsOwnSideAnOutcomeSaysNothing()
    {
        Close.Within(0, Probit.LogProbability(9), 1e-15);
        Close.To(Table("slope", 9), Probit.Slope(9), 1e-8);
        Close.Within(0, Probit.Curvature(9), 1e-15);
    }

    [Theory]
    [InlineData(0.3, -1.2)]
    [InlineData(2, 2.5)]
    [InlineData(-3, -2)]
    [InlineData(5, 0.1)]
    [InlineData(-6, 4)]
    public void BothHoldWithTheProductOfTheirProbabilities(double first, double second)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"probit both {first} {second}");
        Close.To(ScipyTable.Rows[name], Both(first, second), 1e-7);
        Close.To(ScipyTable.Rows[name], Both(second, first), 1e-7);
    }

    [Theory]
    [InlineData(0.3, -1.2)]
    [InlineData(2, 2.5)]
    [InlineData(-3, -2)]
    [InlineData(-6, 4)]
    public void ItsSlopesAreThoseOfDifferences(double first, double second)
    {
        Dual<Lanes> both = Probit.Both(Variable(first, 1, 0), Variable(second, 0, 1));
        Close.Within(Close.Slope(x => Both(x, second), first, 1e-4), both.Slope[0], 1e-5);
        Close.Within(Close.Slope(x => Both(first, x), second, 1e-4), both.Slope[1], 1e-5);
    }

    [Fact]
    public void AnInfiniteMarginLeavesTheOtherAlone() => Assert.Equal(-2.5, Both(double.PositiveInfinity, -2.5), 1e-9);

    [Theory]
    [InlineData(-2)]
    [InlineData(0.4)]
    public void CurvatureIsTheSlopeOfTheSlope(double distance) =>
        Close.To(-Close.Slope(Probit.Slope, distance, 1e-5), Probit.Curvature(distance), 1e-6);

    private static double Table(string what, double distance) =>
        ScipyTable.Rows[string.Create(CultureInfo.InvariantCulture, $"probit {what} {distance}")];

    private static double Both(double first, double second) =>
        Probit.Both(Variable(first, 0, 0), Variable(second, 0, 0)).Value[0];

    private static Dual<Lanes> Variable(double value, double first, double second) =>
        new(value, new Lanes([first, second, 0, 0, 0, 0, 0, 0]));
}
