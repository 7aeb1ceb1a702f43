using TreadmillMech.Parts;

namespace TreadmillMech.Service.Events;

/// <summary>Something looked, listened or felt for: found, or found absent.</summary>
public sealed partial record SymptomReading : Reading
{
    /// <summary>What was looked for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not defined.</exception>
    public required Symptom Symptom
    {
        get;
        init => field = Guard.Defined(value);
    }

    /// <summary>Whether it was there.</summary>
    public required bool Present { get; init; }
}
