using TreadmillMech.Service.Events;
using UnitsNet;
using static TreadmillMech.Samples.ServiceVisit.Printing.EventText;
using AnyReading = TreadmillMech.Service.Events.Reading;

namespace TreadmillMech.Samples.ServiceVisit.Printing;

/// <summary>Each reading of a visit as one line, for the record.</summary>
internal static class ReadingText
{
    internal static string Of(AnyReading reading) =>
        reading switch
        {
            WipeReading wipe =>
                $"Cloth drawn over {Words.Spaced(wipe.Place.ToString())}: {Words.Spaced(wipe.Trace.ToString())}",
            DriveBeltReading look => $"Drive belt looks {Words.Spaced(look.Look.ToString())}",
            SymptomReading symptom =>
                $"Looked for {Words.Spaced(symptom.Symptom.ToString())}: {(symptom.Present ? "there" : "not there")}",
            BoltReading bolts => $"Bolts turn: {Words.Spaced(bolts.Feel.ToString())}",
            SlipTestReading test => $"Slip test: {(test.Slipped ? "it gave way" : "it held")}",
            LiftReading lift =>
                $"Lift of {Show(lift.Height)}: {Show(lift.Force)}{(lift.RollersLocked ? ", rollers locked" : "")}",
            PullReading pull =>
                $"Pull with {Show(pull.Mass.Kilograms, "kg")}: {Show(pull.LoadedPull)}, empty {Show(pull.EmptyPull)}"
                    + (pull.MotorUncoupled ? ", motor uncoupled" : ""),
            LockedPullReading locked =>
                $"Locked pull: {Show(locked.Pull)}, slid: {Words.Spaced(locked.Slid.ToString())}",
            TrackingReading tracking =>
                $"Drift to the right: {Show(tracking.DriftToRight)} in {Show(tracking.Passes, "passes")}, {Show(tracking.State)}",
            _ => OfSpeed(reading) ?? OfPower(reading) ?? OfPart(reading),
        };

    private static string? OfSpeed(AnyReading reading) =>
        reading switch
        {
            SpeedReading speeds => $"Speeds, {Show(speeds.State)}"
                + Part("motor", speeds.Motor)
                + Part("drive roller", speeds.DriveRoller)
                + Part("belt", speeds.Belt)
                + Part("display", speeds.Display),
            PassesReading passes =>
                $"Passes, {Show(passes.State)}: {Show(passes.Passes, "passes")} in {Show(passes.Time.Seconds, "s")}"
                    + Part("display", passes.Display),
            CoastDownReading coast => $"Coast-down from {Show(coast.From)}: {Show(coast.Time.Seconds, "s")}",
            _ => null,
        };

    private static string? OfPower(AnyReading reading) =>
        reading switch
        {
            MotorCurrentReading motor =>
                $"Motor current, {Show(motor.State)}, at {Show(motor.BeltSpeed)}: {Show(motor.Current.Amperes, "A")}"
                    + (motor.Voltage is { } volts ? $", {Show(volts.Volts, "V")}" : "")
                    + Part("motor", motor.MotorSpeed),
            MainsCurrentReading mains =>
                $"Mains current, {Show(mains.State)}, at {Show(mains.BeltSpeed)}: {Show(mains.Current.Amperes, "A")}",
            MainsPowerReading power =>
                $"Mains power, {Show(power.State)}, at {Show(power.BeltSpeed)}: {Show((double)power.Power.Watts, "W")}",
            MainsVoltageReading volts => $"Mains voltage, {Show(volts.State)}: {Show(volts.Voltage.Volts, "V")}",
            TemperatureReading warm =>
                $"Temperature of {Words.Spaced(warm.Place.ToString())}: {Show(warm.Temperature.DegreesCelsius, "°C")}, "
                    + $"air {Show(warm.Air.DegreesCelsius, "°C")}",
            _ => null,
        };

    private static string OfPart(AnyReading reading) =>
        reading switch
        {
            SpanFrequencyReading span => $"Pitch of the drive belt's span: {Show(span.Frequency.Hertz, "Hz")}"
                + (span.Span is { } length ? $", span {Show(length)}" : ""),
            MarksReading marks =>
                $"Marks on the running belt: {Show(marks.Distance)}, as fitted {Show(marks.AsFitted)}",
            ThreadReading thread => $"Thread left: {Show(thread.Left)}",
            GrooveReading groove => $"Groove in the deck: {Show(groove.Depth)}",
            BrushReading brush =>
                $"Shortest brush: {Show(brush.Left)}{(brush.Least is { } least ? $", at least {Show(least)} by the maker" : "")}",
            InclineReading incline => $"Incline: {Show(incline.Measured)}, display {Show(incline.Display)}",
            LevelReading level => $"Slope across, right side high: {Show(level.Across)}",
            _ => "A reading without words here",
        };

    private static string Part(string name, Speed? speed) => speed is { } value ? $", {name} {Show(value)}" : "";

    private static string Part(string name, RotationalSpeed? speed) =>
        speed is { } value ? $", {name} {Show(value)}" : "";
}
