using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.Laws;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

public sealed class DeckFrictionCurrentTests
{
    private const double Weight = 80 * 9.80665;
    private static readonly Estimate<MotorConstant> Constant = new(Km(0.5), Km(0.02));

    // Motor at 300 rad/s, belt at 3 m/s: 0.5 N m/A x 300 / 3 = 50 N for each ampere. 5 A against 1.8624 A at 80 kg:
    // 50 x 3.1376 = 156.88 N, over 784.532 N: 0.19997, by hand.
    [Fact]
    public void FrictionOnTheLevelIsTheExtraTorquesPullOverTheWeight() =>
        Close.To(50 * (5 - 1.8624) / Weight, Friction(5, 1.8624, 0).Value.Value, 1e-12);

    // Uphill the weight's part along the deck drives the belt, so the same current tells of more friction:
    // mu = F/(W cos) + tan.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.15)]
    [InlineData(-0.03)]
    public void TheInclineIsReckonedWith(double grade)
    {
        double along = Math.Sqrt(1 + (grade * grade));
        Close.To((50 * 3 / Weight * along) + grade, Friction(5, 2, grade).Value.Value, 1e-12);
    }

    [Fact]
    public void UphillALoadedCurrentBelowTheEmptyOneMayStillTellFriction() =>
        Assert.InRange(Friction(1.5, 2, 0.15).Value.Value, 0.1, 0.15);

    [Fact]
    public void OnTheLevelALoadedCurrentBelowTheEmptyOneContradicts() =>
        Assert.Equal(Reason.ReadingsContradict, Friction(1.5, 2, 0).Missing.Why);

    [Fact]
    public void MassAndSpeedMustBeAboveNothing()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            "mass",
            () =>
                DeckFriction.FromCurrent(
                    Mass.Zero,
                    Amperes(5),
                    Amperes(2),
                    Constant,
                    RotationalSpeed.FromRadiansPerSecond(300),
                    Speed.FromMetersPerSecond(3),
                    Ratio.Zero
                )
        );
        ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(
            "beltSpeed",
            () =>
                DeckFriction.FromCurrent(
                    Mass.FromKilograms(80),
                    Amperes(5),
                    Amperes(2),
                    Constant,
                    RotationalSpeed.FromRadiansPerSecond(300),
                    Speed.FromMetersPerSecond(-1),
                    Ratio.Zero
                )
        );
        Assert.Contains("-1 m/s is not above 0 m/s", error.Message, StringComparison.Ordinal);
    }

    internal static Answer<Estimate<double>> Friction(
        double loaded,
        double empty,
        double grade,
        double constant = 0.5,
        double constantSpread = 0.02
    ) =>
        DeckFriction.FromCurrent(
            Mass.FromKilograms(80),
            Amperes(loaded),
            Amperes(empty),
            new(Km(constant), Km(constantSpread)),
            RotationalSpeed.FromRadiansPerSecond(300),
            Speed.FromMetersPerSecond(3),
            Ratio.FromDecimalFractions(grade)
        );

    private static MotorConstant Km(double value) => MotorConstant.FromVoltSecondsPerRadian(value);

    private static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);
}
