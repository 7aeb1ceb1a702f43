namespace TreadmillMech.Tests.Laws;

/// <summary>
/// The domain of every law. Ranges stay clear of the corners where a law changes its formula; those have tests of
/// their own.
/// </summary>
internal static class LawDomains
{
    internal static readonly IReadOnlyDictionary<string, LawDomain> All = new[]
    {
        Belt(),
        Motor(),
        DeckAndSupply(),
        Person(),
        Geometry(),
        Grip(),
        Transient(),
    }
        .SelectMany(table => table)
        .ToDictionary(StringComparer.Ordinal);

    private static Argument Up(double from, double to) => new(from, to, Trend.Rises);

    private static Argument Down(double from, double to) => new(from, to, Trend.Falls);

    private static Argument Any(double from, double to) => new(from, to, Trend.Either);

    private static LawDomain Positive(params Argument[] arguments) => new(Sign.Positive, arguments);

    private static LawDomain Negative(params Argument[] arguments) => new(Sign.Negative, arguments);

    private static LawDomain Signed(params Argument[] arguments) => new(Sign.Either, arguments);

    private static Dictionary<string, LawDomain> Belt() =>
        new(StringComparer.Ordinal)
        {
            ["BeltLaws.Stiffness"] = Positive(Up(2e3, 2e4), Up(0.3, 0.7)),
            ["BeltLaws.StrandTension"] = Positive(Up(5e4, 1e6), Up(5e-4, 0.02)),
            ["BeltLaws.CompliantLength"] = Positive(Up(5e4, 1e6), Up(1e-8, 1e-6)),
            ["BeltLaws.TensionGain"] = Positive(Up(5e4, 1e6), Up(1e-4, 0.02), Down(2, 4), Down(0, 2)),
            ["BeltLaws.SpringLoss"] = Positive(Down(2, 4), Up(0.01, 2)),
            ["BeltLaws.ForcePerWidth"] = Positive(Up(2e3, 2e4), Up(5e-4, 0.02)),
            ["BeltLaws.CentrifugalTension"] = Positive(Up(0.1, 2), Up(0.2, 7)),
            ["LiftLaws.SpanLengthening"] = Positive(Up(0.002, 0.08), Down(0.8, 2)),
            ["LiftLaws.LiftForce"] = Positive(
                Up(200, 3000),
                Up(5e4, 1e6),
                Up(0.002, 0.08),
                Any(0.8, 2),
                Down(2, 5),
                Up(0, 20)
            ),
            ["SpanLaws.TensionFromFrequency"] = Positive(Up(0.01, 0.2), Up(0.1, 1), Up(20, 200)),
            ["SpanLaws.Frequency"] = Positive(Down(0.01, 0.2), Down(0.1, 1), Up(50, 1000)),
            ["SpanLaws.TensionFromDeflection"] = Positive(Up(5, 200), Down(0.002, 0.02), Up(0.1, 1)),
            ["SpanLaws.StiffTensionFromFrequency"] = Positive(Up(0.05, 0.2), Up(0.2, 1), Up(50, 200), Down(1e-4, 0.01)),
            ["SpanLaws.StiffTensionFromDeflection"] = Positive(
                Up(20, 200),
                Down(0.002, 0.01),
                Up(0.2, 1),
                Down(1e-4, 0.01)
            ),
            ["BeltLifeLaws.RelaxedTension"] = Positive(Up(200, 3000), Down(0.01, 0.1), Down(0.5, 6)),
            ["BeltLifeLaws.WarmTension"] = Positive(
                Up(200, 3000),
                Down(5e4, 3e5),
                Down(1e-6, 1e-5),
                Down(1e-4, 5e-3),
                Down(1, 40)
            ),
            ["BeltLifeLaws.Creep"] = Positive(Up(300, 3000), Down(0, 200), Down(5e4, 1e6)),
            ["BeltLifeLaws.BendingStrain"] = Positive(Up(0.001, 0.004), Down(0.03, 0.1)),
            ["BeltLifeLaws.MarkElongation"] = Positive(Up(1.001, 1.02), Down(0.98, 1)),
            ["BeltLifeLaws.Decades"] = Positive(Down(60, 600), Up(1e6, 1e7)),
            ["BeltLifeLaws.LeastRollerDiameter"] = Positive(Up(0.001, 0.004), Down(0.01, 0.1)),
            ["BeltLifeLaws.DeckEdgeAngle"] = Positive(Up(0.001, 0.02), Down(0.03, 0.2)),
            ["BeltLifeLaws.DeckEdgeForce"] = Positive(Up(200, 3000), Up(0.01, 0.1), Up(0.01, 0.1)),
            ["HubLaws.NearBearingLoad"] = Positive(Up(100, 3000), Up(0.01, 0.08), Down(0.06, 0.3)),
            ["HubLaws.FarBearingLoad"] = Positive(Up(100, 3000), Up(0.01, 0.08), Down(0.06, 0.3)),
            ["HubLaws.HubLoad"] = Positive(Up(100, 3000), Up(100, 3000), Up(2, 3.1)),
        };

