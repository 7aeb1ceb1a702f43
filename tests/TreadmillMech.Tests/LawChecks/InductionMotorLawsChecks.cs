using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class InductionMotorLawsChecks
{
    private const string Fitzgerald =
        "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.2: 220 V between lines, six poles, 60 Hz, "
        + "slip 0.02, R 0.294 and 0.144, X 0.503, 0.209 and 13.25 ohm";

    private const string Chapman =
        "Chapman, Electric Machinery Fundamentals, induction motors, Ex. 6-3: 460 V between lines, four poles, 60 Hz, "
        + "slip 0.022, R 0.641 and 0.332, X 1.106, 0.464 and 26.3 ohm";

    private static readonly Circuit First = new(220 / Math.Sqrt(3), 0.294, 0.503, 0.144, 0.209, 13.25, 0.02, 3);

    private static readonly Circuit Second = new(460 / Math.Sqrt(3), 0.641, 1.106, 0.332, 0.464, 26.3, 0.022, 2);

    private static readonly Circuit Third = new(133, 1.1, 2.2, 0.9, 2.0, 48, 0.035, 2);

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(InductionMotorLaws.SynchronousSpeed),
            Fitzgerald,
            Mark.Transcribed,
            1200,
            0.5,
            "rpm",
            () => First.Synchronous / Rpm(1)
        ),
        Row(
            nameof(InductionMotorLaws.ShaftSpeed),
            Fitzgerald,
            Mark.Transcribed,
            1176,
            0.5,
            "rpm",
            () => First.Speed / Rpm(1)
        ),
        Row(
            nameof(InductionMotorLaws.StatorCurrent),
            Fitzgerald,
            Mark.Transcribed,
            18.8,
            0.05,
            "A",
            () => First.Current
        ),
        Row(
            nameof(InductionMotorLaws.PowerFactor),
            Fitzgerald,
            Mark.Transcribed,
            0.846,
            0.0005,
            "1",
            () => First.Factor
        ),
        Row(
            nameof(InductionMotorLaws.Torque),
            Fitzgerald + "; less the friction of 403 W at the shaft",
            Mark.Transcribed,
            42.4,
            0.05,
            "N m",
            () => First.Torque - (403 / First.Speed)
        ),
        Row(
            nameof(InductionMotorLaws.AirGapPower),
            Fitzgerald + "; efficiency with 403 W of rotational loss",
            Mark.Transcribed,
            86,
            0.5,
            "%",
            () => 100 * ((First.Gap * (1 - First.Slip)) - 403) / (3 * First.Voltage * First.Current * First.Factor)
        ),
        Row(
            nameof(InductionMotorLaws.SynchronousSpeed),
            Chapman,
            Mark.Memory,
            188.5,
            0.05,
            "rad/s",
            () => Second.Synchronous
        ),
        Row(nameof(InductionMotorLaws.ShaftSpeed), Chapman, Mark.Memory, 1760, 0.5, "rpm", () => Second.Speed / Rpm(1)),
        Row(
            nameof(InductionMotorLaws.PowerFactor),
            Chapman + "; from the printed 11.08 and 6.68 ohm of the field",
            Mark.Memory,
            0.833,
            0.0005,
            "1",
            () => InductionMotorLaws.PowerFactor<Real>(0.641, 1.106, 11.08, 6.68)
        ),
        Row(nameof(InductionMotorLaws.Torque), Chapman, Mark.Memory, 62.8, 0.05, "N m", () => Second.Torque),
        Row(
            nameof(InductionMotorLaws.StatorCurrent),
            "By hand: 130 V on 3 + 2 and 5 + 7 ohm",
            Mark.Derived,
            10,
            1e-14,
            "A",
            () => InductionMotorLaws.StatorCurrent<Real>(130, 3, 5, 2, 7)
        ),
        Row(
            nameof(InductionMotorLaws.PowerFactor),
            "By hand: 3 + 2 and 5 + 7 ohm",
            Mark.Derived,
            5.0 / 13,
            1e-15,
            "1",
            () => InductionMotorLaws.PowerFactor<Real>(3, 5, 2, 7)
        ),
        Row(
            nameof(InductionMotorLaws.AirGapPower),
            "By hand: three phases of 10 A on 2 ohm",
            Mark.Derived,
            600,
            1e-12,
            "W",
            () => InductionMotorLaws.AirGapPower<Real>(10, 2)
        ),
        Scipy(nameof(InductionMotorLaws.FieldResistance), "motor.resistance", "ohm", () => Third.Resistance),
        Scipy(nameof(InductionMotorLaws.FieldReactance), "motor.reactance", "ohm", () => Third.Reactance),
        Scipy(nameof(InductionMotorLaws.StatorCurrent), "motor.current", "A", () => Third.Current),
        Scipy(nameof(InductionMotorLaws.PowerFactor), "motor.factor", "1", () => Third.Factor),
        Scipy(nameof(InductionMotorLaws.AirGapPower), "motor.gap", "W", () => Third.Gap),
        Scipy(nameof(InductionMotorLaws.Torque), "motor.torque", "N m", () => Third.Torque),
        new(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.EquivalentVoltage)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.3, the motor of Ex. 6.2",
            Mark.Memory,
            122.3,
            0.05,
            "V",
            () => InductionMotorLaws.EquivalentVoltage<Real>(220 / Math.Sqrt(3), 0.294, 0.503, 13.25)
        ),
        new(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.EquivalentResistance)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.3, the motor of Ex. 6.2",
            Mark.Memory,
            0.273,
            0.0005,
            "ohm",
            () => InductionMotorLaws.EquivalentResistance<Real>(0.294, 0.503, 13.25)
        ),
        new(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.EquivalentReactance)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.3, the motor of Ex. 6.2",
            Mark.Memory,
            0.490,
            0.0005,
            "ohm",
            () => InductionMotorLaws.EquivalentReactance<Real>(0.294, 0.503, 13.25)
        ),
        new(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.BreakdownSlip)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.3, the motor of Ex. 6.2",
            Mark.Memory,
            0.192,
            0.0005,
            "1",
            () =>
                InductionMotorLaws.BreakdownSlip<Real>(
                    InductionMotorLaws.EquivalentResistance<Real>(0.294, 0.503, 13.25),
                    InductionMotorLaws.EquivalentReactance<Real>(0.294, 0.503, 13.25),
                    0.144,
                    0.209
                )
        ),
        new(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.BreakdownTorque)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 6.3, the motor of Ex. 6.2",
            Mark.Memory,
            175,
            0.5,
            "N m",
            () =>
                InductionMotorLaws.BreakdownTorque<Real>(
                    InductionMotorLaws.EquivalentVoltage<Real>(220 / Math.Sqrt(3), 0.294, 0.503, 13.25),
                    InductionMotorLaws.EquivalentResistance<Real>(0.294, 0.503, 13.25),
                    InductionMotorLaws.EquivalentReactance<Real>(0.294, 0.503, 13.25),
                    0.209,
                    Rpm(1200)
                )
        ),
        Generated.Check(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.EquivalentVoltage)}",
            "motor.open",
            "V",
            () => InductionMotorLaws.EquivalentVoltage<Real>(133, 1.1, 2.2, 48)
        ),
        Generated.Check(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.EquivalentResistance)}",
            "motor.seenresistance",
            "ohm",
            () => InductionMotorLaws.EquivalentResistance<Real>(1.1, 2.2, 48)
        ),
        Generated.Check(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.EquivalentReactance)}",
            "motor.seenreactance",
            "ohm",
            () => InductionMotorLaws.EquivalentReactance<Real>(1.1, 2.2, 48)
        ),
        Generated.Check(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.BreakdownSlip)}",
            "motor.breakdownslip",
            "1",
            () =>
                InductionMotorLaws.BreakdownSlip<Real>(
                    InductionMotorLaws.EquivalentResistance<Real>(1.1, 2.2, 48),
                    InductionMotorLaws.EquivalentReactance<Real>(1.1, 2.2, 48),
                    0.9,
                    2.0
                )
        ),
        Generated.Check(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.BreakdownTorque)}",
            "motor.breakdown",
            "N m",
            () =>
                InductionMotorLaws.BreakdownTorque<Real>(
                    InductionMotorLaws.EquivalentVoltage<Real>(133, 1.1, 2.2, 48),
                    InductionMotorLaws.EquivalentResistance<Real>(1.1, 2.2, 48),
                    InductionMotorLaws.EquivalentReactance<Real>(1.1, 2.2, 48),
                    2.0,
                    60 * Math.PI
                )
        ),
        new(
            $"{nameof(InductionMotorLaws)}.{nameof(InductionMotorLaws.ShaftTorque)}",
            "By hand: 45 N m less 300 W at 100 rad/s",
            Mark.Derived,
            42,
            1e-12,
            "N m",
            () => InductionMotorLaws.ShaftTorque<Real>(45, 300, 100)
        ),
    ];

    /// <summary>A motor at 60 Hz through all laws, from its circuit and slip.</summary>
    private sealed record Circuit(
        double Voltage,
        double StatorResistance,
        double StatorReactance,
        double RotorResistance,
        double RotorReactance,
        double Magnetising,
        double Slip,
        double PolePairs
    )
    {
        internal double Resistance =>
            InductionMotorLaws.FieldResistance<Real>(RotorResistance, RotorReactance, Magnetising, Slip);

        internal double Reactance =>
            InductionMotorLaws.FieldReactance<Real>(RotorResistance, RotorReactance, Magnetising, Slip);

        internal double Current =>
            InductionMotorLaws.StatorCurrent<Real>(Voltage, StatorResistance, StatorReactance, Resistance, Reactance);

        internal double Factor =>
            InductionMotorLaws.PowerFactor<Real>(StatorResistance, StatorReactance, Resistance, Reactance);

        internal double Gap => InductionMotorLaws.AirGapPower<Real>(Current, Resistance);

        internal double Synchronous => InductionMotorLaws.SynchronousSpeed<Real>(2 * Math.PI * 60, PolePairs);

        internal double Speed => InductionMotorLaws.ShaftSpeed<Real>(Synchronous, Slip);

        internal double Torque => InductionMotorLaws.Torque<Real>(Gap, Synchronous);
    }

    private static LawCheck Row(
        string law,
        string source,
        Mark mark,
        double expected,
        double tolerance,
        string unit,
        Func<double> compute
    ) => new($"{nameof(InductionMotorLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(InductionMotorLaws)}.{law}", name, unit, compute);
}
