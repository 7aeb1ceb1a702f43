using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;

namespace TreadmillMech.Service.Checks;

/// <summary>Torques of a screw [N m], and what they were taken with.</summary>
internal readonly record struct ScrewTorques(
    double NominalDiameter,
    double Thread,
    double Raising,
    double Lowering,
    double Locking
)
{
    internal static Answer<ScrewTorques> Of(ScrewThread thread, double axial, double friction, Collar? collar)
    {
        if (thread is not { NominalDiameter: { } nominal, FlankAngle: { } flank })
        {
            return new Shortfall(Reason.InputUnknown, nameof(ScrewThread.NominalDiameter));
        }

        double diameter = Si.Length.ToSi(nominal);
        double lead = Si.Length.ToSi(thread.Lead);
        double angle = Si.Angle.ToSi(flank);
        double mean = ScrewThreadLaws.PitchDiameter<Real>(diameter, lead);
        double face = collar is null
            ? 0
            : ScrewTorqueLaws.CollarTorque<Real>(axial, Si.Length.ToSi(collar.MeanDiameter), collar.Friction);
        double raising = ScrewTorqueLaws.RaisingTorque<Real>(axial, mean, lead, friction, angle);
        double lowering = ScrewTorqueLaws.LoweringTorque<Real>(axial, mean, lead, friction, angle);
        double locking = ScrewTorqueLaws.LockingRatio<Real>(mean, lead, friction, angle);
        return new ScrewTorques(diameter, raising, raising + face, lowering + face, locking);
    }
}
