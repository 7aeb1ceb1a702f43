using TreadmillMech.Laws;

namespace TreadmillMech.Tests.LawChecks;

public static class ThermalLawsChecks
{
    private const string Theraja = "Theraja, A Textbook of Electrical Technology, vol. III";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        Row(
            nameof(ThermalLaws.RiseAfter),
            $"{Theraja}, Ex. 45.14: 20 to 85 K, time constant 2.4 h, after 1.2 h, ambient 25",
            Mark.Transcribed,
            70.58,
            0.005,
            "deg C",
            () => 25 + ThermalLaws.RiseAfter<Real>(85, 20, 1.2 * 3600, 2.4 * 3600)
        ),
        Row(
            nameof(ThermalLaws.ShortTimeFactor),
            $"{Theraja}, Ex. 45.9: 40 kW continuous, time constant 90 min, half an hour",
            Mark.Transcribed,
            75.13,
            0.005,
            "kW",
            () => 40 * Math.Sqrt(ThermalLaws.ShortTimeFactor<Real>(1800, 5400))
        ),
        Row(
            nameof(ThermalLaws.ShortTimeFactor),
            $"{Theraja}, Ex. 45.10: 15 hp continuous, time constant 2 h, one hour",
            Mark.Transcribed,
            24,
            0.5,
            "hp",
            () => 15 * Math.Sqrt(ThermalLaws.ShortTimeFactor<Real>(3600, 7200))
        ),
        Row(
            nameof(ThermalLaws.DutyCycleRise),
            "By hand: no rest leads to the final rise",
            Mark.Derived,
            60,
            1e-12,
            "K",
            () => ThermalLaws.DutyCycleRise<Real>(60, 900, 0, 1800, 3600)
        ),
        Row(
            nameof(ThermalLaws.FanConductance),
            "By hand: a quarter of the speed gives half of the fan",
            Mark.Derived,
            1.5,
            1e-15,
            "W/K",
            () => ThermalLaws.FanConductance<Real>(0.5, 2, 0.25)
        ),
        Row(
            nameof(ThermalLaws.RunawayRatio),
            "By hand: 40 W, 0.00393 1/K, 0.8 W/K",
            Mark.Derived,
            0.1965,
            1e-15,
            "1",
            () => ThermalLaws.RunawayRatio<Real>(40, 0.00393, 0.8)
        ),
        Row(
            nameof(ThermalLaws.CopperRise),
            "By hand: at a ratio of one half the rise is twice that of constant resistance",
            Mark.Derived,
            100,
            1e-9,
            "K",
            () => ThermalLaws.CopperRise<Real>(50, 0.01, 1)
        ),
        Row(
            nameof(ThermalLaws.CopperTemperature),
            "Copper at 20 deg C gains 0.00393 of its resistance for each kelvin: 100 K are a factor of 1.393; tolerance: half a unit of 0.00393",
            Mark.Read,
            120,
            0.13,
            "deg C",
            () => ThermalLaws.CopperTemperature<Real>(1, 1.393, 20)
        ),
        Row(
            nameof(ThermalLaws.CopperTemperature),
            "By hand: copper at 234.5 deg C has twice the resistance of 0 deg C",
            Mark.Derived,
            234.5,
            1e-12,
            "deg C",
            () => ThermalLaws.CopperTemperature<Real>(1, 2, 0)
        ),
        Scipy(nameof(ThermalLaws.RiseAfter), "heat.rise", "K", () => ThermalLaws.RiseAfter<Real>(80, 12, 1000, 1800)),
        Scipy(
            nameof(ThermalLaws.DutyCycleRise),
            "heat.cycle",
            "K",
            () => ThermalLaws.DutyCycleRise<Real>(80, 600, 900, 1800, 3000)
        ),
        Scipy(nameof(ThermalLaws.CopperRise), "heat.copper", "K", () => ThermalLaws.CopperRise<Real>(40, 0.00393, 0.8)),
        Scipy(
            nameof(ThermalLaws.ShortTimeFactor),
            "heat.short",
            "1",
            () => ThermalLaws.ShortTimeFactor<Real>(1800, 3600)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.TimeToRise)}",
            "Theraja, A Textbook of Electrical Technology, vol. III, Ex. 45.14: 20 to 85 K, time constant 2.4 h, up to the printed 70.58 deg C at ambient 25; tolerance: half a unit of 70.58",
            Mark.Transcribed,
            1.2,
            0.0004,
            "h",
            () => ThermalLaws.TimeToRise<Real>(85, 20, 45.58, 2.4)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.ShortTimeLoad)}",
            "Subrahmanyam, Electric Drives, 2nd ed., Ex. 5.2: overload for 2 h, time constant 1.5 h, constant losses half of the copper's",
            Mark.Transcribed,
            1.23972921698,
            5e-12,
            "1",
            () => ThermalLaws.ShortTimeLoad<Real>(2, 1.5, 0.5)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.ShortTimeLoad)}",
            "Theraja, A Textbook of Electrical Technology, vol. III, Ex. 45.9: 40 kW continuous, time constant 90 min, half an hour, all losses in copper",
            Mark.Transcribed,
            75.13,
            0.005,
            "kW",
            () => 40 * ThermalLaws.ShortTimeLoad<Real>(1800, 5400, 0)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.LossRatio)}",
            "By hand: half of the load, constant losses equal to the copper's",
            Mark.Derived,
            0.625,
            1e-15,
            "1",
            () => ThermalLaws.LossRatio<Real>(0.5, 1)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.LossRatio)}",
            "By hand: the losses of the overload of Subrahmanyam, Ex. 5.2, heat up in 2 h as far as the lasting ones for ever",
            Mark.Derived,
            1,
            1e-11,
            "1",
            () => ThermalLaws.LossRatio<Real>(1.23972921698, 0.5) * (1 - Math.Exp(-2 / 1.5))
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.FinalRiseOfTwo)}",
            "Textbook example of a 30 kW motor, 30 K after 40 min and 45 K after 80 min, public copy (solved there with fsolve)",
            Mark.Transcribed,
            60.0,
            0.05,
            "K",
            () => ThermalLaws.FinalRiseOfTwo<Real>(30, 45)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.TimeConstantOfTwo)}",
            "Textbook example of a 30 kW motor, 30 K after 40 min and 45 K after 80 min, public copy (solved there with fsolve)",
            Mark.Transcribed,
            57.71,
            0.005,
            "min",
            () => ThermalLaws.TimeConstantOfTwo<Real>(30, 45, 40)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.TimeConstantOfTwo)}",
            "Textbook example of a 30 kW motor, 20 K after 30 min and 30 K after 60 min, public copy (solved there with fsolve)",
            Mark.Transcribed,
            43.28,
            0.005,
            "min",
            () => ThermalLaws.TimeConstantOfTwo<Real>(20, 30, 30)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.Conductance)}",
            "By hand: 45 W lead to 60 K",
            Mark.Derived,
            0.75,
            1e-15,
            "W/K",
            () => ThermalLaws.Conductance<Real>(45, 60)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.CopperCoefficient)}",
            "IEC 60028: 0.00393 for each kelvin at 20 deg C (from memory)",
            Mark.Memory,
            0.00393,
            5e-06,
            "1/K",
            () => ThermalLaws.CopperCoefficient<Real>(20)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.CopperTimeToRise)}",
            "By hand: at the brink of running away the rise grows with time",
            Mark.Derived,
            300,
            1e-10,
            "s",
            () => ThermalLaws.CopperTimeToRise<Real>(50, 100, 1, 600)
        ),
        new(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.CopperTimeToRise)}",
            "By hand: without a gain of resistance, half of the final rise after ln 2 time constants",
            Mark.Derived,
            600 * Math.Log(2),
            1e-10,
            "s",
            () => ThermalLaws.CopperTimeToRise<Real>(50, 100, 0, 600)
        ),
        Generated.Check(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.CopperTimeToRise)}",
            "thermal.time",
            "s",
            () => ThermalLaws.CopperTimeToRise<Real>(60, 100, 0.4, 1200)
        ),
        Generated.Check(
            $"{nameof(ThermalLaws)}.{nameof(ThermalLaws.CopperTimeToRise)}",
            "thermal.runaway",
            "s",
            () => ThermalLaws.CopperTimeToRise<Real>(60, 100, 1.5, 1200)
        ),
    ];

    private static LawCheck Row(
        string law,
        string source,
        Mark mark,
        double expected,
        double tolerance,
        string unit,
        Func<double> compute
    ) => new($"{nameof(ThermalLaws)}.{law}", source, mark, expected, tolerance, unit, compute);

    private static LawCheck Scipy(string law, string name, string unit, Func<double> compute) =>
        Generated.Check($"{nameof(ThermalLaws)}.{law}", name, unit, compute);
}
