using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class TransientLawsChecks
{
    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(TransientLaws.StrandStiffness),
            "By hand: two springs of 360 kN over 1.5 m side by side",
            480_000,
            1e-6,
            "N/m",
            () => TransientLaws.StrandStiffness<Real>(360_000, 3, 0)
        ),
        Row(
            nameof(TransientLaws.StrandStiffness),
            "By hand: mountings as soft as the loop halve it",
            240_000,
            1e-6,
            "N/m",
            () => TransientLaws.StrandStiffness<Real>(360_000, 3, 3)
        ),
        Row(
            nameof(TransientLaws.StrandDamping),
            "By hand: damping ratio c/(2 sqrt(k m)) of half the loss factor, 0.05 at 400 kN/m and 4 kg",
            0.05,
            1e-15,
            "1",
            () => TransientLaws.StrandDamping<Real>(0.1, 400_000, 4) / (2 * Math.Sqrt(400_000.0 * 4))
        ),
        Row(
            nameof(TransientLaws.GrippingPull),
            "By hand: at rest a spring of 500 kN/m stretched by 0.4 mm",
            200,
            1e-10,
            "N",
            () => TransientLaws.GrippingPull<Real>(4e-4, 0, 0, 500_000, 120, 360_000)
        ),
        Row(
            nameof(TransientLaws.GrippingPull),
            "By hand: steady pull of 180 N at 3 m/s creeps by 1.5 mm/s, the stretch then rests at 180 N",
            180,
            1e-9,
            "N",
            () => TransientLaws.GrippingPull<Real>(180.0 / 500_000, 1.5e-3, 3, 500_000, 120, 360_000)
        ),
        Row(
            nameof(TransientLaws.StretchRate),
            "By hand: 12 N beyond the spring on 120 N s/m",
            0.1,
            1e-12,
            "m/s",
            () => TransientLaws.StretchRate<Real>(212, 4e-4, 500_000, 120)
        ),
        Row(
            nameof(TransientLaws.SlidingSpeed),
            "By hand: 0.2 m/s apart, creep 1.5 mm/s, stretching by 0.05 m/s",
            0.1485,
            1e-12,
            "m/s",
            () => TransientLaws.SlidingSpeed<Real>(0.2, 3, 180, 360_000, 0.05)
        ),
        Row(
            nameof(TransientLaws.MeanTension),
            "By hand: 1000 N, 200 N at a tenth of the loop: 1020 N tight and 820 N slack",
            920,
            1e-10,
            "N",
            () => TransientLaws.MeanTension<Real>(1000, 200, 20)
        ),
        Row(
            nameof(TransientLaws.SmoothSign),
            "By hand: 3, 4, 5",
            0.6,
            1e-15,
            "1",
            () => TransientLaws.SmoothSign<Real>(0.003, 0.004)
        ),
        Row(
            nameof(TransientLaws.CurrentDemand),
            "By hand",
            9,
            1e-12,
            "A",
            () => TransientLaws.CurrentDemand<Real>(40, 0.1, 5)
        ),
        Row(
            nameof(TransientLaws.IntegratorRate),
            "By hand: 40 A s/m at 0.1 m/s, 1 A beyond the limit, 0.3 s",
            10,
            1e-12,
            "A/s",
            () => TransientLaws.IntegratorRate<Real>(40, 0.1, 1, 0.3)
        ),
        Row(
            nameof(TransientLaws.LoopVoltage),
            "By hand: 100 V, 2 mH, 5 A in 5 ms",
            102,
            1e-12,
            "V",
            () => TransientLaws.LoopVoltage<Real>(100, 0.002, 5, 0.005)
        ),
        Row(
            nameof(TransientLaws.CurrentRate),
            "By hand: one volt too much on 2 mH",
            500,
            1e-10,
            "A/s",
            () => TransientLaws.CurrentRate<Real>(101, 100, 0.002)
        ),
        Row(
            nameof(TransientLaws.HeatingRate),
            "By hand: 60 W in, 40 K on 1 W/K out, 200 J/K",
            0.1,
            1e-14,
            "K/s",
            () => TransientLaws.HeatingRate<Real>(60, 1, 60, 20, 200)
        ),
        Row(
            nameof(TransientLaws.HeatingRate),
            "Slope at the start of Theraja, A Textbook of Electrical Technology, vol. III, Ex. 45.14: 65 K to go, 2.4 h",
            65.0 / (2.4 * 3600),
            1e-15,
            "K/s",
            () => TransientLaws.HeatingRate<Real>(85, 1, 45, 25, 2.4 * 3600)
        ),
        Row(
            nameof(TransientLaws.MovingEnergy),
            "By hand: work of 10 N over the 7.2 m in which 5 kg reach 5.366563 m/s",
            72,
            1e-5,
            "J",
            () => TransientLaws.MovingEnergy<Real>(5, 5.366563)
        ),
        Row(
            nameof(TransientLaws.TurningEnergy),
            "By hand: work of 0.5 N m over the 900 rad in which 0.01 kg m2 reach 300 rad/s",
            450,
            1e-10,
            "J",
            () => TransientLaws.TurningEnergy<Real>(0.01, 300)
        ),
        Row(
            nameof(TransientLaws.StrandEnergy),
            "By hand: mean of 0 and 200 N over 0.4 mm",
            0.04,
            1e-14,
            "J",
            () => TransientLaws.StrandEnergy<Real>(500_000, 4e-4)
        ),
        Row(
            nameof(TransientLaws.FieldEnergy),
            "By hand: 2 mH at 10 A, what a resistor takes while it dies away: integral of 100 R exp(-2 R t/L)",
            0.1,
            1e-14,
            "J",
            () => TransientLaws.FieldEnergy<Real>(0.002, 10)
        ),
    ];

    private static LawCheck Row(
        string law,
        string source,
        double expected,
        double tolerance,
        string unit,
        Func<double> compute
    ) => new($"{nameof(TransientLaws)}.{law}", source, Mark.Derived, expected, tolerance, unit, compute);
}
