using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Estimation;
using TreadmillMech.Tests.OperatingPoints;
using UnitsNet;

namespace TreadmillMech.Tests.Service.Checks;

public sealed class DriveBeltCheckTests
{
    private static readonly DriveBelt Equal = Belt(60, 60, 200);

    // Shigley's solutions, ch. 17: diameters 18 and 6 in, centres 96 in; here at 5 mm for each inch.
    [Fact]
    public void WrapsAndLengthAreThePrintedOnes()
    {
        DriveBeltGeometry geometry = DriveBeltGeometry.Of(Belt(30, 90, 480)).Value;
        Assert.Equal(3.016511, geometry.MotorPulleyWrap.Radians, tolerance: 5e-7);
        Assert.Equal(3.266674, geometry.RollerPulleyWrap.Radians, tolerance: 5e-7);
        Assert.Equal(5 * 230.074, geometry.LoopLength.Millimeters, tolerance: 5 * 0.0005);
        Assert.Equal(geometry.MotorPulleyWrap, geometry.SmallPulleyWrap);
        Assert.Equal(3, geometry.SpeedRatio, tolerance: 1e-12);
    }

    // The strand is the cathete of a triangle whose other one is the difference of the radii.
    [Fact]
    public void TheSpanIsACathete()
    {
        DriveBeltGeometry geometry = DriveBeltGeometry.Of(Belt(40, 100, 50 / 0.6 * 1.5)).Value;
        Assert.Equal(Math.Sqrt((125 * 125) - (30 * 30)), geometry.Span.Millimeters, tolerance: 1e-9);
    }

    [Fact]
    public void PulleysThatOverlapAreNamed() =>
        Assert.Equal(Reason.PartsOverlap, DriveBeltGeometry.Of(Belt(60, 100, 80)).Missing.Why);

    // Khurmi and Gupta, Ex. 11.12: initial tension 2000 N, mu 0.3, 150 deg, 10.472 m/s: 15.7 kW. A flat belt of that wrap.
    [Fact]
    public void FixedCentresHoldThePrintedPower()
    {
        double difference = 2 * 200 * Math.Sin(Math.PI / 12);
        DriveBelt belt = Belt(40, 40 + difference, 200) with
        {
            Tensioning = Tensioning.FixedCentres,
            Tension = Force.FromNewtons(2000),
            Friction = 0.3,
            GrooveAngle = Angle.FromDegrees(180),
        };
        TensioningGrip own = DriveBeltGrip.Of(belt, Speed.Zero).Value.Own;
        Assert.Equal(15.7, own.Driving.Newtons * 0.2 * 500 * 2 * Math.PI / 60 / 1000, tolerance: 0.05);
        Assert.Equal(own.Driving.Newtons, own.DrivingWorn.Newtons, tolerance: 1e-9);
    }

    // Hamrock, Machine Elements, Prob. 19.14: mu 0.2, half angle 18 deg: effective 0.647.
    [Fact]
    public void RibsWedgeAsPrinted()
    {
        DriveBelt belt = Equal with
        {
            Tension = Force.FromNewtons(200),
            Friction = 0.2,
            GrooveAngle = Angle.FromDegrees(36),
        };
        Bounds friction = DriveBeltGrip.Of(belt, Speed.Zero).Value.Friction;
        Assert.Equal(0.2, friction.From, tolerance: 1e-15);
        Assert.Equal(0.647, friction.To, tolerance: 0.0005);
    }

    [Fact]
    public void EveryKindStandsBesideTheOthersAndBrakingTurnsTheIdlersRound()
    {
        DriveBeltGrip grip = DriveBeltGrip.Of(Example.Machine.DriveBelt!, Speed.FromMetersPerSecond(5)).Value;
        Assert.Equal(6, grip.Kinds.Length);
        double ratio = grip.TensionRatio.To;
        TensioningGrip slack = grip.Kinds.Single(k => k.Tensioning == Tensioning.SlackSideIdler);
        TensioningGrip tight = grip.Kinds.Single(k => k.Tensioning == Tensioning.TightSideIdler);
        TensioningGrip fixedCentres = grip.Kinds.Single(k => k.Tensioning == Tensioning.FixedCentres);
        Assert.Equal(slack.Driving.Newtons / ratio, slack.Braking.Newtons, tolerance: 1e-9);
        Assert.Equal(tight.Braking.Newtons / ratio, tight.Driving.Newtons, tolerance: 1e-9);
        Assert.Equal(fixedCentres.Driving, fixedCentres.Braking);
        Assert.True(slack.Driving > fixedCentres.Driving && fixedCentres.Driving > tight.Driving);
        Assert.All(grip.Kinds, k => Assert.True(k.DrivingWorn < k.Driving && k.BrakingWorn < k.Braking));

        // Only a spring makes up for the centrifugal part: 0.04 kg/m at 5 m/s, 1 N of 250.
        TensioningGrip sprung = grip.Kinds.Single(k => k.Tensioning == Tensioning.SprungMotor);
        Assert.Equal(249.0 / 250, fixedCentres.Driving / sprung.Driving, tolerance: 1e-12);
    }

