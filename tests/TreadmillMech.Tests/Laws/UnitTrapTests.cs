using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

/// <summary>Numbers that go wrong by a factor when a millimetre, a per cent or a side is mixed up.</summary>
public sealed class UnitTrapTests
{
    private const double Lead = 1.25e-3;
    private const double Length = 2.85;

    [Fact]
    public void AQuarterTurnOfBothBoltsIsTwentyTwoThousandthsOfAPerCent()
    {
        double strain = Strain(0.25);
        Close.To(1.0 / 4560, strain);
        Assert.Equal(0.022, 100 * strain, 0.0005);
    }

    [Fact]
    public void OneBoltAloneGivesHalfTheStrain()
    {
        double change = TakeUpLaws.CentreDistanceChange<Real>(ScrewThreadLaws.Travel<Real>(Lead, 0.25), 0, 0);
        Close.To(1.0 / 9120, TakeUpLaws.Elongation<Real>(change, 0, Length));
    }

    [Fact]
    public void TwoMoreTurnsAreSeveralHundredNewtons()
    {
        // 2 x 1.25 mm of centre distance, twice that of loop, on 2850 mm: 1/570 of 8 N/mm x 450 mm x 100.
        double stiffness = BeltLaws.Stiffness<Real>(8e3, 0.45);
        Close.To(360_000.0 / 570, BeltLaws.StrandTension<Real>(stiffness, Strain(2)));
    }

    [Fact]
    public void AStrandIsHalfOfTheShaftLoad()
    {
        double strand = BeltLaws.StrandTension<Real>(BeltLaws.Stiffness<Real>(8e3, 0.45), 0.003);
        Close.To(1080, strand);
        Close.To(2160, HubLaws.HubLoad<Real>(strand, strand, Math.PI));
    }

    [Fact]
    public void DiametersAreNotRadii()
    {
        double angle = LoopLaws.StrandAngle<Real>(0.025, 0.0225, 1.35);
        Assert.Equal(2849.230, 1000 * LoopLaws.Length<Real>(0.025, 0.0225, 1.35), 0.0005);
        Assert.Equal(1.999997, LoopLaws.LengthSlope<Real>(angle), 5e-7);
    }

    [Fact]
    public void TheTextbookOverstatesTheHoldingPullByAThird()
    {
        double textbook = 2 * 1000 * (2.57 - 1) / (2.57 + 1);
        double ratio = textbook / TractionLaws.HoldingPull<Real>(1000, 2.57, 0.13);
        Close.To(2 * ((2.57 * 0.87) + 0.13) / 3.57, ratio);
        Assert.Equal(1.33, ratio, 0.005);
    }

    [Fact]
    public void LubricantOnTheRollerTakesTwoFifthsOfTheHoldingPull()
    {
        Assert.Equal(0.66, Pull(0.30), 0.005);
        Assert.Equal(0.40, Pull(0.15), 0.005);

        static double Pull(double friction) =>
            TractionLaws.HoldingPull<Real>(1, TractionLaws.TensionRatio<Real>(friction, Math.PI), 0.13);
    }

    [Fact]
    public void KilometresPerHourAreNotMetresPerSecond() =>
        Assert.Equal(435.9, DeckLaws.FrictionPower<Real>(0.2, 80 * 9.80665, 10 / 3.6), 0.05);

    private static double Strain(double turns)
    {
        double travel = ScrewThreadLaws.Travel<Real>(Lead, turns);
        return TakeUpLaws.Elongation<Real>(TakeUpLaws.CentreDistanceChange<Real>(travel, travel, 0), 0, Length);
    }
}
