using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Events;

/// <summary>Pitch of the drive belt's plucked span, by a phone's microphone, the machine unplugged.</summary>
public sealed partial record SpanFrequencyReading : Reading
{
    /// <summary>Frequency, 5 Hz to 1 kHz.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public required Frequency Frequency
    {
        get;
        init => field = Guard.Within(value, Si.Frequency, 5, 1000);
    }

    /// <summary>Free length of the span, 30 mm to 0.6 m; null for that of the pulleys' geometry.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the range.</exception>
    public Length? Span
    {
        get;
        init => field = Guard.Within(value, Si.Length, 0.03, 0.6);
    }
}
