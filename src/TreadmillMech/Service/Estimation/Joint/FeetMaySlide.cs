using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// During which events of a visit the top of the running belt carried lubricant, or may have: feet slide on it then, and a
/// test in which somebody feels something give way is no reading of a belt on its rollers.
/// </summary>
/// <remarks>
/// A cloth over the top tells. Where none was taken, lubricant on the drive roller or much of it underneath leaves it open,
/// as it comes from too much of it as well as from a leak. Cleaning the top ends it.
/// </remarks>
internal static class FeetMaySlide
{
    internal static bool[] Of(Visit visit)
    {
        bool[] slide = new bool[visit.Events.Length];
        int first = 0;
        for (int i = 0; i <= slide.Length; i++)
        {
            if (i == slide.Length || visit.Events[i] is CleanAction { Place: CleanedPlace.BeltTop })
            {
                Array.Fill(slide, On(visit.Events.AsSpan()[first..i], cleaned: first > 0), first, i - first);
                first = i;
            }
        }

        return slide;
    }

    private static bool On(ReadOnlySpan<VisitEvent> events, bool cleaned)
    {
        bool elsewhere = false;
        bool? top = cleaned ? false : null;
        foreach (VisitEvent happened in events)
        {
            switch (happened)
            {
                case WipeReading { Place: WipedPlace.BeltTop } wipe:
                    top = wipe.Trace is WipedTrace.Oil or WipedTrace.Film || (top == true);
                    break;
                case WipeReading { Place: WipedPlace.DriveRoller, Trace: WipedTrace.Oil or WipedTrace.Film }
                or WipeReading { Place: WipedPlace.BeltUnderside, Trace: WipedTrace.Oil }:
                    elsewhere = true;
                    break;
                default:
                    break;
            }
        }

        return top ?? elsewhere;
    }
}
