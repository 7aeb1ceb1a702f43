using System.Runtime.CompilerServices;
using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Model.Transient;

/// <summary>One step of the person: the gait of the operating point at the belt's speed when the foot lands.</summary>
internal static class StepStage
{
    /// <summary>Slowest gait the relations are asked for [m/s]; an estimate, far below what they were fitted on.</summary>
    internal const double SlowestGait = 0.3;

    /// <summary>The foot that lands at a belt speed, and the time to the next one.</summary>
    internal static void Land(
        in MachineNumbers<Real> machine,
        in MachineKinds kinds,
        double speed,
        out FootNumbers<Real> foot,
        out double stepTime
    )
    {
        MachineNumbers<Real> x = machine;
        x.BeltSpeed = Math.Max(SlowestGait, speed);
        Unsafe.SkipInit(out OutputNumbers<Real> y);
        Unsafe.SkipInit(out Workings<Real> work);
        LoopStage.Run(in x, in kinds, ref work, ref y);
        GaitStage.Run(in x, in kinds, ref work, ref y);
        LoadStage.Run(in x, in kinds, ref work, ref y);
        foot.Strike = 0;
        foot.PerContact = 1 / y.ContactTime;
        foot.Normal = work.NormalAmplitude;
        foot.ThirdHarmonic = work.Stride.ThirdHarmonic;
        foot.Braking = work.Stride.Braking;
        foot.BrakingShare = work.Stride.BrakingShare;
        foot.PushShare = 1;
        foot.StrikeShare = work.Stride.StrikeShare;
        foot.RideShare = work.Stride.RideShare;
        stepTime = work.StepTime;
    }

    /// <summary>Mean normal force of the person, and the force of incline and rails for each newton of it.</summary>
    internal static (double Normal, double Tangential) Weight(in MachineNumbers<Real> x)
    {
        Real normal = GaitLaws.MeanNormalForce(x.PersonMass, x.Incline, x.RailSupport);
        Real along = GaitLaws.MeanTangentialForce(x.PersonMass, x.Incline, x.RailSupport, x.RailForce);
        return (normal, normal.Value > 0 ? along / normal : 0);
    }
}
