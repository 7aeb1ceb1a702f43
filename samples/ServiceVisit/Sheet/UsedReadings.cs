using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Samples.ServiceVisit.Sheet;

/// <summary>The readings of a visit that its sheet used.</summary>
internal static class UsedReadings
{
    /// <summary>Those of a kind, with their places among the events.</summary>
    internal static IEnumerable<(int At, TReading Reading)> Of<TReading>(Visit visit, VisitSheet sheet)
        where TReading : VisitEvent
    {
        for (int i = 0; i < visit.Events.Length; i++)
        {
            if (visit.Events[i] is TReading reading && sheet.Refused.All(refused => refused.Event != i))
            {
                yield return (i, reading);
            }
        }
    }
}
