using TreadmillMech.Parts;
using TreadmillMech.Service.Events;

namespace TreadmillMech.Json.Shapes;

/// <summary>All words of a visit file that stand for one of a few kinds.</summary>
internal static class WordTables
{
    internal static readonly WordTable<DriveEnd> Ends = new(("front", DriveEnd.Front), ("rear", DriveEnd.Rear));
    internal static readonly WordTable<SpeedSensor> SpeedSensors = new(
        ("motor", SpeedSensor.Motor),
        ("drive roller", SpeedSensor.DriveRoller),
        ("belt", SpeedSensor.Belt)
    );
    internal static readonly WordTable<Gait> Gaits = new(
        ("by speed", Gait.BySpeed),
        ("walking", Gait.Walking),
        ("running", Gait.Running)
    );
    internal static readonly WordTable<Tensioning> Tensionings = new(
        ("fixed centres", Tensioning.FixedCentres),
        ("sliding motor", Tensioning.SlidingMotor),
        ("stretch fit", Tensioning.StretchFit),
        ("sprung motor", Tensioning.SprungMotor),
        ("slack-side idler", Tensioning.SlackSideIdler),
        ("tight-side idler", Tensioning.TightSideIdler)
    );
    internal static readonly WordTable<SlidContact> Slid = new(
        ("nothing", SlidContact.Nothing),
        ("running belt", SlidContact.RunningBelt),
        ("drive belt", SlidContact.DriveBelt)
    );
    internal static readonly WordTable<LoadState> States = new(
        ("unloaded", LoadState.Unloaded),
        ("loaded", LoadState.Loaded)
    );
    internal static readonly WordTable<MeterPlace> MeterPlaces = new(
        ("motor lead", MeterPlace.MotorLead),
        ("mains lead", MeterPlace.MainsLead)
    );
    internal static readonly WordTable<CurrentForm> Forms = new(
        ("direct", CurrentForm.Direct),
        ("alternating", CurrentForm.Alternating)
    );
    internal static readonly WordTable<MeterResponse> Responses = new(
        ("true RMS", MeterResponse.TrueRms),
        ("averaging", MeterResponse.Averaging)
    );
    internal static readonly WordTable<WipedPlace> WipedPlaces = new(
        ("drive roller", WipedPlace.DriveRoller),
        ("belt underside", WipedPlace.BeltUnderside),
        ("belt top", WipedPlace.BeltTop)
    );
    internal static readonly WordTable<WipedTrace> Traces = new(
        ("dry", WipedTrace.Dry),
        ("dust", WipedTrace.Dust),
        ("film", WipedTrace.Film),
        ("oil", WipedTrace.Oil)
    );
    internal static readonly WordTable<DriveBeltLook> Looks = new(
        ("sound", DriveBeltLook.Sound),
        ("glazed", DriveBeltLook.Glazed),
        ("cracked", DriveBeltLook.Cracked)
    );
    internal static readonly WordTable<CleanedPlace> CleanedPlaces = new(
        ("deck", CleanedPlace.Deck),
        ("rollers", CleanedPlace.Rollers),
        ("belt top", CleanedPlace.BeltTop)
    );

    internal static readonly WordTable<BoltFeel> BoltFeels = new(
        ("even", BoltFeel.Even),
        ("hard", BoltFeel.Hard),
        ("loose", BoltFeel.Loose)
    );
    internal static readonly WordTable<TurnedBy> Turners = new(
        ("technician", TurnedBy.Technician),
        ("somebody before", TurnedBy.SomebodyBefore)
    );
    internal static readonly WordTable<WarmPlace> WarmPlaces = new(
        ("motor case", WarmPlace.MotorCase),
        ("motor winding", WarmPlace.MotorWinding),
        ("drive roller bearing", WarmPlace.DriveRollerBearing),
        ("tail roller bearing", WarmPlace.TailRollerBearing),
        ("deck", WarmPlace.Deck),
        ("mains plug", WarmPlace.MainsPlug)
    );
    internal static readonly WordTable<Symptom> Symptoms = new(
        ("high squeal", Symptom.HighSqueal),
        ("rumble", Symptom.Rumble),
        ("knock each turn", Symptom.KnockEachTurn),
        ("burnt rubber", Symptom.BurntRubber),
        ("hot motor", Symptom.HotMotor),
        ("glazed underside", Symptom.GlazedUnderside),
        ("worn deck", Symptom.WornDeck),
        ("pulley moves", Symptom.PulleyMoves),
        ("hunting", Symptom.Hunting),
        ("shuts off", Symptom.ShutsOff),
        ("lights dim", Symptom.LightsDim),
        ("belt runs away", Symptom.BeltRunsAway),
        ("curled edge", Symptom.CurledEdge)
    );

    internal static readonly WordTable<RibSection> Sections = new(
        ("PH", RibSection.PH),
        ("PJ", RibSection.PJ),
        ("PK", RibSection.PK),
        ("PL", RibSection.PL),
        ("PM", RibSection.PM)
    );
    internal static readonly WordTable<TubeMaterial> TubeMaterials = new(
        ("unknown", TubeMaterial.Unknown),
        ("steel", TubeMaterial.Steel),
        ("aluminium", TubeMaterial.Aluminium)
    );

    /// <summary>Whether the drive belt was replaced.</summary>
    internal static readonly WordTable<bool> DriveBeltWork = new(("tensioned", false), ("replaced", true));
}
