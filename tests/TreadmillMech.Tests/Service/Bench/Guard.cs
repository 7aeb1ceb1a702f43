using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>What must be read before a sheet may advise to tighten both bolts, looked up in the visit itself.</summary>
internal static class Guard
{
    internal static bool Broken(Visit visit, VisitSheet sheet)
    {
        if (!sheet.AdvisesATurnOfBoth())
        {
            return false;
        }

        bool wiped = visit.Events.OfType<WipeReading>().Any(w => w.Place == WipedPlace.DriveRoller);
        bool judged =
            visit.Machine.DriveBelt is null
            || visit.Events.OfType<SpeedReading>().Count(s => s is { Motor: not null, DriveRoller: not null }) >= 2;
        bool reference = visit.Events.Any(e => e is LiftReading or SlipTestReading);
        bool hard = visit.Events.OfType<BoltReading>().LastOrDefault()?.Feel == BoltFeel.Hard;
        return !wiped || !judged || !reference || hard;
    }
}
