using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;
using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;
using UnitsNet;

namespace TreadmillMech.Service.Causes;

/// <summary>Tension of the drive belt from the pitch of its span, over the tension that the machine states for it.</summary>
internal static class SpanShare
{
    /// <summary>The share; null where pitch, mass, span or stated tension are not known.</summary>
    internal static double? AsFound(VisitFacts facts)
    {
        DriveBelt? belt = facts.Visit.Machine.DriveBelt;
        if (
            belt is not { Tension: { } stated, MassPerLength: { } mass }
            || facts.Used<SpanFrequencyReading>().FirstOrDefault() is not { } reading
            || !Span(reading, belt).Is(out Length span)
        )
        {
            return null;
        }

        double tension = SpanLaws.TensionFromFrequency<Real>(
            Si.MassPerLength.ToSi(mass),
            Si.Length.ToSi(span),
            Si.Frequency.ToSi(reading.Frequency)
        );
        return tension / Si.Force.ToSi(stated);
    }

    private static Answer<Length> Span(SpanFrequencyReading reading, DriveBelt belt) =>
        reading.Span is { } measured ? measured : DriveBeltGeometry.Of(belt).Then(g => g.Span);
}
