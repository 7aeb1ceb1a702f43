using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>During which events of a visit a belt slipped under load: those between two works on belts and rollers.</summary>
internal static class SlippingAt
{
    internal static bool[] Of(Visit visit, HashSet<int> refused, VisitOptions options)
    {
        bool[] slipping = new bool[visit.Events.Length];
        int first = 0;
        bool slips = false;
        SpeedReading? empty = null;
        for (int i = 0; i < slipping.Length; i++)
        {
            switch (visit.Events[i])
            {
                case TakeUpAction { By: TurnedBy.Technician }
                or DriveBeltAction
                or CleanAction { Place: CleanedPlace.Rollers }:
                    Array.Fill(slipping, slips, first, i - first);
                    (first, slips) = (i, false);
                    break;
                case SlipTestReading { Slipped: true }:
                    slips = true;
                    break;
                case SpeedReading { State: LoadState.Unloaded } unloaded when !refused.Contains(i):
                    empty = unloaded;
                    break;
                case SpeedReading { State: LoadState.Loaded } loaded when !refused.Contains(i) && empty is not null:
                    slips |= Shows(SlipLocation.Of(empty, loaded, options));
                    break;
                default:
                    break;
            }
        }

        Array.Fill(slipping, slips, first, slipping.Length - first);
        return slipping;
    }

    private static bool Shows(Answer<SlipLocation> answer) =>
        answer.Is(out SlipLocation? located) && located.Place is not (SlipPlace.Nowhere or SlipPlace.NotTold);
}
