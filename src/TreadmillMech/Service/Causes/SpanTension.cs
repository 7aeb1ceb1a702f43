using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>Tension of the drive belt from the pitch of its span, over the tension that the machine states for it.</summary>
internal static class SpanTension
{
    /// <summary>The share; null where pitch, mass or stated tension are not known.</summary>
    internal static double? AsFound(VisitFacts facts)
    {
        DriveBelt? belt = facts.Visit.Machine.DriveBelt;
        if (
            belt is not { Tension: { } stated, MassPerLength: { } mass }
            || facts.Used<SpanFrequencyReading>().FirstOrDefault() is not { } reading
        )
        {
            return null;
        }

        double span = reading.Span is { } measured ? Si.Length.ToSi(measured) : Span(belt);
        double tension = SpanLaws.TensionFromFrequency<Real>(
            Si.MassPerLength.ToSi(mass),
            span,
            Si.Frequency.ToSi(reading.Frequency)
        );
        return tension / Si.Force.ToSi(stated);
    }

    private static double Span(DriveBelt belt)
    {
        double centres = Si.Length.ToSi(belt.CentreDistance);
        Real angle = LoopLaws.StrandAngle<Real>(
            0.5 * Si.Length.ToSi(belt.RollerPulleyDiameter),
            0.5 * Si.Length.ToSi(belt.MotorPulleyDiameter),
            centres
        );
        return LoopLaws.StrandLength<Real>(centres, angle);
    }
}
