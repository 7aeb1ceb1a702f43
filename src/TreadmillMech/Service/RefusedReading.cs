using System.Globalization;

namespace TreadmillMech.Service;

/// <summary>A reading that was not used, and why.</summary>
/// <param name="Event">Its place among the events of the visit, from 0.</param>
/// <param name="Name">What kind of reading it is.</param>
/// <param name="Why">Why it cannot be used, and what to do instead.</param>
public sealed partial record RefusedReading(int Event, string Name, string Why)
{
    /// <summary>The reading and why it was not used; events are counted from 1.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"event {Event + 1}, {Name}: {Why}");
}
