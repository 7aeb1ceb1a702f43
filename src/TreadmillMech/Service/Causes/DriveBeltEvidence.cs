using TreadmillMech.Service.Events;
using TreadmillMech.Service.Review;

namespace TreadmillMech.Service.Causes;

/// <summary>What the drive belt looks and sounds like. Bells and chances: common practice, no source.</summary>
internal static class DriveBeltEvidence
{
    internal static readonly Chance Cracked = Chance.OfAFault(0.01, (Cause.DriveBeltCracked, 0.97));

    internal static readonly Chance Glazed = Chance.OfAFault(
        0.03,
        (Cause.DriveBeltGlazed, 0.93),
        (Cause.DriveBeltSlack, 0.2)
    );

    /// <summary>Logarithm of the tension by the span's pitch over the tension it should have.</summary>
    private static readonly Bell Tension = new(3, 0, 0.2, (Cause.DriveBeltSlack, -0.9, 0.3));

    internal static IEnumerable<Evidence> Of(VisitFacts facts)
    {
        if (facts.Used<DriveBeltReading>().FirstOrDefault() is { } look)
        {
            yield return Cracked.Seen(
                look.Look == DriveBeltLook.Cracked,
                "The drive belt is cracked.",
                "The drive belt shows no cracks."
            );
            if (look.Look != DriveBeltLook.Cracked)
            {
                yield return Glazed.Seen(
                    look.Look == DriveBeltLook.Glazed,
                    "The drive belt is glazed.",
                    "The ribs of the drive belt look sound."
                );
            }
        }

        if (SpanShare.AsFound(facts) is { } ratio)
        {
            yield return Tension.Read(
                Math.Log(ratio),
                2 * facts.Options.SpanPitch.Value,
                $"The drive belt's span rings at {Words.Percent(ratio)} of the tension it should have."
            );
        }
    }
}