    private static Dictionary<string, LawDomain> Motor() =>
        new(StringComparer.Ordinal)
        {
            ["DcMotorLaws.Voltage"] = Positive(Up(0.1, 1), Up(10, 500), Up(0.5, 30), Up(0.1, 5), Up(0, 3)),
            ["DcMotorLaws.Speed"] = Positive(Down(0.1, 1), Up(60, 200), Down(0.5, 10), Down(0.1, 2), Down(0, 3)),
            ["DcMotorLaws.Current"] = Positive(Up(0, 10), Up(0.01, 1), Down(0.1, 1)),
            ["DcMotorLaws.RmsCurrent"] = Positive(Up(0.5, 10), Up(0.005, 0.05), Down(10, 100), Up(2e4, 1e5)),
            ["DcMotorLaws.CopperResistance"] = Positive(Up(0.1, 5), Down(-10, 60), Up(-10, 150)),
            ["DcMotorLaws.ConstantFromTwoPoints"] = Positive(
                Down(5, 20),
                Up(60, 120),
                Up(10, 50),
                Down(150, 400),
                Up(0.5, 1.5),
                Down(0.5, 2),
                Any(0.1, 2)
            ),
            ["DcMotorLaws.WarmConstant"] = Positive(Up(0.1, 1), Down(5e-4, 3e-3), Down(10, 80)),
            ["DcMotorLaws.CopperLoss"] = Positive(Up(0.5, 20), Up(0.1, 3)),
            ["DcMotorLaws.DutyRatio"] = Positive(Up(10, 200), Down(150, 350)),
            ["DcMotorLaws.Torque"] = Positive(Up(1, 20), Down(0, 0.09), Up(0.1, 1)),
            ["DcMotorLaws.TerminalPower"] = Positive(Up(10, 200), Up(0.5, 30)),
            ["DcMotorLaws.ShaftPower"] = Positive(Up(0.1, 10), Up(10, 500)),
            ["InductionMotorLaws.SynchronousSpeed"] = Positive(Up(50, 700), Down(1, 4)),
            ["InductionMotorLaws.ShaftSpeed"] = Positive(Up(50, 400), Down(0.005, 0.1)),
            ["InductionMotorLaws.FieldResistance"] = Positive(Any(0.1, 2), Down(0.1, 3), Up(10, 60), Any(0.01, 0.1)),
            ["InductionMotorLaws.FieldReactance"] = Positive(Up(0.1, 2), Any(0.1, 3), Any(10, 60), Down(0.01, 0.1)),
            ["InductionMotorLaws.StatorCurrent"] = Positive(
                Up(50, 300),
                Down(0.1, 2),
                Down(0.1, 3),
                Down(5, 30),
                Down(3, 20)
            ),
            ["InductionMotorLaws.PowerFactor"] = Positive(Up(0.1, 2), Down(0.1, 3), Up(5, 30), Down(3, 20)),
            ["InductionMotorLaws.AirGapPower"] = Positive(Up(0.5, 20), Up(5, 30)),
            ["InductionMotorLaws.Torque"] = Positive(Up(100, 3000), Down(50, 400)),
            ["InductionMotorLaws.EquivalentVoltage"] = Positive(Up(50, 300), Down(0.1, 2), Down(0.1, 3), Up(10, 60)),
            ["InductionMotorLaws.EquivalentResistance"] = Positive(Up(0.1, 2), Down(0.1, 3), Up(10, 60)),
            ["InductionMotorLaws.EquivalentReactance"] = Positive(Up(0.1, 2), Up(0.1, 3), Any(10, 60)),
            ["InductionMotorLaws.BreakdownSlip"] = Positive(Down(0.1, 2), Down(0.1, 3), Up(0.1, 2), Down(0.1, 3)),
            ["InductionMotorLaws.BreakdownTorque"] = Positive(
                Up(50, 300),
                Down(0.1, 2),
                Down(0.1, 3),
                Down(0.1, 3),
                Down(50, 400)
            ),
            ["InductionMotorLaws.ShaftTorque"] = Positive(Up(5, 50), Down(5, 100), Up(50, 400)),
            ["ThermalLaws.RiseAfter"] = Positive(Up(20, 100), Up(0, 15), Up(60, 7200), Down(600, 7200)),
            ["ThermalLaws.ShortTimeFactor"] = Positive(Down(600, 7200), Up(600, 7200)),
            ["ThermalLaws.DutyCycleRise"] = Positive(
                Up(20, 100),
                Up(300, 3600),
                Down(300, 3600),
                Down(900, 7200),
                Up(900, 7200)
            ),
            ["ThermalLaws.FanConductance"] = Positive(Up(0.2, 2), Up(0.2, 3), Up(0.1, 1.5)),
            ["ThermalLaws.RunawayRatio"] = Positive(Up(5, 50), Up(0.0035, 0.0045), Down(1, 5)),
            ["ThermalLaws.CopperRise"] = Positive(Up(5, 50), Up(0.0035, 0.0045), Down(1, 5)),
            ["ThermalLaws.CopperCoefficient"] = Positive(Down(-10, 100)),
            ["ThermalLaws.CopperTimeToRise"] = Positive(Up(20, 100), Down(120, 300), Down(0.1, 0.9), Up(600, 7200)),
            ["ThermalLaws.CopperTemperature"] = Positive(Down(0.5, 1), Up(1.2, 2), Up(10, 40)),
            ["ThermalLaws.Conductance"] = Positive(Up(5, 200), Down(10, 120)),
            ["ThermalLaws.TimeToRise"] = Positive(Down(80, 120), Down(0, 20), Up(30, 70), Up(600, 7200)),
            ["ThermalLaws.LossRatio"] = Positive(Up(1.05, 3), Down(0, 2)),
            ["ThermalLaws.ShortTimeLoad"] = Positive(Down(600, 7200), Up(600, 7200), Up(0, 2)),
            ["ThermalLaws.FinalRiseOfTwo"] = Positive(Down(25, 30), Up(31, 49)),
            ["ThermalLaws.TimeConstantOfTwo"] = Positive(Down(25, 30), Up(31, 49), Up(600, 7200)),
        };

