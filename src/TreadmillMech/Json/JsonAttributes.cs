// What says how a type of the library is written as JSON. It is said here and not beside the type, so that parts and
// decisions know nothing of JSON; a context of the user's own finds it all the same.
#pragma warning disable IDE0130 // The types live in the rooms below.
using System.Text.Json.Serialization;
using TreadmillMech.Json;

namespace TreadmillMech
{
    [JsonConverter(typeof(TreadmillJsonConverter<Treadmill>))]
    public sealed partial record Treadmill;

    [JsonConverter(typeof(TreadmillJsonConverter<Demand>))]
    public sealed partial record Demand;

    [JsonConverter(typeof(TreadmillJsonConverter<OperatingPoint>))]
    public readonly partial struct OperatingPoint;

    [JsonConverter(typeof(TreadmillJsonConverter<Shortfall>))]
    public readonly partial record struct Shortfall;
}

namespace TreadmillMech.Parts
{
    [JsonConverter(typeof(TreadmillJsonConverter<RunningBelt>))]
    public sealed partial record RunningBelt;

    [JsonConverter(typeof(TreadmillJsonConverter<Roller>))]
    public sealed partial record Roller;

    [JsonConverter(typeof(TreadmillJsonConverter<TakeUp>))]
    public sealed partial record TakeUp;

    [JsonConverter(typeof(TreadmillJsonConverter<ScrewThread>))]
    public sealed partial record ScrewThread;

    [JsonConverter(typeof(TreadmillJsonConverter<Deck>))]
    public sealed partial record Deck;

    [JsonConverter(typeof(TreadmillJsonConverter<Plate>))]
    public sealed partial record Plate;

    [JsonConverter(typeof(TreadmillJsonConverter<DriveBelt>))]
    public sealed partial record DriveBelt;

    [JsonConverter(typeof(TreadmillJsonConverter<DcMotor>))]
    public sealed partial record DcMotor;

    [JsonConverter(typeof(TreadmillJsonConverter<Supply>))]
    public sealed partial record Supply;

    [JsonConverter(typeof(TreadmillJsonConverter<Person>))]
    public sealed partial record Person;

    [JsonConverter(typeof(TreadmillJsonConverter<Rails>))]
    public sealed partial record Rails;

    [JsonConverter(typeof(TreadmillJsonConverter<Bearing>))]
    public sealed partial record Bearing;

    [JsonConverter(typeof(TreadmillJsonConverter<BoltRod>))]
    public sealed partial record BoltRod;

    [JsonConverter(typeof(TreadmillJsonConverter<Collar>))]
    public sealed partial record Collar;

    [JsonConverter(typeof(TreadmillJsonConverter<DeckBoard>))]
    public sealed partial record DeckBoard;

    [JsonConverter(typeof(TreadmillJsonConverter<RollerTube>))]
    public sealed partial record RollerTube;

    [JsonConverter(typeof(TreadmillJsonConverter<StaticFriction>))]
    public sealed partial record StaticFriction;

    [JsonConverter(typeof(TreadmillJsonConverter<WearPair>))]
    public sealed partial record WearPair;

    [JsonConverter(typeof(TreadmillJsonConverter<Magnets>))]
    public sealed partial record Magnets;

    [JsonConverter(typeof(TreadmillJsonConverter<InductionMotor>))]
    public sealed partial record InductionMotor;

    [JsonConverter(typeof(TreadmillJsonConverter<MotorCooling>))]
    public sealed partial record MotorCooling;

    [JsonConverter(typeof(TreadmillJsonConverter<MotorThermal>))]
    public sealed partial record MotorThermal;

    [JsonConverter(typeof(TreadmillJsonConverter<DeckThermal>))]
    public sealed partial record DeckThermal;

    [JsonConverter(typeof(TreadmillJsonConverter<SpeedController>))]
    public sealed partial record SpeedController;

    [JsonConverter(typeof(TreadmillJsonConverter<DriveDynamics>))]
    public sealed partial record DriveDynamics;
}

namespace TreadmillMech.Service
{
    [JsonConverter(typeof(TreadmillJsonConverter<Visit>))]
    public sealed partial record Visit;

    [JsonConverter(typeof(TreadmillJsonConverter<EarlierVisit>))]
    public sealed partial record EarlierVisit;

    [JsonConverter(typeof(TreadmillJsonConverter<Usage>))]
    public sealed partial record Usage;

    [JsonConverter(typeof(TreadmillJsonConverter<VisitSheet>))]
    public sealed partial record VisitSheet;

    [JsonConverter(typeof(TreadmillJsonConverter<Figure>))]
    public sealed partial record Figure;

    [JsonConverter(typeof(TreadmillJsonConverter<Threshold>))]
    public sealed partial record Threshold;

    [JsonConverter(typeof(TreadmillJsonConverter<NextStep>))]
    public sealed partial record NextStep;

    [JsonConverter(typeof(TreadmillJsonConverter<Finding>))]
    public sealed partial record Finding;

