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
        foot = default;
        Along(in x, in kinds, work.SimilarSpeed, y.ContactTime, ref foot);
        foot.PerContact = 1 / y.ContactTime;
        foot.Normal = work.NormalAmplitude;
        foot.ThirdHarmonic = work.Stride.ThirdHarmonic;
        foot.StrikeShare = work.Stride.StrikeShare;
        foot.RideShare = work.Stride.RideShare;
        stepTime = work.StepTime;
    }

    /// <summary>Braking peak of a foot [N].</summary>
    internal static double BrakingPeak(in FootNumbers<Real> foot) =>
        foot.SecondSine
        * ForeAftLaws.BrakingShapePeak(foot.FourthSine / foot.SecondSine, foot.ThirdSine / foot.SecondSine);

    /// <summary>Gives a foot another braking peak, with the push-off that belongs to it.</summary>
    internal static void BrakeBy(ref FootNumbers<Real> foot, double peak)
    {
        Real factor = peak / BrakingPeak(in foot);
        foot.FirstSine *= factor;
        foot.SecondSine *= factor;
        foot.ThirdSine *= factor;
        foot.FourthSine *= factor;
    }

    /// <summary>Lets a foot brake from strike to toe-off.</summary>
    internal static void BrakeAllAlong(ref FootNumbers<Real> foot, double peak)
    {
        foot.FirstSine = peak;
        foot.SecondSine = 0;
        foot.ThirdSine = 0;
        foot.FourthSine = 0;
    }

    /// <summary>Force along the belt: by its measured impulse, or by the peak where that is given.</summary>
    private static void Along(
        in MachineNumbers<Real> x,
        in MachineKinds kinds,
        Real similarSpeed,
        Real contactTime,
        ref FootNumbers<Real> foot
    )
    {
        bool runs = similarSpeed > GaitStage.RunsAbove(in kinds);
        Real end = runs ? GaitLaws.RunningBrakingShare(similarSpeed) : ForeAftLaws.WalkingBrakingEnd<Real>();
        Real fourth = runs ? 0 : ForeAftLaws.WalkingFourthSine<Real>();
        Real odd = ForeAftLaws.OddSines(end, fourth);
        Real weight = x.PersonMass * Gravity.Standard;
        Real second;
        if (kinds.BrakingPeakGiven)
        {
            second = x.BrakingPeak * weight / ForeAftLaws.BrakingShapePeak(fourth, odd);
        }
        else
        {
            // Times go with the root of the leg's length, and so does an impulse over the weight.
            Real usual = runs
                ? ForeAftLaws.RunningBrakingImpulse(similarSpeed)
                : ForeAftLaws.WalkingBrakingImpulse<Real>();
            Real impulse = usual * weight * x.BeltSpeed / similarSpeed;
            second = ForeAftLaws.SecondSine(impulse, contactTime, ForeAftLaws.BrakingPart(end, fourth, odd));
        }

        foot.FirstSine = -(1.0 / 3.0) * odd * second;
        foot.SecondSine = second;
        foot.ThirdSine = odd * second;
        foot.FourthSine = fourth * second;
    }

    /// <summary>Mean normal force of the person, and the force of incline and rails for each newton of it.</summary>
    internal static (double Normal, double Tangential) Weight(in MachineNumbers<Real> x)
    {
        Real normal = GaitLaws.MeanNormalForce(x.PersonMass, x.Incline, x.RailSupport);
        Real along = GaitLaws.MeanTangentialForce(x.PersonMass, x.Incline, x.RailSupport, x.RailForce);
        return (normal, normal.Value > 0 ? along / normal : 0);
    }
}