    private static Dictionary<string, LawDomain> DeckAndSupply() =>
        new(StringComparer.Ordinal)
        {
            ["DeckLaws.FrictionForce"] = Positive(Up(0.05, 0.5), Up(100, 3000)),
            ["DeckLaws.FrictionPower"] = Positive(Up(0.05, 0.5), Up(100, 3000), Up(0.2, 6)),
            ["DeckLaws.FrictionFromPull"] = Positive(Up(20, 300), Down(40, 200), Up(0, 0.15)),
            ["DeckLaws.PullFromPower"] = Positive(Up(20, 1000), Up(0.3, 0.9), Down(0.3, 6)),
            ["DeckLaws.PullFromCurrent"] = Positive(Up(0.2, 20), Up(0.1, 1), Up(10, 500), Down(0.3, 6)),
            ["DeckLaws.LubricantVolume"] = Positive(Up(0.1, 1), Up(1e-6, 1e-4)),
            ["SupplyLaws.MainsPower"] = Positive(Up(10, 3000), Down(0.5, 0.99), Up(0, 50)),
            ["SupplyLaws.MainsCurrent"] = Positive(Up(10, 3000), Down(90, 250), Down(0.4, 1)),
            ["SupplyLaws.RmsOfTwo"] = Positive(Up(0.5, 3), Any(0.1, 0.9), Up(0.5, 3)),
            ["SupplyLaws.RmsOfRamp"] = Positive(Up(0.1, 3), Up(0.1, 3)),
            ["SupplyLaws.LastingCurrent"] = Positive(Up(5, 30)),
            ["DeckWearLaws.StribeckFriction"] = Positive(Up(0.05, 0.2), Up(0.25, 0.5), Down(0.01, 0.3), Up(0.1, 0.5)),
            ["DeckWearLaws.WornVolume"] = Positive(Up(1e-8, 1e-5), Up(100, 3000), Up(1e3, 1e6), Down(5e7, 5e8)),
            ["DeckWearLaws.WornDepth"] = Positive(Up(1e-9, 1e-6), Down(0.1, 2)),
            ["DeckWearLaws.FrictionWorkPerArea"] = Positive(Up(0.05, 0.5), Up(100, 3000), Up(1e3, 1e6), Down(0.1, 2)),
            ["DeckWearLaws.FinalRise"] = Positive(Up(20, 600), Down(1, 20)),
            ["DeckWearLaws.MidSpanDeflection"] = Positive(
                Up(300, 3000),
                Up(0.3, 1),
                Down(2e9, 1e10),
                Down(5e-8, 3e-7),
                Down(5e4, 5e5)
            ),
            ["DeckWearLaws.RectangleSecondMoment"] = Positive(Up(0.3, 1), Up(0.01, 0.04)),
            ["DeckWearLaws.Travel"] = Positive(Up(0.2, 7), Up(600, 1e6)),
            ["DeckWearLaws.DropForce"] = Positive(Up(40, 200), Up(0.01, 0.5), Up(1e4, 3e5)),
            ["DeckWearLaws.StopForce"] = Positive(Up(40, 200), Up(0.2, 6), Up(5e3, 1e5)),
            ["BearingLaws.BallLife"] = Positive(Up(5e3, 2e4), Down(500, 3000)),
            ["BearingLaws.RollerLife"] = Positive(Up(5e3, 2e4), Down(500, 3000)),
            ["BearingLaws.BallLifeRatio"] = Positive(Down(500, 3000), Up(500, 3000)),
            ["BearingLaws.RollerLifeRatio"] = Positive(Down(500, 3000), Up(500, 3000)),
            ["BearingLaws.SpectrumLoad"] = Positive(Up(200, 3000), Any(0.1, 0.9), Up(200, 3000)),
            ["BearingLaws.RollerSpectrumLoad"] = Positive(Up(200, 3000), Any(0.1, 0.9), Up(200, 3000)),
            ["BearingLaws.LifeTime"] = Positive(Up(1e6, 1e9), Down(30, 300)),
            ["MeasurementLaws.SpeedFromPasses"] = Positive(Up(2, 4), Up(5, 50), Down(10, 120)),
            ["MeasurementLaws.SpeedFromRoller"] = Positive(Up(10, 300), Up(0.03, 0.1), Up(0.001, 0.004)),
            ["MeasurementLaws.RollerSpeed"] = Positive(Up(0.2, 7), Down(0.03, 0.1), Down(0.001, 0.004)),
            ["MeasurementLaws.DisplayError"] = Positive(Up(2.1, 3), Down(1, 2)),
            ["MeasurementLaws.Grade"] = Positive(Up(0.02, 0.2), Down(0.8, 1.5), Up(-0.01, 0.02)),
            ["MeasurementLaws.Slip"] = Positive(Down(0.9, 0.97), Up(0.98, 1.05)),
            ["MeasurementLaws.CombinedUncertainty"] = Positive(Up(0.01, 1), Up(0.1, 3), Up(0.01, 1)),
            ["MeasurementLaws.RelativeUncertaintyOfTwo"] = Positive(Up(0.001, 0.1), Up(0.001, 0.1)),
        };