    // The operating point's margin is this grip over the largest circumferential force, peak pull times both radii's ratio.
    [Theory]
    [InlineData(Tensioning.SlidingMotor)]
    [InlineData(Tensioning.SprungMotor)]
    [InlineData(Tensioning.SlackSideIdler)]
    [InlineData(Tensioning.TightSideIdler)]
    public void TheGripIsThatOfTheOperatingPoint(Tensioning tensioning)
    {
        DriveBelt belt = Example.Machine.DriveBelt! with { Tensioning = tensioning };
        OperatingPoint point = (Example.Machine with { DriveBelt = belt }).At(Example.Runner);
        double beltSpeed = 3 * 0.05 / 0.026;
        DriveBeltGrip grip = DriveBeltGrip.Of(belt, Speed.FromMetersPerSecond(beltSpeed)).Value;
        double forwards = point.PeakPull.Value.Newtons * 0.026 / 0.05;
        double backwards = Math.Max(0, -point.LeastPull.Value.Newtons) * 0.026 / 0.05;
        double margin = Math.Min(
            grip.Own.Driving.Newtons / forwards,
            backwards > 0 ? grip.Own.Braking.Newtons / backwards : double.PositiveInfinity
        );
        Assert.Equal(margin, point.DriveBeltMargin.Value, tolerance: 1e-6 * margin);
    }

