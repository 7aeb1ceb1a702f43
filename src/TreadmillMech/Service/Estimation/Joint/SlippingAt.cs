using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// How probable it is that somebody slipped while a load was read, by event: 1 where slip was found between the same two
/// works on belts and rollers, 0 where a test held, and as likely as not where nobody tested.
/// </summary>
internal static class SlippingAt
{
    private const double Untested = 0.5;

    /// <param name="visit">The visit.</param>
    /// <param name="refused">Readings that are not used.</param>
    /// <param name="feetMaySlide">By event, whether lubricant on the belt's top lets feet slide: now and then a test holds.</param>
    /// <param name="options">From which slip on a belt slips.</param>
    internal static double[] Of(Visit visit, HashSet<int> refused, bool[] feetMaySlide, VisitOptions options)
    {
        double[] slipping = new double[visit.Events.Length];
        int first = 0;
        bool? slips = null;
        bool pulley = false;
        SpeedReading? empty = null;
        for (int i = 0; i < slipping.Length; i++)
        {
            switch (visit.Events[i])
            {
                case TakeUpAction { By: TurnedBy.Technician }
                or DriveBeltAction
                or CleanAction { Place: CleanedPlace.Rollers }:
                    Fill(i);
                    break;
                case SlipTestReading test:
                    slips = slips == true || test.Slipped;
                    break;
                case SymptomReading { Symptom: Symptom.PulleyMoves, Present: true }:
                    pulley = true;
                    break;
                case SpeedReading { State: LoadState.Unloaded } unloaded when !refused.Contains(i):
                    empty = unloaded;
                    break;
                case SpeedReading { State: LoadState.Loaded } loaded when !refused.Contains(i) && empty is not null:
                    slips = Shows(SlipLocation.Of(empty, loaded, options)) is { } shown
                        ? slips == true || shown
                        : slips;
                    break;
                default:
                    break;
            }
        }

        Fill(slipping.Length);
        return slipping;

        void Fill(int end)
        {
            for (int j = first; j < end; j++)
            {
                slipping[j] = (slips, feetMaySlide[j]) switch
                {
                    (true, _) => 1,
                    (false, false) => 0,
                    (null, _) when pulley => 1,
                    _ => Untested,
                };
            }

            (first, slips, pulley) = (end, null, false);
        }
    }

    /// <summary>Whether speeds show slip; null where they do not tell.</summary>
    private static bool? Shows(Answer<SlipLocation> answer) =>
        answer.Is(out SlipLocation? located) && located.Place != SlipPlace.NotTold
            ? located.Place != SlipPlace.Nowhere
            : null;
}
