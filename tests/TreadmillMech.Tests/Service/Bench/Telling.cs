using TreadmillMech.Service;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Tests.Service.Bench;

/// <summary>Whether a visit has the readings without which a cause cannot be known.</summary>
internal static class Telling
{
    internal static bool WasRead(Cause cause, Visit visit)
    {
        bool Any<TEvent>(Func<TEvent, bool>? which = null)
            where TEvent : VisitEvent => visit.Events.OfType<TEvent>().Any(which ?? (static _ => true));
        bool Asked(Symptom symptom) => Any<SymptomReading>(s => s.Symptom == symptom);
        bool Wiped(WipedPlace place) => Any<WipeReading>(w => w.Place == place);
        bool Felt(WarmPlace place) => Any<TemperatureReading>(t => t.Place == place);
        bool speeds = Any<SpeedReading>();
        bool slip = speeds || Any<SlipTestReading>();
        bool friction = Any<PullReading>() || Any<MotorCurrentReading>() || Any<MainsPowerReading>();
        return cause switch
        {
            Cause.RunningBeltSlack => slip && Any<LiftReading>(),
            Cause.OilOnDriveRoller => slip && Wiped(WipedPlace.DriveRoller),
            Cause.OverTightened => Any<LiftReading>(),
            Cause.BoltsAtTheirEnd => Any<ThreadReading>(),
            Cause.DriveBeltSlack => speeds && Any<DriveBeltReading>(),
            Cause.DriveBeltGlazed => speeds && Any<DriveBeltReading>(),
            Cause.DriveBeltCracked => Any<DriveBeltReading>(),
            Cause.PulleyLoose => speeds && Asked(Symptom.PulleyMoves),
            Cause.DeckDry => friction && Any<LubricateAction>(),
            Cause.BeltAndDeckWorn => friction && (Any<GrooveReading>() || Asked(Symptom.WornDeck)),
            Cause.OverLubricated => Wiped(WipedPlace.BeltTop),
            Cause.RollerBearing => Felt(WarmPlace.TailRollerBearing) && Asked(Symptom.Rumble),
            Cause.MotorWeak => Felt(WarmPlace.MotorCase) && Asked(Symptom.HotMotor),
            Cause.ControllerLimit => speeds && Asked(Symptom.ShutsOff),
            Cause.SupplyWeak => Any<MainsVoltageReading>(),
            Cause.DriveOverrun => speeds && Asked(Symptom.BeltRunsAway),
            Cause.BeltOffCentre => Any<TrackingReading>(),
            Cause.OutOfCalibration => speeds && Any<InclineReading>(),
            Cause.WrongReading => friction && Any<LiftReading>(),
            _ => true,
        };
    }
}
