using TreadmillMech.Service.Events;

namespace TreadmillMech.Service.Estimation.Joint;

/// <summary>
/// Whether the motor may have lost some of its field, so that its constant is not that of the plate: it is hot,
/// its brushes are short, or it slows down under the user by more than a healthy one.
/// </summary>
internal static class SuspectMotor
{
    internal static bool Of(Visit visit, HashSet<int> refused, VisitOptions options)
    {
        SpeedReading? empty = null;
        for (int i = 0; i < visit.Events.Length; i++)
        {
            if (refused.Contains(i))
            {
                continue;
            }

            switch (visit.Events[i])
            {
                case SymptomReading { Symptom: Symptom.HotMotor, Present: true }:
                case TemperatureReading { Place: WarmPlace.MotorCase or WarmPlace.MotorWinding } warm
                    when OfCase(warm, options) > options.SuspectMotorWarmth.Value:
                case BrushReading brush when IsShort(brush, options):
                    return true;
                case SpeedReading { State: LoadState.Unloaded } unloaded:
                    empty = unloaded;
                    break;
                case SpeedReading { State: LoadState.Loaded } loaded
                    when empty is not null && Droops(empty, loaded, options):
                    return true;
                default:
                    break;
            }
        }

        return false;
    }

    private static bool IsShort(BrushReading brush, VisitOptions options) =>
        Si.Length.ToSi(brush.Left)
        < (brush.Least is { } least ? Si.Length.ToSi(least) : 1e-3 * options.ShortBrush.Value);

    private static double OfCase(TemperatureReading warm, VisitOptions options)
    {
        double rise = Si.Celsius.ToSi(warm.Temperature) - Si.Celsius.ToSi(warm.Air);
        return warm.Place == WarmPlace.MotorWinding ? rise - options.WindingOverCase.Value : rise;
    }

    private static bool Droops(SpeedReading empty, SpeedReading loaded, VisitOptions options) =>
        empty.Motor is { } before
        && loaded.Motor is { } under
        && Si.RotationalSpeed.ToSi(under) < (1 - options.SuspectMotorDroop.Value) * Si.RotationalSpeed.ToSi(before);
}
