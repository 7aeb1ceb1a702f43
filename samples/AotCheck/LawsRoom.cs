using TreadmillMech.Laws;
using TreadmillMech.Numbers;

namespace AotCheck;

/// <summary>Laws by themselves, those that no other room needs, on plain numbers and with a derivative.</summary>
internal static class LawsRoom
{
    internal static void Visit(Report report)
    {
        report.Add("law: loop length [m]", LoopLaws.Length<Real>(0.031, 0.0264, 1.402));
        report.Add("law: pitch diameter [m]", ScrewThreadLaws.PitchDiameter<Real>(0.01, 0.0015));
        report.Add("law: holding pull [N]", TractionLaws.HoldingPull<Real>(1200, 2.57, 0.13));
        report.Add("law: holding back [N]", TractionLaws.HoldingPullBackwards<Real>(1200, 2.57, 0.13));
        report.Add("law: dead weight [N]", TractionLaws.HoldingPullOfDeadWeight<Real>(1200, 2.57));
        report.Add("law: span tension [N]", SpanLaws.TensionFromFrequency<Real>(0.06, 0.19, 140));
        report.Add("law: span frequency [Hz]", SpanLaws.Frequency<Real>(0.06, 0.19, 170));
        report.Add("law: span deflection [N]", SpanLaws.TensionFromDeflection<Real>(20, 0.004, 0.19));
        report.Add("law: lift force [N]", LiftLaws.LiftForce<Real>(800, 4.5e5, 0.03, 1.4, 2.97, 12));
        report.Add("law: edge strain", TakeUpLaws.EdgeStrain<Real>(0.002, 0.5, 0.003, 2.97));
        report.Add("law: drift", TrackingLaws.StringDrift<Real>(0.002, 1.4, 2.97));
        report.Add("law: beam factor", TrackingLaws.BeamFactor<Real>(1.4, 0.5, 0.003));
        report.Add("law: motor speed [rad/s]", DcMotorLaws.Speed<Real>(0.3, 90, 6, 0.8, 2));

        Dual<Real> strain = TrackingLaws.BeamFactor<Dual<Real>>(1.4, 0.5, Dual<Real>.Variable(0.003));
        report.Add("law: beam factor by strain", strain.Slope);
        Dual<Real> humps = GaitLaws.NormalShapePeak(Dual<Real>.Variable(0.4));
        report.Add("law: peak by third harmonic", humps.Slope);
        Dual<Real> lift = LiftLaws.LiftForce(Dual<Real>.Variable(800), 4.5e5, 0.03, 1.4, 2.97, 12);
        report.Add("law: lift force by tension", lift.Slope);
    }
}