    private static Dictionary<string, LawDomain> Person() =>
        new(StringComparer.Ordinal)
        {
            ["GaitLaws.WalkingDutyFactor"] = Positive(Down(0.3, 2.5)),
            ["GaitLaws.RunningDutyFactor"] = Positive(Down(1.5, 6)),
            ["GaitLaws.WalkingStepFrequency"] = Positive(Up(0.3, 2.5)),
            ["GaitLaws.RunningStepFrequency"] = Positive(Up(1.5, 6)),
            ["GaitLaws.WalkingThirdHarmonic"] = Positive(Up(0.3, 2.05)),
            ["GaitLaws.RunningThirdHarmonic"] = Signed(Up(1.5, 5.9)),
            ["GaitLaws.BrakingPeak"] = Positive(Up(0.5, 6)),
            ["GaitLaws.RunningBrakingShare"] = Positive(Up(1.5, 6)),
            ["GaitLaws.WalkingBrakingShare"] = Positive(),
            ["GaitLaws.LegLengthFromHeight"] = Positive(Up(0.8, 2.4)),
            ["GaitLaws.LegScale"] = Positive(Down(0.4, 1.3), Up(0.8, 1)),
            ["GaitLaws.ContactTime"] = Positive(Up(0.2, 0.7), Down(1, 4)),
            ["GaitLaws.MeanNormalForce"] = Positive(Up(40, 200), Down(0.01, 0.2), Down(0, 0.5)),
            ["GaitLaws.MeanTangentialForce"] = Signed(Down(40, 200), Down(0.01, 0.2), Up(0, 0.5), Up(-200, 200)),
            ["GaitLaws.NormalAmplitude"] = Positive(Up(300, 3000), Down(0.25, 0.7), Down(-0.33, 1)),
            ["GaitLaws.NormalShape"] = Positive(Any(0, 1), Any(-0.33, 1)),
            ["GaitLaws.NormalShapeOfSine"] = Positive(Any(0, 1), Any(-0.33, 1)),
            ["GaitLaws.NormalShapePeak"] = Positive(Any(-0.33, 1)),
            ["GaitLaws.ForeAftShape"] = Signed(Any(0, 1), Any(0.3, 0.65)),
            ["ForeAftLaws.WalkingBrakingImpulse"] = Positive(),
            ["ForeAftLaws.RunningBrakingImpulse"] = Positive(Up(2, 6)),
            ["ForeAftLaws.WalkingFourthSine"] = Positive(),
            ["ForeAftLaws.WalkingBrakingEnd"] = Positive(),
            ["ForeAftLaws.OddSines"] = Signed(Any(0.35, 0.65), Any(0, 0.6)),
            ["ForeAftLaws.SineSum"] = Signed(
                Any(0.05, 1),
                Any(-1, 1),
                Up(-300, 300),
                Any(-300, 300),
                Any(-300, 300),
                Any(-300, 300)
            ),
            ["ForeAftLaws.BrakingPart"] = Positive(Any(0.4, 0.6), Any(0, 0.6), Any(-0.2, 0.5)),
            ["ForeAftLaws.BrakingShapePeak"] = Positive(Any(0, 0.6), Any(-0.25, 1)),
            ["ForeAftLaws.SecondSine"] = Positive(Up(5, 40), Down(0.15, 1), Down(0.15, 0.6)),
            ["GaitLaws.WalkRunSpeed"] = Positive(Up(0.4, 1.1)),
            ["GaitLaws.StanceMeanForce"] = Positive(Down(0.25, 0.7)),
            ["GaitLaws.AsymmetryFactor"] = Positive(Up(-0.3, 0.3)),
            ["GaitLaws.DoubleSupport"] = Positive(Up(0.51, 0.75)),
            ["GaitLaws.Flight"] = Positive(Down(0.2, 0.49)),
            ["BeltLaws.BendingStiffnessInPlane"] = Positive(Up(1e5, 2e6), Up(0.2, 1)),
            ["HubLaws.SideLoad"] = Positive(Up(500, 6000), Up(10, 500), Up(-0.25, 0.25), Any(0.55, 1)),
            ["TrackingLaws.OffCentreDrift"] = Positive(
                Up(1, 60),
                Any(0.2, 0.6),
                Up(1, 2),
                Down(2.5, 5),
                Down(2000, 20000)
            ),
            ["GaitLaws.OffCentreMoment"] = Positive(Up(300, 3000), Up(0.01, 0.2)),
        };

