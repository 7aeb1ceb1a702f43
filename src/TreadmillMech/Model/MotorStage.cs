using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>The motor and the mains, with the belt's speed held: no flywheel smooths the current here.</summary>
[SkipLocalsInit]
internal static class MotorStage
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static void Run<T>(in MachineNumbers<T> x, ref Workings<T> work, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        y.MotorSpeed = x.BeltSpeed / work.DriveRadius * work.SpeedRatio;
        T torquePerPull = work.DriveRadius / work.SpeedRatio;
        y.MotorTorque = y.MeanPull * torquePerPull;
        y.MeanCurrent = DcMotorLaws.Current(y.MotorTorque, x.MotorFrictionTorque, x.MotorConstant);
        y.PeakCurrent = DcMotorLaws.Current(y.PeakPull * torquePerPull, x.MotorFrictionTorque, x.MotorConstant);
        y.RmsCurrent = DcMotorLaws.RmsCurrent(
            y.MeanCurrent,
            torquePerPull / x.MotorConstant,
            y.MeanPull,
            y.RmsPull * y.RmsPull
        );
        Mains(in x, ref y);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Mains<T>(in MachineNumbers<T> x, ref OutputNumbers<T> y)
        where T : struct, IReal<T>
    {
        y.MotorVoltage = DcMotorLaws.Voltage(
            x.MotorConstant,
            y.MotorSpeed,
            y.MeanCurrent,
            x.ArmatureResistance,
            T.IfLess(y.MeanCurrent, 0, -x.BrushDrop, x.BrushDrop)
        );

        // The ripple of the current heats the winding but gives no mean power to the shaft.
        T ripple = (y.RmsCurrent * y.RmsCurrent) - (y.MeanCurrent * y.MeanCurrent);
        T electrical = (y.MotorVoltage * y.MeanCurrent) + (x.ArmatureResistance * ripple);
        y.MainsPower = SupplyLaws.MainsPower(electrical, x.ControllerEfficiency, x.StandbyPower);
        y.MainsCurrent = SupplyLaws.MainsCurrent(y.MainsPower, x.MainsVoltage, x.PowerFactor);
    }
}
