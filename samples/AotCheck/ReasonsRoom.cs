using TreadmillMech;
using TreadmillMech.Parts;
using UnitsNet;

namespace AotCheck;

/// <summary>Missing answers: each reason that an operating point can give, in words and numbers.</summary>
internal static class ReasonsRoom
{
    internal static void Visit(Report report)
    {
        Treadmill machine = Example.Machine;
        Demand walk = Example.Demands[0].Demand;
        Demand run = Example.Demands[1].Demand;
        Demand steep = walk with { Grade = Ratio.FromPercent(40) };
        DcMotor motor = machine.Motor ?? new();
        DriveBelt belt = Example.OfKind(Tensioning.SprungMotor);

        Read(report, "unknown friction", machine with { Deck = new() }, walk);
        Read(
            report,
            "unknown stiffness",
            machine with
            {
                Belt = machine.Belt with { RelaxedForcePerWidth = null },
            },
            walk
        );
        Read(report, "bare machine", Bare(machine), run);
        Read(report, "loose belt", machine with { RestTension = Force.FromNewtons(0) }, run);
        Read(report, "weak motor", WithMotor(motor with { CurrentLimit = ElectricCurrent.FromAmperes(3) }), run);
        Read(report, "slow motor", WithMotor(motor with { VoltageLimit = ElectricPotential.FromVolts(40) }), run);
        Read(report, "no brake", WithMotor(motor with { CanBrake = false }), steep);
        Read(
            report,
            "overlapping pulleys",
            machine with
            {
                DriveBelt = belt with { CentreDistance = Length.FromMillimeters(55) },
            },
            run
        );

        Answer<double> margin = default;
        report.Add("default answer", margin.ToString());
        report.Add("answer or", margin.Or(1.5));
        report.Add("answer then", machine.At(run).BeltMargin.Then(m => 2 * m), q => q);
        report.AddRefusal("answer without value", () => _ = margin.Value);
    }

    private static void Read(Report report, string name, Treadmill machine, Demand demand) =>
        OperatingPointRoom.Read(report, $"{name}:", machine.At(demand));

    private static Treadmill WithMotor(DcMotor motor) => Example.Machine with { Motor = motor };

    private static Treadmill Bare(Treadmill machine) =>
        new()
        {
            Belt = new() { Width = machine.Belt.Width },
            DriveRoller = new() { Diameter = machine.DriveRoller.Diameter },
            TailRoller = new() { Diameter = machine.TailRoller.Diameter },
            CentreDistance = machine.CentreDistance,
            TakeUp = new() { Thread = ScrewThread.FromMeasuredLead(Length.FromMillimeters(1.25)) },
            Deck = new(),
        };
}