    private static Dictionary<string, LawDomain> Geometry() =>
        new(StringComparer.Ordinal)
        {
            ["LoopLaws.StrandAngle"] = Signed(Up(0.02, 0.06), Down(0.02, 0.06), Any(0.8, 2)),
            ["LoopLaws.Wrap"] = Positive(Up(-0.1, 0.1)),
            ["LoopLaws.StrandLength"] = Positive(Up(0.8, 2), Any(-0.1, 0.1)),
            ["LoopLaws.Length"] = Positive(Up(0.02, 0.06), Up(0.02, 0.06), Up(0.8, 2)),
            ["LoopLaws.LengthSlope"] = Positive(Any(-0.1, 0.1)),
            ["RollerLaws.TubeInertia"] = Positive(Up(1000, 8000), Up(0.03, 0.1), Up(0.001, 0.01), Up(0.3, 0.8)),
            ["RollerLaws.TubeSecondMoment"] = Positive(Up(0.03, 0.1), Up(0.001, 0.01)),
            ["RollerLaws.Deflection"] = Positive(
                Up(500, 5000),
                Down(0.3, 0.5),
                Up(0.5, 0.8),
                Down(7e10, 2.1e11),
                Down(5e-8, 5e-7)
            ),
            ["RollerLaws.BendingMoment"] = Positive(Up(500, 5000), Down(0.3, 0.5), Up(0.5, 0.8)),
            ["RollerLaws.OverhangMoment"] = Positive(Up(100, 3000), Up(0.01, 0.1)),
            ["RollerLaws.BendingStress"] = Positive(Up(10, 500), Up(0.03, 0.1), Down(5e-8, 5e-7)),
            ["ScrewTorqueLaws.RaisingTorque"] = Positive(
                Up(500, 20000),
                Up(0.006, 0.02),
                Up(5e-4, 3e-3),
                Up(0.05, 0.3),
                Up(0.1, 0.6)
            ),
            ["ScrewTorqueLaws.LoweringTorque"] = Positive(
                Up(500, 20000),
                Up(0.006, 0.02),
                Down(5e-4, 2e-3),
                Up(0.15, 0.3),
                Up(0.1, 0.6)
            ),
            ["ScrewTorqueLaws.CollarTorque"] = Positive(Up(500, 20000), Up(0.008, 0.03), Up(0.05, 0.3)),
            ["ScrewTorqueLaws.LockingRatio"] = Positive(Up(0.006, 0.02), Down(5e-4, 3e-3), Up(0.05, 0.3), Up(0.1, 0.6)),
            ["ScrewTorqueLaws.Efficiency"] = Positive(Up(500, 20000), Up(5e-4, 3e-3), Down(5, 100)),
            ["ScrewTorqueLaws.TorqueByNutFactor"] = Positive(Up(500, 20000), Up(0.006, 0.02), Up(0.1, 0.3)),
            ["ScrewTorqueLaws.ForceByNutFactor"] = Positive(Up(1, 100), Down(0.006, 0.02), Down(0.1, 0.3)),
            ["ScrewTorqueLaws.NutFactor"] = Positive(Down(2000, 20000), Down(0.006, 0.02), Up(5, 100)),
            ["ScrewTorqueLaws.ProofLoad"] = Positive(Up(2e8, 1e9), Up(2e-5, 2e-4)),
            ["ScrewTorqueLaws.HandForce"] = Positive(Up(0.5, 100), Down(0.05, 0.4)),
            ["ScrewTorqueLaws.AxialStress"] = Positive(Up(500, 20000), Down(2e-5, 2e-4)),
            ["ScrewTorqueLaws.EquivalentStress"] = Positive(Up(1e7, 5e8), Up(2, 50), Down(0.006, 0.02)),
            ["ScrewTorqueLaws.TighteningForce"] = Positive(
                Up(1e8, 1e9),
                Up(2e-5, 2e-4),
                Down(0.006, 0.02),
                Down(5e-4, 3e-3),
                Down(0.05, 0.3)
            ),
            ["ScrewTorqueLaws.TighteningTorque"] = Positive(
                Up(500, 20000),
                Up(0.006, 0.02),
                Up(5e-4, 3e-3),
                Up(0.05, 0.3),
                Up(0.008, 0.03),
                Up(0.05, 0.3)
            ),
            ["ScrewThreadLaws.PitchDiameter"] = Positive(Up(0.005, 0.02), Down(5e-4, 2.5e-3)),
            ["ScrewThreadLaws.MinorDiameter"] = Positive(Up(0.005, 0.02), Down(5e-4, 2.5e-3)),
            ["ScrewThreadLaws.RootDiameter"] = Positive(Up(0.005, 0.02), Down(5e-4, 2.5e-3)),
            ["ScrewThreadLaws.MetricStressArea"] = Positive(Up(0.005, 0.02), Down(5e-4, 2.5e-3)),
            ["ScrewThreadLaws.UnifiedStressArea"] = Positive(Up(0.005, 0.02), Down(5e-4, 2.5e-3)),
            ["ScrewThreadLaws.StressDiameter"] = Positive(Up(2e-5, 2e-4)),
            ["ScrewThreadLaws.Turns"] = Positive(Down(5e-4, 3e-3), Up(0.001, 0.1)),
            ["ScrewThreadLaws.Travel"] = Positive(Up(5e-4, 3e-3), Up(0.1, 4)),
            ["TakeUpLaws.CentreDistanceChange"] = Positive(Up(5e-4, 0.02), Up(5e-4, 0.02), Down(0.01, 1)),
            ["TakeUpLaws.BoltForce"] = Positive(Up(300, 6000), Down(1, 2), Down(0.01, 1)),
            ["TakeUpLaws.BoltCompliance"] = Positive(
                Down(2e-5, 2e-4),
                Down(7e10, 2.1e11),
                Up(0.03, 0.2),
                Down(1, 2),
                Down(0.01, 1)
            ),
            ["TakeUpLaws.Skew"] = Signed(Up(-0.01, 0.01), Down(-0.01, 0.01), Any(0, 1), Any(0.3, 0.8)),
            ["TakeUpLaws.Elongation"] = Positive(Up(1e-4, 0.02), Any(-0.1, 0.1), Down(2, 4)),
            ["TakeUpLaws.EdgeStrain"] = Positive(Up(1e-4, 0.02), Up(0.3, 0.7), Any(-0.1, 0.1), Down(2, 4)),
            ["TrackingLaws.StringDrift"] = Positive(Up(1e-4, 0.02), Up(0.8, 2), Down(2, 4)),
            ["TrackingLaws.BeamFactor"] = Positive(Up(0.8, 2), Down(0.35, 0.6), Up(5e-4, 0.02)),
            ["TrackingLaws.SettledOffset"] = Positive(Up(1e-4, 0.01), Up(1, 50)),
            ["TrackingLaws.OffsetAtSteadyDrift"] = Positive(Up(0.001, 0.01), Up(1e-4, 5e-3), Up(1, 100)),
            ["TrackingLaws.TurnsLeft"] = Positive(Up(0.1, 1), Down(0.003, 0.006), Up(5e-4, 0.002)),
            ["TrackingLaws.LengthAtSteadyDrift"] = Positive(Down(-0.005, 0.002), Up(0.003, 0.02), Down(5e-4, 5e-3)),
            ["TrackingLaws.LengthToOffset"] = Positive(
                Down(-0.005, 0.002),
                Down(0.012, 0.02),
                Up(0.004, 0.01),
                Up(5, 50)
            ),
            ["TrackingLaws.CrownLength"] = Positive(Up(-0.005, 0.002), Up(0.012, 0.02), Down(0.004, 0.01), Up(5, 50)),
            ["TrackingLaws.OffsetAfter"] = Signed(Up(-0.01, 0.01), Up(-0.01, 0.01), Any(1, 50), Any(5, 50)),
            ["TrackingLaws.ObservedGain"] = Positive(Up(1e-4, 0.01), Down(0.001, 0.01), Down(0.8, 1.5), Up(2.4, 4)),
        };

