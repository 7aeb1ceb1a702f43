using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// Whether the drive belt may have left what the machine was described with: it slipped or may have, or looks it. What is
/// stated of it is what it should have, and a belt that slips has something else.
/// </summary>
internal static class SuspectDriveBelt
{
    internal static bool Of(Visit visit, HashSet<int> refused, VisitOptions options)
    {
        bool tested = false;
        bool looks = false;
        SpeedReading? empty = null;
        bool? located = null;
        for (int i = 0; i < visit.Events.Length && visit.Events[i] is not DriveBeltAction; i++)
        {
            switch (visit.Events[i])
            {
                case var happened when refused.Contains(i):
                    break;
                case SlipTestReading { Slipped: true }:
                    tested = true;
                    break;
                case DriveBeltReading look:
                    looks = look.Look != DriveBeltLook.Sound;
                    break;
                case SymptomReading { Present: true, Symptom: Symptom.PulleyMoves or Symptom.HighSqueal }:
                    looks = true;
                    break;
                case SpeedReading { State: LoadState.Unloaded } unloaded:
                    empty = unloaded;
                    break;
                case SpeedReading { State: LoadState.Loaded } loaded when empty is not null:
                    located = Slips(SlipLocation.Of(empty, loaded, options), options) ?? located;
                    break;
                default:
                    break;
            }
        }

        return looks || (located ?? tested);
    }

    private static bool? Slips(Answer<SlipLocation> answer, VisitOptions options) =>
        answer.Is(out SlipLocation? located) && located.DriveBelt.Is(out Estimate<double> slip)
            ? slip.Value > options.Slip.Value
            : null;
}
