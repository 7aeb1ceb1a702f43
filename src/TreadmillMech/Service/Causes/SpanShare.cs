using TreadmillMech.Laws;
using TreadmillMech.Model;
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
    internal static double? AsFound(VisitFacts facts) =>
        facts.Visit.Machine.DriveBelt is { Tension: { } stated } belt
        && Tension(belt, facts.Used<SpanFrequencyReading>().FirstOrDefault()) is { } tension
            ? tension / Si.Force.ToSi(stated)
            : null;

    /// <summary>Tension by the last pitch; null where it is not known, or one that no drive belt has.</summary>
    internal static Force? Now(VisitFacts facts) =>
        facts.Visit.Machine.DriveBelt is { } belt
        && Tension(belt, facts.Used<SpanFrequencyReading>().LastOrDefault()) is { } tension
        && Inputs.DriveBeltTension.Range.Holds(tension)
            ? Si.Force.FromSi(tension)
            : null;

    private static double? Tension(DriveBelt belt, SpanFrequencyReading? reading) =>
        reading is not null && belt.MassPerLength is { } mass && Span(reading, belt).Is(out Length span)
            ? SpanLaws
                .TensionFromFrequency<Real>(
                    Si.MassPerLength.ToSi(mass),
                    Si.Length.ToSi(span),
                    Si.Frequency.ToSi(reading.Frequency)
                )
                .Value
            : null;

    private static Answer<Length> Span(SpanFrequencyReading reading, DriveBelt belt) =>
        reading.Span is { } measured ? measured : DriveBeltGeometry.Of(belt).Then(g => g.Span);
}