    private static Dictionary<string, LawDomain> Grip() =>
        new(StringComparer.Ordinal)
        {
            ["DriveBeltLaws.CapacityOfTensionSum"] = Positive(Up(100, 2000), Up(1.1, 20)),
            ["DriveBeltLaws.CapacityOfSlackSide"] = Positive(Up(100, 2000), Up(1.1, 20)),
            ["DriveBeltLaws.CapacityOfTightSide"] = Positive(Up(100, 2000), Up(1.1, 20)),
            ["DriveBeltLaws.CircumferentialForce"] = Positive(Up(10, 1000), Up(0.02, 0.05), Down(0.03, 0.15)),
            ["DriveBeltLaws.StretchFitTension"] = Positive(Up(1e4, 1e5), Up(1.01, 1.05), Down(0.95, 1)),
            ["DriveBeltLaws.SpeedRatio"] = Positive(Down(0.015, 0.05), Up(0.05, 0.12)),
            ["DriveBeltLaws.SpeedRatioError"] = Negative(Up(0.015, 0.04), Down(0.05, 0.12), Down(1e-4, 3e-3)),
            ["DriveBeltLaws.TensionOfHubForce"] = Positive(Up(50, 2000), Down(2, 3.1)),
            ["DriveBeltLaws.RibbedWidth"] = Positive(Up(0.0016, 0.0094), Up(1, 20)),
            ["DriveBeltLaws.PitchDiameter"] = Positive(Up(0.013, 0.3), Up(0.0008, 0.004)),
            ["OverrunLaws.Incline"] = Positive(Up(0.02, 0.3), Up(5, 100), Down(400, 2000)),
            ["OverrunLaws.DeckFriction"] = Positive(Up(0.15, 0.35), Down(1, 40), Up(400, 2000)),
            ["OverrunLaws.SettledSpeed"] = Positive(Up(0.05, 5), Down(0.05, 1), Up(50, 500)),
            ["OverrunLaws.DragAtBelt"] = Positive(Up(0.01, 1), Up(50, 500), Down(0.2, 6)),
            ["OverrunLaws.TorqueAtMotor"] = Positive(Up(5, 300), Down(50, 500), Up(0.2, 6)),
            ["TractionLaws.TensionRatio"] = Positive(Up(0.05, 0.6), Up(2, 4)),
            ["TractionLaws.FrictionFromTensions"] = Positive(Up(1100, 3000), Down(100, 1000), Down(2, 4)),
            ["TractionLaws.WedgedFriction"] = Positive(Up(0.05, 0.6), Down(0.25, 1.4)),
            ["TractionLaws.LoadShare"] = Positive(Up(0.05, 2.4), Down(2.5, 4), Any(0, 2), Any(0.1, 2), Up(0, 1)),
            ["TractionLaws.SlackTension"] = Signed(Up(300, 3000), Down(0, 1000), Up(0, 500)),
            ["TractionLaws.TightTension"] = Positive(Up(300, 3000), Up(0, 500)),
            ["TractionLaws.HoldingPull"] = Positive(Up(100, 3000), Up(1.1, 20), Up(0, 1)),
            ["TractionLaws.HoldingPullBackwards"] = Positive(Up(100, 3000), Up(1.1, 20), Down(0, 1)),
            ["TractionLaws.HoldingPullOfDeadWeight"] = Positive(Up(100, 3000), Up(1.1, 20)),
            ["TractionLaws.SlipDemand"] = Signed(Up(0, 1000), Down(0, 500), Any(1.1, 20)),
            ["TractionLaws.OverrunDemand"] = Signed(Down(0, 1000), Down(0, 500), Any(1.1, 20)),
            ["TractionLaws.Grip"] = Positive(Up(300, 3000), Down(0, 50), Up(1.1, 20)),
            ["TractionLaws.SlowingForce"] = Signed(Up(0, 2000), Down(0, 2000), Any(1.1, 20)),
        };

