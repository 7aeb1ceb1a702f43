using FsCheck.Xunit;
using TreadmillMech.Laws;

namespace TreadmillMech.Tests.Laws;

[Properties(Arbitrary = [typeof(Fraction)])]
public sealed class BeltLawsPropertyTests
{
    [Property]
    public void OnARigidFrameTheGainIsThatOfTheStrain(Fraction stiffness, Fraction lengthening, Fraction length)
    {
        double ea = stiffness.Between(5e4, 1e6);
        double dl = lengthening.Between(0, 0.05);
        double l = length.Between(2, 4);
        Close.To(
            BeltLaws.StrandTension<Real>(ea, dl / l),
            BeltLaws.TensionGain<Real>(ea, dl, l, BeltLaws.CompliantLength<Real>(ea, 0))
        );
    }

    // Series of springs: what the belt stretches and what two hubs give up is what the bolts took up.
    [Property]
    public void BoltTravelIsSharedByBeltAndHubs(Fraction stiffness, Fraction lengthening, Fraction drive, Fraction tail)
    {
        double ea = stiffness.Between(5e4, 1e6);
        double dl = lengthening.Between(1e-4, 0.05);
        double driveHub = drive.Between(0, 1e-6);
        double tailHub = tail.Between(0, 1e-6);
        double d = BeltLaws.CompliantLength<Real>(ea, driveHub) + BeltLaws.CompliantLength<Real>(ea, tailHub);
        double gain = BeltLaws.TensionGain<Real>(ea, dl, 2.85, d);
        double stretch = gain * 2.85 / ea;
        double given = 2 * (2 * gain) * (driveHub + tailHub);
        Close.To(dl, stretch + given);
    }

    [Property]
    public void ASoftFrameTakesItAll(Fraction lengthening) =>
        Close.Within(0, BeltLaws.TensionGain<Real>(3.6e5, lengthening.Between(0, 0.05), 2.85, 1e15), 1e-10);

    [Property]
    public void WidthAndLengthShareAsSpringsDo(Fraction width, Fraction forcePerWidth)
    {
        // Two belts side by side pull as one of both widths.
        double k = forcePerWidth.Between(2e3, 2e4);
        double b = width.Between(0.1, 0.7);
        Close.To(
            BeltLaws.Stiffness<Real>(k, b) + BeltLaws.Stiffness<Real>(k, 0.2),
            BeltLaws.Stiffness<Real>(k, b + 0.2)
        );
    }

    // A belt at the speed of its own waves, sqrt(T/m), presses on nothing.
    [Property]
    public void AtTheSpeedOfItsWavesABeltLiftsOff(Fraction mass, Fraction tension)
    {
        double m = mass.Between(0.1, 2);
        double t = tension.Between(100, 3000);
        Close.To(t, BeltLaws.CentrifugalTension<Real>(m, Math.Sqrt(t / m)));
    }
}
