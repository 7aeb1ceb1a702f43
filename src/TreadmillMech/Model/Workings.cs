using TreadmillMech.Numbers;

namespace TreadmillMech.Model;

/// <summary>What one stage of the model hands to the next.</summary>
internal struct Workings<T>
    where T : struct, IReal<T>
{
    internal T DriveRadius;
    internal T StrandLength;
    internal T TailWrap;
    internal T MassPerLength;
    internal T DriveCompliantLength;
    internal T TailCompliantLength;
    internal T Grip;
    internal T MeanNormalForce;
    internal T NormalAmplitude;
    internal T MeanSharedPull;
    internal T SimilarSpeed;
    internal T StepTime;
    internal T SpeedRatio;
    internal T DriveBeltEffectiveTension;
    internal T DriveBeltGrip;
    internal T DriveBeltGripBackwards;
    internal T BeltOverruns;
    internal StrideNumbers<T> Stride;
}