    private static Dictionary<string, LawDomain> Transient() =>
        new(StringComparer.Ordinal)
        {
            ["TransientLaws.StrandStiffness"] = Positive(Up(5e4, 1e6), Down(2, 5), Down(0, 2)),
            ["TransientLaws.StrandDamping"] = Positive(Up(0.01, 0.5), Up(1e5, 2e6), Up(2, 10)),
            ["TransientLaws.GrippingPull"] = Positive(
                Up(1e-4, 1e-3),
                Up(0.001, 0.05),
                Down(0.1, 6),
                Up(2e5, 2e6),
                Any(50, 300),
                Up(1e5, 1e6)
            ),
            ["TransientLaws.StretchRate"] = Signed(Up(-500, 500), Down(-1e-3, 1e-3), Any(2e5, 2e6), Any(50, 300)),
            ["TransientLaws.SlidingSpeed"] = Signed(
                Up(-1, 1),
                Down(0.1, 6),
                Down(50, 500),
                Up(1e5, 1e6),
                Down(-0.1, 0.1)
            ),
            ["TransientLaws.MeanTension"] = Positive(Up(600, 3000), Down(0, 500), Up(0, 300)),
            ["TransientLaws.SmoothSign"] = Positive(Up(1e-4, 1), Down(0.001, 0.05)),
            ["TransientLaws.CurrentDemand"] = Positive(Up(1, 100), Up(0.01, 0.5), Up(0, 20)),
            ["TransientLaws.IntegratorRate"] = Signed(Up(1, 100), Up(0.01, 0.5), Down(0, 20), Any(0.05, 2)),
            ["TransientLaws.LoopVoltage"] = Positive(Up(20, 200), Up(1e-4, 1e-2), Up(0.1, 10), Down(1e-3, 2e-2)),
            ["TransientLaws.CurrentRate"] = Signed(Up(0, 200), Down(0, 200), Any(1e-3, 1e-2)),
            ["TransientLaws.HeatingRate"] = Signed(
                Up(0, 500),
                Down(0.5, 10),
                Down(40, 120),
                Up(-10, 35),
                Any(500, 5000)
            ),
            ["TransientLaws.MovingEnergy"] = Positive(Up(2, 100), Up(0.2, 7)),
            ["TransientLaws.TurningEnergy"] = Positive(Up(1e-4, 0.1), Up(10, 600)),
            ["TransientLaws.StrandEnergy"] = Positive(Up(1e5, 2e6), Up(1e-5, 2e-3)),
            ["TransientLaws.FieldEnergy"] = Positive(Up(1e-4, 1e-2), Up(0.5, 20)),
        };
}
