using System.Globalization;
using TreadmillMech;
using TreadmillMech.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace AotCheck;

/// <summary>Parts: units in and out, threads, equality across units, refused values.</summary>
internal static class PartsRoom
{
    internal static void Visit(Report report)
    {
        Units(report);
        Threads(report);
        Equality(report);
        Refusals(report);
    }

    private static void Units(Report report)
    {
        Treadmill machine = Example.Machine;
        report.Add("parts: belt width [in]", machine.Belt.Width.Inches);
        report.Add("parts: belt mass [g/m2]", machine.Belt.MassPerArea.GramsPerSquareMeter);
        report.Add("parts: drag [kgf]", machine.BeltDrag?.KilogramsForce ?? double.NaN);
        report.Add("parts: winding [K]", machine.Motor?.WindingTemperature.Kelvins ?? double.NaN);
        report.Add("parts: resistance at work [ohm]", machine.Motor?.ResistanceAtWork?.Ohms ?? double.NaN);
        report.Add("parts: motor constant", machine.Motor?.Constant?.ToString() ?? "");
        report.Add("parts: standby [W]", (double)(machine.Supply?.StandbyPower.Watts ?? 0));
        report.Add("parts: plate [lb]", machine.Plate?.LargestUserMass?.Pounds ?? double.NaN);
        report.Add("units: parsed [m]", Length.Parse("20.5 in", CultureInfo.InvariantCulture).Meters);
        report.Add("units: parsed [N]", Force.Parse("185 lbf", CultureInfo.InvariantCulture).Newtons);
        report.Add("units: parsed [m/s]", Speed.Parse("6.5 mph", CultureInfo.InvariantCulture).MetersPerSecond);
        report.Add("units: as a unit", Force.FromNewtons(812.5).As(ForceUnit.KilopoundForce));
        report.Add("units: text", Torque.FromNewtonMeters(3.25).ToString("g", CultureInfo.InvariantCulture));
        report.Add("units: person", Example.Demands[0].Demand.Person.ToString());
    }

    private static void Threads(Report report)
    {
        foreach (
            string designation in (string[])["M8x1.25", "m10", "M12 x 1.5", "3/8-16 UNC", "5/16-24 unf", "#10-32 UNF"]
        )
        {
            ScrewThread thread = ScrewThread.Parse(designation);
            report.Add($"thread {designation}", $"{thread}, {thread.Family}");
            report.Add($"thread {designation} lead [mm]", thread.Lead.Millimeters);
            report.Add($"thread {designation} stress area [mm2]", thread.StressArea?.SquareMillimeters ?? double.NaN);
            report.Add($"thread {designation} travel of 1.75 turns [in]", thread.Travel(1.75).Inches);
        }

        report.Add("thread measured", ScrewThread.FromMeasuredLead(Length.FromInches(0.05)).ToString());
        foreach (
            string wrong in (string[])["", "M8x9", "M8x1,25", "M7", "3/8", "3/8-17 UNC", "3/8-16 UNX", "Mx", "8x1.25"]
        )
        {
            report.AddRefusal($"thread \"{wrong}\"", () => ScrewThread.Parse(wrong));
        }
    }

    private static void Equality(Report report)
    {
        Treadmill machine = Example.Machine;
        Treadmill same = machine with { Belt = machine.Belt with { Width = Length.FromInches(20) } };
        Treadmill other = machine with { Belt = machine.Belt with { Width = Length.FromInches(22) } };
        report.Add("equality: same", (machine == same).ToString());
        report.Add("equality: other", (machine == other).ToString());
        Demand demand = Example.Demands[1].Demand;
        report.Add("equality: same point", (machine.At(demand) == same.At(demand)).ToString());
        report.Add("equality: other point", (machine.At(demand) == other.At(demand)).ToString());
    }

    private static void Refusals(Report report)
    {
        Treadmill machine = Example.Machine;
        report.AddRefusal("refused: width", () => _ = machine.Belt with { Width = Length.FromFeet(5) });
        report.AddRefusal("refused: friction", () => _ = machine.Deck with { Friction = double.NaN });
        report.AddRefusal("refused: tension", () => _ = machine with { RestTension = Force.FromKilonewtons(-1) });
        report.AddRefusal("refused: bolts", () => _ = machine.TakeUp with { Bolts = 3 });
        report.AddRefusal("refused: drive end", () => _ = machine with { DriveEnd = (DriveEnd)7 });
        report.AddRefusal("refused: no deck", () => _ = machine with { Deck = null! });
        report.AddRefusal("refused: drive belt", () => _ = Example.OfKind(Tensioning.DirectDrive));
        report.AddRefusal("refused: no demand", () => _ = machine.At(null!));
    }
}
