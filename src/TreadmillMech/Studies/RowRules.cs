using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>
/// When an output of eight cases has a number: the rules of <see cref="OperatingPoint"/>, which a test compares.
/// </summary>
internal sealed class RowRules
{
    private const ulong Tension = 1;
    private const ulong Margin = 2;
    private const ulong Placed = 4;
    private const ulong Taut = 8;
    private const ulong DriveBelt = 16;
    private const ulong Motor = 32;
    private const ulong Peak = 64;

    private readonly int[] outputs;
    private readonly ulong[] rules;
    private readonly bool[] known;
    private readonly bool canBrake;

    internal RowRules(in Scenario scenario, IReadOnlyList<Output> wanted)
    {
        outputs = [.. wanted.Select(output => output.Index)];
        rules = [.. wanted.Select(Of)];
        ulong unknown = scenario.Unknown;
        known = [.. Outputs.All.Select(output => (output.Needs & unknown) == 0)];
        canBrake = scenario.CanBrake;
    }

    /// <summary>Status of one wanted output in each of eight cases.</summary>
    internal Vector512<double> Status(int wanted, in MachineNumbers<Lanes> x, in OutputNumbers<Lanes> y)
    {
        ulong rule = rules[wanted];
        Lanes value = NumbersAccess.At(in y, outputs[wanted]);
        Vector512<double> status = Vector512<double>.Zero;
        if ((rule & Motor) != 0)
        {
            status = OfMotor(rule, in x, in y);
        }
        else if ((rule & DriveBelt) != 0)
        {
            Lanes gap = x.PulleyCentreDistance - (0.5 * (x.MotorPulleyDiameter + x.RollerPulleyDiameter));
            status = Where(Lanes.NotLess(0, gap), RowStatus.PartsOverlap, status);
        }
        else if ((rule & Tension) != 0)
        {
            status = Where(Lanes.Less(y.TensionNow, 0), RowStatus.SlackBelt, status);
        }

        if ((rule & Placed) != 0)
        {
            status = Where(Lanes.Less(x.CentreDistance, x.StrikePosition), RowStatus.OutOfRange, status);
        }

        if ((rule & Taut) != 0 && known[Outputs.SlackTension.Index])
        {
            status = Where(Lanes.Less(y.SlackTension, y.CentrifugalTension), RowStatus.SlackBelt, status);
        }

        if ((rule & Margin) != 0)
        {
            status = Where(Lanes.NotLess(y.CentrifugalTension, y.TensionNow), RowStatus.SlackBelt, status);
        }

        Vector512<double> none = Vector512.Equals(status, Vector512<double>.Zero);
        return Where(none & ~Lanes.Finite(value), RowStatus.NoNumber, status);
    }

    private static ulong Of(Output output)
    {
        if (output == Outputs.TensionNow)
        {
            return Tension;
        }

        if (output == Outputs.BeltMargin)
        {
            return Margin | Placed;
        }

        if (output == Outputs.BeltSlide)
        {
            return Placed;
        }

        if (
            output == Outputs.SlackTension
            || output == Outputs.TightTension
            || output == Outputs.DriveRollerHubLoad
            || output == Outputs.TailRollerHubLoad
        )
        {
            return Taut | Placed;
        }

        if (output == Outputs.DriveBeltMargin || output == Outputs.DriveBeltSlide || output == Outputs.MotorHubLoad)
        {
            return DriveBelt;
        }

        return output == Outputs.PeakCurrent ? Motor | Peak
            : output == Outputs.MotorTorque
            || output == Outputs.MeanCurrent
            || output == Outputs.RmsCurrent
            || output == Outputs.MotorVoltage
            || output == Outputs.MainsPower
            || output == Outputs.MainsCurrent
                ? Motor
            : 0;
    }

    /// <summary>The last rule that holds is the first to be told.</summary>
    private Vector512<double> OfMotor(ulong rule, in MachineNumbers<Lanes> x, in OutputNumbers<Lanes> y)
    {
        Vector512<double> status = Vector512<double>.Zero;
        if (known[Outputs.MeanCurrent.Index])
        {
            status = Where(Lanes.Less(x.MotorCurrentLimit, y.MeanCurrent), RowStatus.CurrentLimit, status);
        }

        if (known[Outputs.MotorVoltage.Index])
        {
            status = Where(Lanes.Less(x.MotorVoltageLimit, y.MotorVoltage), RowStatus.MotorCannotReachSpeed, status);
        }

        if (!canBrake && known[Outputs.MotorTorque.Index])
        {
            status = Where(Lanes.Less(y.MotorTorque, -x.MotorFrictionTorque), RowStatus.DriveCannotBrake, status);
        }

        return (rule & Peak) != 0 && known[Outputs.PeakCurrent.Index]
            ? Where(Lanes.Less(x.MotorCurrentLimit, y.PeakCurrent), RowStatus.CurrentLimit, status)
            : status;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> Where(Vector512<double> holds, RowStatus status, Vector512<double> otherwise) =>
        Vector512.ConditionalSelect(holds, Vector512.Create((double)status), otherwise);
}
