using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Tests.Service;

/// <summary>Events of a visit, said shortly.</summary>
internal static class Happened
{
    internal static WipeReading RollerDry { get; } = Wiped(WipedPlace.DriveRoller, WipedTrace.Dry);

    internal static WipeReading RollerOily { get; } = Wiped(WipedPlace.DriveRoller, WipedTrace.Oil);

    internal static SlipTestReading Slips { get; } = new() { Slipped = true };

    internal static SlipTestReading Holds { get; } = new() { Slipped = false };

    internal static CleanAction Cleaned(CleanedPlace place) => new() { Place = place };

    internal static WipeReading Wiped(WipedPlace place, WipedTrace trace) => new() { Place = place, Trace = trace };

    internal static TakeUpAction Turned(double both) => Turned(both, both);

    internal static TakeUpAction Turned(double left, double right) => new() { LeftTurns = left, RightTurns = right };

    internal static LubricateAction Oiled(double milliliters) => new() { Volume = Volume.FromMilliliters(milliliters) };

    internal static SpeedReading SpeedsEmpty() => Speeds(LoadState.Unloaded, 345, 115, 3);

    /// <summary>Under load the motor droops a little; each belt slips by its share.</summary>
    internal static SpeedReading SpeedsUnder(double drive, double belt) =>
        Speeds(LoadState.Loaded, 340, 340 / 3.0 * (1 - drive), 340 / 345.0 * 3 * (1 - drive) * (1 - belt));

    internal static SpeedReading Speeds(LoadState state, double motor, double roller, double belt) =>
        new()
        {
            State = state,
            Motor = RotationalSpeed.FromRadiansPerSecond(motor),
            DriveRoller = RotationalSpeed.FromRadiansPerSecond(roller),
            Belt = Speed.FromMetersPerSecond(belt),
        };

    internal static LiftReading Lift(double millimeters, double newtons) =>
        new() { Height = Length.FromMillimeters(millimeters), Force = Force.FromNewtons(newtons) };

    internal static PullReading Pull(double friction, double kilograms = 60, double empty = 25) =>
        new()
        {
            Mass = Mass.FromKilograms(kilograms),
            LoadedPull = Force.FromNewtons(empty + (friction * kilograms * 9.80665)),
            EmptyPull = Force.FromNewtons(empty),
        };

    internal static LockedPullReading Locked(double newtons, SlidContact slid) =>
        new() { Pull = Force.FromNewtons(newtons), Slid = slid };

    internal static MainsPowerReading Watts(LoadState state, double watts, double speed = 2) =>
        new()
        {
            State = state,
            Power = Power.FromWatts(watts),
            BeltSpeed = Speed.FromMetersPerSecond(speed),
        };

    internal static MotorCurrentReading Motor(LoadState state, double amperes, double speed = 2) =>
        new()
        {
            State = state,
            Current = ElectricCurrent.FromAmperes(amperes),
            BeltSpeed = Speed.FromMetersPerSecond(speed),
            Form = CurrentForm.Direct,
            Response = MeterResponse.TrueRms,
            Zeroed = true,
        };

    internal static MainsCurrentReading Mains(LoadState state, double amperes, double speed = 2) =>
        new()
        {
            State = state,
            Current = ElectricCurrent.FromAmperes(amperes),
            BeltSpeed = Speed.FromMetersPerSecond(speed),
            Form = CurrentForm.Alternating,
            Response = MeterResponse.TrueRms,
        };

    internal static TrackingReading Drift(double millimeters, int passes) =>
        new() { DriftToRight = Length.FromMillimeters(millimeters), Passes = passes };

    internal static DriveBeltReading Looks(DriveBeltLook look) => new() { Look = look };
}
