using TreadmillMech.Laws;
using static TreadmillMech.Tests.LawChecks.Factors;

namespace TreadmillMech.Tests.LawChecks;

public static class DcMotorLawsChecks
{
    private const string Fitzgerald = "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed.";
    private const string Burman = "Burman, Special Electrical Machines";

    public static readonly IReadOnlyList<LawCheck> All =
    [
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Current)}",
            $"{Fitzgerald}, Ex. 7.1: 125 V behind the armature at 3000 rpm, 59.7 N m",
            Mark.Transcribed,
            150,
            0.5,
            "A",
            () => DcMotorLaws.Current<Real>(59.7, 0, 125 / Rpm(3000))
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Voltage)}",
            $"{Fitzgerald}, Ex. 7.1: 125 V behind 0.02 ohm with 150 A",
            Mark.Transcribed,
            128,
            0.5,
            "V",
            () => DcMotorLaws.Voltage<Real>(125 / Rpm(3000), Rpm(3000), 150, 0.02, 0)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Voltage)}",
            $"{Fitzgerald}, Ex. 7.1: power at the terminals",
            Mark.Transcribed,
            19.2,
            0.05,
            "kW",
            () => DcMotorLaws.Voltage<Real>(125 / Rpm(3000), Rpm(3000), 150, 0.02, 0) * 150 / 1000
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Voltage)}",
            $"{Fitzgerald}, Ex. 7.1: electromagnetic power, the part without the resistance",
            Mark.Transcribed,
            18.75,
            0.005,
            "kW",
            () => DcMotorLaws.Voltage<Real>(125 / Rpm(3000), Rpm(3000), 150, 0, 0) * 150 / 1000
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Speed)}",
            $"{Fitzgerald}, Ex. 7.1: 128 V, 150 A, 0.02 ohm, read backwards",
            Mark.Transcribed,
            3000,
            0.5,
            "rpm",
            () => DcMotorLaws.Speed<Real>(125 / Rpm(3000), 128, 150, 0.02, 0) / Rpm(1)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Speed)}",
            $"{Burman}, Ex. 4.1: 0.12 V s/rad on 48 V; printed 3819, which is 3819.7 cut off, not rounded: anything "
                + "from 3819 to 3820 agrees",
            Mark.Transcribed,
            3819.5,
            0.5,
            "rpm",
            () => DcMotorLaws.Speed<Real>(0.12, 48, 0, 1, 0) / Rpm(1)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Speed)}",
            $"{Burman}, Ex. 4.2: 1 N m at 5 A gives 0.2 V s/rad; 28 V",
            Mark.Transcribed,
            1336.90,
            0.005,
            "rpm",
            () => DcMotorLaws.Speed<Real>(1.0 / 5, 28, 0, 1, 0) / Rpm(1)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Speed)}",
            "By hand: brushes take 2 V and 1 ohm takes 5 V of 47 V: 40 V over 0.2 V s/rad",
            Mark.Derived,
            200,
            1e-9,
            "rad/s",
            () => DcMotorLaws.Speed<Real>(0.2, 47, 5, 1, 2)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.ConstantFromTwoPoints)}",
            $"{Fitzgerald}, Ex. 7.9: 50 V, 2100 rpm, 1.25 A, 1.03 ohm; the other point is standstill without current",
            Mark.Transcribed,
            0.22,
            0.005,
            "V s/rad",
            () => DcMotorLaws.ConstantFromTwoPoints<Real>(0, 50, 0, Rpm(2100), 0, 1.25, 1.03)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.ConstantFromTwoPoints)}",
            "By hand: 10 V to 50 V is 40 V; 2 ohm times 1 A more takes 2 V; 38 V over 190 rad/s, brushes the same",
            Mark.Derived,
            0.2,
            1e-12,
            "V s/rad",
            () => DcMotorLaws.ConstantFromTwoPoints<Real>(10, 50, 10, 200, 1, 2, 2)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Current)}",
            $"{Fitzgerald}, Ex. 7.9 unrounded (the page's 275 W has its constant rounded to 0.22): 267.1 W and 60.9 W "
                + "of rotation at 1700 rpm; (48 V - 39.434 V)/1.03 ohm, computed apart in Python; tolerance: a whole unit of the last digit",
            Mark.Derived,
            8.317,
            0.001,
            "A",
            () => DcMotorLaws.Current<Real>(267.1 / Rpm(1700), 60.89 / Rpm(1700), 0.2215096)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.RmsCurrent)}",
            "Dubey, Electrical Drives, Ex. 4.3, on powers: ramp 0-400 kW 5 min, 500 kW 5 min, 400 kW 4 min, idle 2 min; "
                + "mean 318.75, mean square 134 791.67 by hand",
            Mark.Transcribed,
            367,
            0.5,
            "kW",
            () => DcMotorLaws.RmsCurrent<Real>(318.75, 1, 318.75, 134_791.67)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.RmsCurrent)}",
            "By hand: pull 0 and 200 N half the time each at 0.03 A/N with mean 3 A is 0 and 6 A: 6/sqrt 2",
            Mark.Derived,
            4.24264,
            5e-6,
            "A",
            () => DcMotorLaws.RmsCurrent<Real>(3, 0.03, 100, 20_000)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.CopperResistance)}",
            "Handbook value: temperature coefficient of copper at 20 deg C",
            Mark.Read,
            0.00393,
            5e-6,
            "1/K",
            () => DcMotorLaws.CopperResistance<Real>(1, 20, 21) - 1
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.CopperResistance)}",
            "By hand: (75 + 234.5)/(20 + 234.5) = 309.5/254.5",
            Mark.Derived,
            1.21611,
            5e-6,
            "1",
            () => DcMotorLaws.CopperResistance<Real>(1, 20, 75)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.WarmConstant)}",
            "By hand: 0.2 % for each of 50 K",
            Mark.Derived,
            0.45,
            1e-15,
            "V s/rad",
            () => DcMotorLaws.WarmConstant<Real>(0.5, 0.002, 50)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.CopperLoss)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 7.1: 150 A on 0.02 ohm, 19.2 kW in and 18.75 kW across; tolerance: half units of both",
            Mark.Transcribed,
            450,
            55,
            "W",
            () => DcMotorLaws.CopperLoss<Real>(150, 0.02)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.CopperLoss)}",
            "By hand: 10 A on 1.2 ohm",
            Mark.Derived,
            120,
            1e-12,
            "W",
            () => DcMotorLaws.CopperLoss<Real>(10, 1.2)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.DutyRatio)}",
            "Rashid, Power Electronics, first example of dc converters: 220 V less 2 V in the switch, 109 V in the mean at a duty of 50 %",
            Mark.Memory,
            50,
            0.5,
            "%",
            () => 100 * DcMotorLaws.DutyRatio<Real>(109, 218)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.DutyRatio)}",
            "By hand: 60 V of a bus of 325 V",
            Mark.Derived,
            12.0 / 65,
            1e-15,
            "1",
            () => DcMotorLaws.DutyRatio<Real>(60, 325)
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.TerminalPower)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 7.1: 128 V, 150 A, 3000 rpm",
            Mark.Transcribed,
            19.2,
            0.05,
            "kW",
            () => DcMotorLaws.TerminalPower<Real>(128, 150) / 1000
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.ShaftPower)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 7.1: 128 V, 150 A, 3000 rpm; 59.7 N m",
            Mark.Transcribed,
            18.75,
            0.016,
            "kW",
            () => DcMotorLaws.ShaftPower<Real>(59.7, 3000 * 2 * Math.PI / 60) / 1000
        ),
        new(
            $"{nameof(DcMotorLaws)}.{nameof(DcMotorLaws.Torque)}",
            "Fitzgerald, Kingsley and Umans, Electric Machinery, 6th ed., Ex. 7.1: 125 V induced at 3000 rpm, 150 A",
            Mark.Transcribed,
            59.7,
            0.05,
            "N m",
            () => DcMotorLaws.Torque<Real>(150, 0, 125 / (100 * Math.PI))
        ),
    ];
}