    [Fact]
    public void UnknownsAndALooseBeltAreNamed()
    {
        DriveBelt known = Example.Machine.DriveBelt!;
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DriveBeltTension"),
            DriveBeltGrip.Of(known with { Tension = null }, Speed.Zero).Missing
        );
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "DriveBeltFriction"),
            DriveBeltGrip.Of(known with { Friction = null }, Speed.Zero).Missing
        );
        Shortfall loose = DriveBeltGrip
            .Of(known with { Tension = Force.FromNewtons(30) }, Speed.FromMetersPerSecond(30))
            .Missing;
        Assert.Equal(Reason.SlackBelt, loose.Why);
        Assert.Equal(36, loose.Needed, tolerance: 1e-9);
    }

    // By hand: 40 kN stretched by 1.5 %; half a turn shares a force between two strands; three equal forces at 120 degrees;
    // 1 mm between equal pulleys lengthens 2 (200) + 60 pi mm by 2 mm.
    [Fact]
    public void TensionsByHand()
    {
        double loop = 400 + (60 * Math.PI);
        Force stiffness = Force.FromNewtons(40e3);
        Assert.Equal(
            600,
            DriveBeltTension.OfStretchFit(Equal, stiffness, Length.FromMillimeters(loop / 1.015)).Value.Newtons,
            tolerance: 1e-9
        );
        Assert.Equal(250, DriveBeltTension.OfMotorForce(Equal, Force.FromNewtons(500)).Value.Newtons, tolerance: 1e-9);
        Assert.Equal(
            500,
            DriveBeltTension.OfIdler(Force.FromNewtons(500), Angle.FromDegrees(60)).Newtons,
            tolerance: 1e-9
        );
        Assert.Equal(
            40e3 * 2 / loop,
            DriveBeltTension.GainOfSlide(Equal, stiffness, Length.FromMillimeters(1)).Value.Newtons,
            tolerance: 1e-9
        );
    }

    [Fact]
    public void ABeltThatIsNotStretchedHasNoTension() =>
        Assert.Equal(
            Reason.SlackBelt,
            DriveBeltTension.OfStretchFit(Equal, Force.FromNewtons(40e3), Length.FromMeters(0.6)).Missing.Why
        );

    [Fact]
    public void ArgumentsOutsideTheirRangeAreNamed()
    {
        ArgumentOutOfRangeException stiffness = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            DriveBeltTension.GainOfSlide(Equal, Force.FromNewtons(10), Length.Zero)
        );
        Assert.Contains("stiffness: 10 N is outside", stiffness.Message, StringComparison.Ordinal);
        ArgumentOutOfRangeException speed = Assert.ThrowsAny<ArgumentOutOfRangeException>(() =>
            DriveBeltGrip.Of(Equal, Speed.FromMetersPerSecond(-1))
        );
        Assert.Contains("beltSpeed: -1 m/s is outside 0 m/s to 60 m/s", speed.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => DriveBeltGeometry.Of(null!));
    }

    // By hand: effective 30 and 90 mm; a PK cord runs 2 mm outside: 94/34, and 3 is too large by 3/(94/34) - 1.
    [Fact]
    public void EffectiveDiametersTellTooLargeARatio()
    {
        SpeedRatioCheck check = SpeedRatioCheck.Of(Mm(30, 0.1), Mm(90, 0.2), RibSection.PK);
        Assert.Equal(3, check.Ratio.Value, tolerance: 1e-12);
        Assert.Equal(94.0 / 34, check.PitchRatio.Value.Value, tolerance: 1e-12);
        Assert.Equal((3 * 34.0 / 94) - 1, check.ErrorOfEffective.Value.DecimalFractions, tolerance: 1e-12);

        // A quotient's relative uncertainty is the root of both squares.
        double relative = Math.Sqrt(Math.Pow(0.1 / 30, 2) + Math.Pow(0.2 / 90, 2));
        Assert.Equal(3 * relative, check.Ratio.StandardUncertainty, tolerance: 1e-12);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "Section"),
            SpeedRatioCheck.Of(Mm(30, 0), Mm(90, 0)).PitchRatio.Missing
        );
    }

    // By hand: 1/90 - 1/30 for a millimetre on both.
    [Fact]
    public void ALengthOnBothDiametersIsAnErrorOfTheRatio() =>
        Assert.Equal(
            -1.0 / 45,
            SpeedRatioCheck
                .ErrorOf(Length.FromMillimeters(30), Length.FromMillimeters(90), Length.FromMillimeters(1))
                .DecimalFractions,
            tolerance: 1e-12
        );

    // Pitches of ISO 9982, from memory: 1.60, 2.34, 3.56, 4.70, 9.40 mm.
    [Theory]
    [InlineData(RibSection.PH, 10, 16.0)]
    [InlineData(RibSection.PJ, 8, 18.72)]
    [InlineData(RibSection.PK, 6, 21.36)]
    [InlineData(RibSection.PL, 4, 18.8)]
    [InlineData(RibSection.PM, 2, 18.8)]
    public void WidthTellsTheSectionAndTheSectionTheWidth(RibSection section, int ribs, double millimeters)
    {
        Assert.Equal(millimeters, RibSections.Width(section, ribs).Millimeters, tolerance: 1e-9);
        Assert.Equal(section, RibSections.Of(Length.FromMillimeters(millimeters * 1.02), ribs).Value);
        DriveBelt belt = Equal with { Section = section, Ribs = ribs };
        Assert.Equal(millimeters, belt.Width.Value.Millimeters, tolerance: 1e-9);
    }

    [Fact]
    public void ARibMiscountedOnANarrowBeltIsNoticed()
    {
        Assert.Equal(Reason.NotInRange, RibSections.Of(Length.FromMillimeters(21.36), 5).Missing.Why);
        Assert.Equal(new Shortfall(Reason.InputUnknown, "Section"), Equal.Width.Missing);
        Assert.Equal(
            new Shortfall(Reason.InputUnknown, "Ribs"),
            (Equal with { Section = RibSection.PJ }).Width.Missing
        );
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => RibSections.Pitch((RibSection)9));
        Assert.ThrowsAny<ArgumentOutOfRangeException>(() => Equal with { Section = (RibSection)9 });
    }

    private static Estimate<Length> Mm(double value, double uncertainty) =>
        new(Length.FromMillimeters(value), Length.FromMillimeters(uncertainty));

    private static DriveBelt Belt(double motor, double roller, double centres) =>
        new()
        {
            Tensioning = Tensioning.SlidingMotor,
            MotorPulleyDiameter = Length.FromMillimeters(motor),
            RollerPulleyDiameter = Length.FromMillimeters(roller),
            CentreDistance = Length.FromMillimeters(centres),
        };
}
