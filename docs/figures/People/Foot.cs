using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace TreadmillMech.Figures.People;

/// <summary>One foot over its stance at a belt speed, forces in body weights, and when the other one lands.</summary>
internal sealed record Foot(
    double DutyFactor,
    double StepFrequency,
    double ThirdHarmonic,
    double BrakingPeak,
    double BrakingShare
)
{
    internal double ContactTime => GaitLaws.ContactTime<Real>(DutyFactor, StepFrequency);

    internal double StepTime => 1 / StepFrequency;

    internal static Foot Walking(double speed) =>
        new(
            GaitLaws.WalkingDutyFactor<Real>(speed),
            GaitLaws.WalkingStepFrequency<Real>(speed),
            GaitLaws.WalkingThirdHarmonic<Real>(speed),
            GaitLaws.BrakingPeak<Real>(speed),
            GaitLaws.WalkingBrakingShare<Real>()
        );

    internal static Foot Running(double speed) =>
        new(
            GaitLaws.RunningDutyFactor<Real>(speed),
            GaitLaws.RunningStepFrequency<Real>(speed),
            GaitLaws.RunningThirdHarmonic<Real>(speed),
            GaitLaws.BrakingPeak<Real>(speed),
            GaitLaws.RunningBrakingShare<Real>(speed)
        );

    /// <summary>Force square to the deck at a time after foot strike, in body weights.</summary>
    internal double Normal(double time) =>
        time < 0 || time > ContactTime
            ? 0
            : GaitLaws.NormalAmplitude<Real>(1, DutyFactor, ThirdHarmonic).Value
                * GaitLaws.NormalShape<Real>(time / ContactTime, ThirdHarmonic).Value;

    /// <summary>Force along the deck at a time after foot strike, in body weights; positive resists the belt.</summary>
    internal double Along(double time) =>
        time < 0 || time > ContactTime
            ? 0
            : BrakingPeak * GaitLaws.ForeAftShape<Real>(time / ContactTime, BrakingShare).Value;
}