    [JsonConverter(typeof(TreadmillJsonConverter<RankedCause>))]
    public sealed partial record RankedCause;

    [JsonConverter(typeof(TreadmillJsonConverter<DueDate>))]
    public sealed partial record DueDate;

    [JsonConverter(typeof(TreadmillJsonConverter<ReadingRow>))]
    public sealed partial record ReadingRow;

    [JsonConverter(typeof(TreadmillJsonConverter<RefusedReading>))]
    public sealed partial record RefusedReading;

    [JsonConverter(typeof(TreadmillJsonConverter<TensionBudget>))]
    public sealed partial record TensionBudget;

    [JsonConverter(typeof(TreadmillJsonConverter<LadderStep>))]
    public sealed partial record LadderStep;

    [JsonConverter(typeof(TreadmillJsonConverter<ReadingProposal>))]
    public sealed partial record ReadingProposal;
}

namespace TreadmillMech.Service.Estimation
{
    [JsonConverter(typeof(TreadmillJsonConverter<TensionEstimate>))]
    public sealed partial record TensionEstimate;
}

namespace TreadmillMech.Service.Events
{
    [JsonConverter(typeof(TreadmillJsonConverter<VisitEvent>))]
    public abstract partial record VisitEvent;

    [JsonConverter(typeof(TreadmillJsonConverter<WipeReading>))]
    public sealed partial record WipeReading;

    [JsonConverter(typeof(TreadmillJsonConverter<DriveBeltReading>))]
    public sealed partial record DriveBeltReading;

    [JsonConverter(typeof(TreadmillJsonConverter<LiftReading>))]
    public sealed partial record LiftReading;

    [JsonConverter(typeof(TreadmillJsonConverter<PullReading>))]
    public sealed partial record PullReading;

    [JsonConverter(typeof(TreadmillJsonConverter<LockedPullReading>))]
    public sealed partial record LockedPullReading;

    [JsonConverter(typeof(TreadmillJsonConverter<SpeedReading>))]
    public sealed partial record SpeedReading;

    [JsonConverter(typeof(TreadmillJsonConverter<MainsPowerReading>))]
    public sealed partial record MainsPowerReading;

    [JsonConverter(typeof(TreadmillJsonConverter<SlipTestReading>))]
    public sealed partial record SlipTestReading;

    [JsonConverter(typeof(TreadmillJsonConverter<TrackingReading>))]
    public sealed partial record TrackingReading;

    [JsonConverter(typeof(TreadmillJsonConverter<PassesReading>))]
    public sealed partial record PassesReading;

    [JsonConverter(typeof(TreadmillJsonConverter<SpanFrequencyReading>))]
    public sealed partial record SpanFrequencyReading;

    [JsonConverter(typeof(TreadmillJsonConverter<MarksReading>))]
    public sealed partial record MarksReading;

    [JsonConverter(typeof(TreadmillJsonConverter<ThreadReading>))]
    public sealed partial record ThreadReading;

    [JsonConverter(typeof(TreadmillJsonConverter<BoltReading>))]
    public sealed partial record BoltReading;

    [JsonConverter(typeof(TreadmillJsonConverter<GrooveReading>))]
    public sealed partial record GrooveReading;

    [JsonConverter(typeof(TreadmillJsonConverter<TemperatureReading>))]
    public sealed partial record TemperatureReading;

    [JsonConverter(typeof(TreadmillJsonConverter<CoastDownReading>))]
    public sealed partial record CoastDownReading;

    [JsonConverter(typeof(TreadmillJsonConverter<BrushReading>))]
    public sealed partial record BrushReading;

    [JsonConverter(typeof(TreadmillJsonConverter<MainsVoltageReading>))]
    public sealed partial record MainsVoltageReading;

    [JsonConverter(typeof(TreadmillJsonConverter<InclineReading>))]
    public sealed partial record InclineReading;

    [JsonConverter(typeof(TreadmillJsonConverter<LevelReading>))]
    public sealed partial record LevelReading;

    [JsonConverter(typeof(TreadmillJsonConverter<SymptomReading>))]
    public sealed partial record SymptomReading;

    [JsonConverter(typeof(TreadmillJsonConverter<MotorCurrentReading>))]
    public sealed partial record MotorCurrentReading;

    [JsonConverter(typeof(TreadmillJsonConverter<MainsCurrentReading>))]
    public sealed partial record MainsCurrentReading;

    [JsonConverter(typeof(TreadmillJsonConverter<TakeUpAction>))]
    public sealed partial record TakeUpAction;

    [JsonConverter(typeof(TreadmillJsonConverter<CleanAction>))]
    public sealed partial record CleanAction;

    [JsonConverter(typeof(TreadmillJsonConverter<LubricateAction>))]
    public sealed partial record LubricateAction;

    [JsonConverter(typeof(TreadmillJsonConverter<DriveBeltAction>))]
    public sealed partial record DriveBeltAction;
}
