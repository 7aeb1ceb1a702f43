using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class ScrewCheckTests
{
    private const double PoundForce = 4.4482216152605;
    private const double Inch = 0.0254;
    private static readonly ScrewThread M8 = ScrewThread.Parse("M8x1.25");
    private static readonly double Pitch = 8 - (3 * Math.Sqrt(3) / 8 * 1.25);

    // Shigley's Mechanical Engineering Design, 9th ed., Ex. 8-3: 3551 lbf in, with a mean diameter rounded to 0.7093 in.
    [Fact]
    public void TheTorqueOfShigleysBoltIsPrinted()
    {
        Collar collar = new() { MeanDiameter = Length.FromInches(1.25 * 0.75), Friction = 0.15 };
        ScrewCheck check = ScrewCheck.Of(
            ScrewThread.Parse("3/4-16 UNF"),
            Force.FromNewtons(25000 * PoundForce),
            0.15,
            null,
            collar
        );
        Assert.Equal(3551, check.TighteningTorque.Value.NewtonMeters / (PoundForce * Inch), tolerance: 1);
        Assert.Equal(3551 / (25000 * 0.75), check.EffectiveNutFactor.Value, tolerance: 1e-4);
    }

    // ISO 898-1, class 8.8, printed to three figures: M8 read there, the others from memory.
    [Theory]
    [InlineData("M8x1.25", 21200)]
    [InlineData("M10x1.5", 33700)]
    [InlineData("M12x1.75", 48900)]
    public void TheProofLoadIsPrinted(string thread, double newtons)
    {
        ScrewCheck check = ScrewCheck.Of(
            ScrewThread.Parse(thread),
            Force.FromNewtons(1000),
            boltClass: BoltClass.Class8P8
        );
        Assert.Equal(newtons, check.ProofLoad.Value.Newtons, tolerance: 0.003 * newtons);
        Assert.Equal(1000 / newtons, check.ProofShare.Value, tolerance: 0.003 * 1000 / newtons);
    }

    // Shigley, table 8-2: 3/8-16 has 0.0775 square inches.
    [Fact]
    public void AUnifiedThreadHasItsOwnStressArea()
    {
        ScrewCheck check = ScrewCheck.Of(ScrewThread.Parse("3/8-16 UNC"), Force.FromNewtons(1000 * PoundForce));
        double psi = check.AxialStress.Value.Pascals * Inch * Inch / PoundForce;
        Assert.Equal(1000 / 0.0775, psi, tolerance: 1000 / 0.0775 * 0.00005 / 0.0775);
    }

    // The textbook's other form, by lead angle and angle of friction.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.15)]
    [InlineData(0.3)]
    public void TheEfficiencyIsThatOfTheInclinedPlane(double friction)
    {
        double slope = Math.Atan(1.25 / (Math.PI * Pitch));
        double rubbing = Math.Atan(friction / Math.Cos(Math.PI / 6));
        ScrewCheck check = ScrewCheck.Of(M8, Force.FromNewtons(1000), friction);
        Assert.Equal(
            Math.Tan(slope) / Math.Tan(slope + rubbing),
            check.Efficiency.Value.DecimalFractions,
            tolerance: 1e-9
        );
        Assert.Equal(
            1000 * Pitch / 2000 * Math.Tan(rubbing - slope),
            check.LooseningTorque.Value.NewtonMeters,
            tolerance: 1e-9
        );
        Assert.Equal(Math.Tan(rubbing) / Math.Tan(slope), check.LockingRatio.Value, tolerance: 1e-9);
    }

    [Fact]
    public void ASlipperyThreadTurnsByItselfUnlessACollarHoldsIt()
    {
        ScrewCheck bare = ScrewCheck.Of(M8, Force.FromNewtons(1000), 0.02);
        Assert.True(bare.LockingRatio.Value < 1);
        Assert.True(bare.LooseningTorque.Value.NewtonMeters < 0);
        Collar collar = new() { MeanDiameter = Length.FromMillimeters(11), Friction = 0.15 };
        ScrewCheck held = ScrewCheck.Of(M8, Force.FromNewtons(1000), 0.02, collar: collar);
        double face = 1000 * 0.15 * 0.011 / 2;
        Assert.Equal(
            bare.LooseningTorque.Value.NewtonMeters + face,
            held.LooseningTorque.Value.NewtonMeters,
            tolerance: 1e-12
        );
        Assert.True(held.LooseningTorque.Value.NewtonMeters > 0);
        Assert.Equal(bare.LockingRatio, held.LockingRatio);
    }

    // Pull and torsion by hand, on a rod whose area is that of ISO 898-1: the mean of pitch and root diameter.
    [Fact]
    public void TheCollarsTorqueDoesNotTwistTheBolt()
    {
        double rod = 8 - (0.5 * ((3 * Math.Sqrt(3) / 8) + (17 * Math.Sqrt(3) / 24)) * 1.25);
        ScrewCheck bare = ScrewCheck.Of(M8, Force.FromNewtons(5000), boltClass: BoltClass.Class8P8);
        double pull = 5000 / (Math.PI / 4 * rod * rod);
        double shear = 16000 * bare.TighteningTorque.Value.NewtonMeters / (Math.PI * rod * rod * rod);
        double expected = Math.Sqrt((pull * pull) + (3 * shear * shear));
        Assert.Equal(expected, bare.StressWhileTightening.Value.Megapascals, tolerance: 1e-4 * expected);
        Assert.Equal(expected / 580, bare.ProofShareWhileTightening.Value, tolerance: 1e-4 * expected / 580);
        Collar collar = new() { MeanDiameter = Length.FromMillimeters(11), Friction = 0.15 };
        Assert.Equal(
            bare.StressWhileTightening,
            ScrewCheck.Of(M8, Force.FromNewtons(5000), collar: collar).StressWhileTightening
        );
    }

    [Fact]
    public void ABoltWithoutAStampHasNoProofShare()
    {
        ScrewCheck check = ScrewCheck.Of(M8, Force.FromNewtons(1000));
        Shortfall unknown = new(Reason.InputUnknown, "BoltClass");
        Assert.Equal(unknown, check.ProofLoad.Missing);
        Assert.Equal(unknown, check.ProofShare.Missing);
        Assert.Equal(unknown, check.ProofShareWhileTightening.Missing);
    }

    [Fact]
    public void TwiceTheForceNeedsTwiceTheTorqueAtOneEfficiency()
    {
        ScrewCheck once = ScrewCheck.Of(M8, Force.FromNewtons(1000));
        ScrewCheck twice = ScrewCheck.Of(M8, Force.FromKilonewtons(2));
        Assert.Equal(
            2 * once.TighteningTorque.Value.NewtonMeters,
            twice.TighteningTorque.Value.NewtonMeters,
            tolerance: 1e-12
        );
        Assert.Equal(once.Efficiency.Value.DecimalFractions, twice.Efficiency.Value.DecimalFractions, tolerance: 1e-12);
    }

    [Fact]
    public void BadInputIsRefusedByName()
    {
        Assert.Throws<OutOfRangeException>("axialForce", () => ScrewCheck.Of(M8, Force.Zero));
        Assert.Throws<OutOfRangeException>("friction", () => ScrewCheck.Of(M8, Force.FromNewtons(10), 0.7));
        Assert.Throws<ArgumentOutOfRangeException>(
            "boltClass",
            () => ScrewCheck.Of(M8, Force.FromNewtons(10), boltClass: (BoltClass)99)
        );
        Assert.Throws<ArgumentNullException>("thread", () => ScrewCheck.Of(null!, Force.FromNewtons(10)));
    }
}
