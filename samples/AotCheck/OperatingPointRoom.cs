using TreadmillMech;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace AotCheck;

/// <summary>Operating points: every kind of tensioning at either drive end under every demand, each property read.</summary>
internal static class OperatingPointRoom
{
    internal static void Visit(Report report)
    {
        foreach (DriveEnd end in Enum.GetValues<DriveEnd>())
        {
            foreach (Tensioning kind in Enum.GetValues<Tensioning>())
            {
                Treadmill machine = Example.Machine with
                {
                    DriveEnd = end,
                    DriveBelt = kind == Tensioning.DirectDrive ? null : Example.OfKind(kind),
                };
                foreach ((string name, Demand demand) in Example.Demands)
                {
                    OperatingPoint point = machine.At(demand);
                    Read(report, $"{end} {kind} {name}:", point);
                    Plain(report, $"{end} {kind} {name}: plain", point.Numbers);
                }
            }
        }
    }

    /// <summary>Every property of a point as a quantity.</summary>
    internal static void Read(Report report, string at, in OperatingPoint point)
    {
        report.Add($"{at} point", point.ToString());
        report.Add($"{at} loop [in]", point.LoopLength.Inches);
        report.Add($"{at} wrap [deg]", point.DriveRollerWrap.Degrees);
        report.Add($"{at} steps [1/min]", point.StepFrequency.CyclesPerMinute);
        report.Add($"{at} duty factor", point.DutyFactor);
        report.Add($"{at} contact [ms]", point.ContactTime.Milliseconds);
        report.Add($"{at} foot [lbf]", point.PeakFootForce.PoundsForce);
        report.Add($"{at} motor [rpm]", point.MotorSpeed.RevolutionsPerMinute);
        report.Add($"{at} mean pull [lbf]", point.MeanPull, q => q.PoundsForce);
        report.Add($"{at} peak pull [N]", point.PeakPull, q => q.Newtons);
        report.Add($"{at} least pull [kgf]", point.LeastPull, q => q.KilogramsForce);
        report.Add($"{at} deck heat [W]", point.DeckFrictionPower, q => (double)q.Watts);
        report.Add($"{at} pull power [hp]", point.PullPower, q => (double)q.MechanicalHorsepower);
        report.Add($"{at} tension [kN]", point.RestTension, q => q.Kilonewtons);
        report.Add($"{at} slack side [N]", point.SlackTension, q => q.Newtons);
        report.Add($"{at} tight side [N]", point.TightTension, q => q.Newtons);
        report.Add($"{at} belt margin", point.BeltMargin, q => q);
        report.Add($"{at} belt slide [mm]", point.BeltSlide, q => q.Millimeters);
        report.Add($"{at} drive belt margin", point.DriveBeltMargin, q => q);
        report.Add($"{at} drive belt slide [mm]", point.DriveBeltSlide, q => q.Millimeters);
        report.Add($"{at} drive hubs [N]", point.DriveRollerHubLoad, q => q.Newtons);
        report.Add($"{at} tail hubs [N]", point.TailRollerHubLoad, q => q.Newtons);
        report.Add($"{at} motor hub [N]", point.MotorHubLoad, q => q.Newtons);
        report.Add($"{at} torque [lbf ft]", point.MotorTorque, q => q.PoundForceFeet);
        report.Add($"{at} mean current [A]", point.MeanCurrent, q => q.Amperes);
        report.Add($"{at} peak current [A]", point.PeakCurrent, q => q.Amperes);
        report.Add($"{at} rms current [A]", point.RmsCurrent, q => q.Amperes);
        report.Add($"{at} voltage [V]", point.MotorVoltage, q => q.Volts);
        report.Add($"{at} mains [kW]", point.MainsPower, q => (double)q.Kilowatts);
        report.Add($"{at} mains [mA]", point.MainsCurrent, q => q.Milliamperes);
        report.Add(
            $"{at} first to slip",
            point.FirstToSlip.Is(out WeakContact first) ? first.ToString() : point.FirstToSlip.ToString()
        );
        report.Add($"{at} notices", point.Notices.ToString());
        foreach (Notice notice in point.NoticeTexts)
        {
            report.Add($"{at} notice", notice.ToString());
        }
    }

    private static void Plain(Report report, string at, OutputNumbers<Real> numbers)
    {
        Span<Real> values = numbers.AsSpan();
        foreach (Output output in Outputs.All)
        {
            report.Add($"{at} {output.Name} [{output.Unit}]", values[output.Index]);
        }
    }
}
