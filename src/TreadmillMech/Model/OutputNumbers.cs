using System.Runtime.InteropServices;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>What the model computes, as plain numbers in SI units.</summary>
/// <typeparam name="T">Number type.</typeparam>
/// <remarks>A new output is one field here and one line in <see cref="Outputs"/>, in the same place; a test keeps them in step.</remarks>
[StructLayout(LayoutKind.Sequential)]
public struct OutputNumbers<T>
    where T : struct, IReal<T>
{
    /// <summary>Length of the running belt's loop [m].</summary>
    public T LoopLength;

    /// <summary>Wrap of the running belt on the drive roller [rad].</summary>
    public T DriveRollerWrap;

    /// <summary>Step frequency, both feet counted [Hz].</summary>
    public T StepFrequencyUsed;

    /// <summary>Share of a stride that one foot is on the belt [1].</summary>
    public T DutyFactor;

    /// <summary>Time one foot stays on the belt [s].</summary>
    public T ContactTime;

    /// <summary>Largest force of one foot square to the deck [N].</summary>
    public T PeakFootForce;

    /// <summary>Mean pull of the drive roller on the belt [N].</summary>
    public T MeanPull;

    /// <summary>Largest pull over the stride [N].</summary>
    public T PeakPull;

    /// <summary>Least pull over the stride; negative where the user drives the belt [N].</summary>
    public T LeastPull;

    /// <summary>Root mean square of the pull over the stride [N].</summary>
    public T RmsPull;

    /// <summary>Mean power of friction between belt and deck [W].</summary>
    public T DeckFrictionPower;

    /// <summary>Mean power of the drive roller on the belt [W].</summary>
    public T PullPower;

    /// <summary>Strand tension at rest, with the turns given [N].</summary>
    public T TensionNow;

    /// <summary>Centrifugal part of the strand tension [N].</summary>
    public T CentrifugalTension;

    /// <summary>Tension of the slack side at the worst phase of the stride [N].</summary>
    public T SlackTension;

    /// <summary>Tension of the tight side at the worst phase of the stride [N].</summary>
    public T TightTension;

    /// <summary>Least grip over demand of the running belt over the stride [1].</summary>
    public T BeltMargin;

    /// <summary>Slide of the running belt on its roller in one step [m].</summary>
    public T BeltSlide;

    /// <summary>Mean load of the running belt on the drive roller's hubs, both together [N].</summary>
    public T DriveRollerHubLoad;

    /// <summary>Mean load of the running belt on the undriven roller's hubs, both together [N].</summary>
    public T TailRollerHubLoad;

    /// <summary>Least grip over demand of the drive belt over the stride [1].</summary>
    public T DriveBeltMargin;

    /// <summary>Slide of the drive belt in one step, as travel of the running belt [m].</summary>
    public T DriveBeltSlide;

    /// <summary>Mean load of the drive belt on the motor's shaft [N].</summary>
    public T MotorHubLoad;

    /// <summary>Speed of the motor [rad/s].</summary>
    public T MotorSpeed;

    /// <summary>Mean torque at the motor's shaft [N m].</summary>
    public T MotorTorque;

    /// <summary>Mean armature current [A].</summary>
    public T MeanCurrent;

    /// <summary>Largest armature current over the stride [A].</summary>
    public T PeakCurrent;

    /// <summary>Root mean square of the armature current [A].</summary>
    public T RmsCurrent;

    /// <summary>Mean voltage at the motor's terminals [V].</summary>
    public T MotorVoltage;

    /// <summary>Mean power from the mains [W].</summary>
    public T MainsPower;

    /// <summary>Mean current from the mains [A].</summary>
    public T MainsCurrent;

    /// <summary>Notices, one bit a row of the table of ranges, as a number [1].</summary>
    public T NoticeBits;
}
