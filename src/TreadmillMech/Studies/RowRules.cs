using System.Runtime.CompilerServices;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Studies;

/// <summary>
/// When an output of cases side by side has a number: the rules of <see cref="OperatingPoint"/>, which a test compares.
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

    private readonly ulong[] rules;
    private readonly int[] ruleOf;
    private readonly bool[] known;
    private readonly bool canBrake;

    internal RowRules(in Scenario scenario, IReadOnlyList<Output> wanted)
    {
        ulong[] all = [.. wanted.Select(Of)];
        rules = [.. all.Distinct()];
        ruleOf = [.. all.Select(rule => Array.IndexOf(rules, rule))];
        ulong unknown = scenario.Unknown;
        known = [.. Outputs.All.Select(output => (output.Needs & unknown) == 0)];
        canBrake = scenario.CanBrake;
    }

    /// <summary>How many different rules the wanted outputs have.</summary>
    internal int Count => rules.Length;

    /// <summary>Status by each of the different rules in each case, finite numbers or not.</summary>
    internal unsafe void Fill<T>(in MachineNumbers<T> x, in OutputNumbers<T> y, T* statuses)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        for (int i = 0; i < rules.Length; i++)
        {
            statuses[i] = By(rules[i], in x, in y);
        }
    }

    /// <summary>Status of one wanted output in each case.</summary>
    internal unsafe T Of<T>(int wanted, T* statuses, T value)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        T status = statuses[ruleOf[wanted]];
        return Where(T.Clear(status) & ~T.Finite(value), RowStatus.NoNumber, status);
    }

    private T By<T>(ulong rule, in MachineNumbers<T> x, in OutputNumbers<T> y)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        T status = default;
        if ((rule & Motor) != 0)
        {
            status = OfMotor(rule, in x, in y);
        }
        else if ((rule & DriveBelt) != 0)
        {
            T gap = x.PulleyCentreDistance - (0.5 * (x.MotorPulleyDiameter + x.RollerPulleyDiameter));
            status = Where(T.NotAbove(gap, 0), RowStatus.PartsOverlap, status);
        }
        else if ((rule & Tension) != 0)
        {
            status = Where(T.Below(y.TensionNow, 0), RowStatus.SlackBelt, status);
        }

        if ((rule & Placed) != 0)
        {
            status = Where(T.Below(x.CentreDistance, x.StrikePosition), RowStatus.OutOfRange, status);
        }

        if ((rule & Taut) != 0 && known[Outputs.SlackTension.Index])
        {
            status = Where(T.Below(y.SlackTension, y.CentrifugalTension), RowStatus.SlackBelt, status);
        }

        if ((rule & Margin) != 0)
        {
            status = Where(T.NotAbove(y.TensionNow, y.CentrifugalTension), RowStatus.SlackBelt, status);
        }

        return status;
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
    private T OfMotor<T>(ulong rule, in MachineNumbers<T> x, in OutputNumbers<T> y)
        where T : unmanaged, ILanes<T>, IReal<T>
    {
        T status = default;
        if (known[Outputs.MeanCurrent.Index])
        {
            status = Where(T.Below(x.MotorCurrentLimit, y.MeanCurrent), RowStatus.CurrentLimit, status);
        }

        if (known[Outputs.MotorVoltage.Index])
        {
            status = Where(T.Below(x.MotorVoltageLimit, y.MotorVoltage), RowStatus.MotorCannotReachSpeed, status);
        }

        if (!canBrake && known[Outputs.MotorTorque.Index])
        {
            status = Where(T.Below(y.MotorTorque, -x.MotorFrictionTorque), RowStatus.DriveCannotBrake, status);
        }

        return (rule & Peak) != 0 && known[Outputs.PeakCurrent.Index]
            ? Where(T.Below(x.MotorCurrentLimit, y.PeakCurrent), RowStatus.CurrentLimit, status)
            : status;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Where<T>(T holds, RowStatus status, T otherwise)
        where T : unmanaged, ILanes<T>, IReal<T> => T.Choose(holds, (double)status, otherwise);
}
