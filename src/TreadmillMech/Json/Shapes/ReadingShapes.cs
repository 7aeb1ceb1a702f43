using TreadmillMech.Service.Events;
using UnitsNet;
using static TreadmillMech.Json.Shapes.EventWords;

namespace TreadmillMech.Json.Shapes;

/// <summary>Readings of belts, drive and mains, but the currents.</summary>
internal static class ReadingShapes
{
    internal static readonly ObjectShape<WipeReading> Wipe = new(
        "reading-wipe",
        static it =>
        {
            it.Constant("reading", Readings, "wipe");
            ShapeSlot<WipedPlace> place = it.Need("place", WordTables.WipedPlaces, static p => p.Place);
            ShapeSlot<WipedTrace> trace = it.Need("trace", WordTables.Traces, static p => p.Trace);
            Uncertainty(it);
            it.Make(values => new() { Place = values.Get(place), Trace = values.Get(trace) });
        }
    );

    internal static readonly ObjectShape<DriveBeltReading> DriveBelt = new(
        "reading-driveBelt",
        static it =>
        {
            it.Constant("reading", Readings, "driveBelt");
            ShapeSlot<DriveBeltLook> look = it.Need("look", WordTables.Looks, static p => p.Look);
            Uncertainty(it);
            it.Make(values => new() { Look = values.Get(look) });
        }
    );

    internal static readonly ObjectShape<LiftReading> Lift = new(
        "reading-lift",
        static it =>
        {
            it.Constant("reading", Readings, "lift");
            ShapeSlot<Length> height = it.Need("height", JsonKinds.Length, static p => p.Height);
            ShapeSlot<Force> force = it.Need("force", JsonKinds.Force, static p => p.Force);
            it.Set(
                "rollersLocked",
                JsonKinds.Boolean,
                static p => p.RollersLocked,
                static (p, v) => p with { RollersLocked = v }
            );
            Uncertainty(it);
            it.Make(values => new() { Height = values.Get(height), Force = values.Get(force) });
        }
    );

    internal static readonly ObjectShape<PullReading> Pull = new(
        "reading-pull",
        static it =>
        {
            it.Constant("reading", Readings, "pull");
            ShapeSlot<Mass> mass = it.Need("mass", JsonKinds.Mass, static p => p.Mass);
            ShapeSlot<Force> loadedPull = it.Need("loadedPull", JsonKinds.Force, static p => p.LoadedPull);
            ShapeSlot<Force> emptyPull = it.Need("emptyPull", JsonKinds.Force, static p => p.EmptyPull);
            it.Set(
                "motorUncoupled",
                JsonKinds.Boolean,
                static p => p.MotorUncoupled,
                static (p, v) => p with { MotorUncoupled = v },
                "drive belt off while pulling"
            );
            Uncertainty(it);
            it.Make(values =>
                new()
                {
                    Mass = values.Get(mass),
                    LoadedPull = values.Get(loadedPull),
                    EmptyPull = values.Get(emptyPull),
                }
            );
        }
    );

    internal static readonly ObjectShape<LockedPullReading> LockedPull = new(
        "reading-lockedPull",
        static it =>
        {
            it.Constant("reading", Readings, "lockedPull");
            ShapeSlot<Force> pull = it.Need(
                "pull",
                JsonKinds.Force,
                static p => p.Pull,
                "motor held, belt pulled towards the console at the middle of the deck"
            );
            ShapeSlot<SlidContact> slid = it.Need("slid", WordTables.Slid, static p => p.Slid);
            Uncertainty(it);
            it.Make(values => new() { Pull = values.Get(pull), Slid = values.Get(slid) });
        }
    );

    internal static readonly ObjectShape<SpeedReading> Speeds = new(
        "reading-speeds",
        static it =>
        {
            it.Constant("reading", Readings, "speeds");
            ShapeSlot<LoadState> state = it.Need("state", WordTables.States, static p => p.State);
            it.May("motor", JsonKinds.RotationalSpeed, static p => p.Motor, static (p, v) => p with { Motor = v });
            it.May(
                "driveRoller",
                JsonKinds.RotationalSpeed,
                static p => p.DriveRoller,
                static (p, v) => p with { DriveRoller = v }
            );
            it.May("belt", JsonKinds.Speed, static p => p.Belt, static (p, v) => p with { Belt = v });
            it.May("display", JsonKinds.Speed, static p => p.Display, static (p, v) => p with { Display = v });
            Uncertainty(it);
            it.Make(values => new() { State = values.Get(state) });
        }
    );

    internal static readonly ObjectShape<MainsPowerReading> MainsPower = new(
        "reading-mainsPower",
        static it =>
        {
            it.Constant("reading", Readings, "mainsPower");
            ShapeSlot<LoadState> state = it.Need("state", WordTables.States, static p => p.State);
            ShapeSlot<Power> power = it.Need("power", JsonKinds.Power, static p => p.Power);
            ShapeSlot<Speed> beltSpeed = it.Need("beltSpeed", JsonKinds.Speed, static p => p.BeltSpeed);
            it.May("userMass", JsonKinds.Mass, static p => p.UserMass, static (p, v) => p with { UserMass = v });
            Uncertainty(it);
            it.Make(values =>
                new()
                {
                    State = values.Get(state),
                    Power = values.Get(power),
                    BeltSpeed = values.Get(beltSpeed),
                }
            );
        }
    );

    internal static readonly ObjectShape<SlipTestReading> SlipTest = new(
        "reading-slipTest",
        static it =>
        {
            it.Constant("reading", Readings, "slipTest");
            ShapeSlot<bool> slipped = it.Need("slipped", JsonKinds.Boolean, static p => p.Slipped);
            Uncertainty(it);
            it.Make(values => new() { Slipped = values.Get(slipped) });
        }
    );

    internal static readonly ObjectShape<TrackingReading> Tracking = new(
        "reading-tracking",
        static it =>
        {
            it.Constant("reading", Readings, "tracking");
            ShapeSlot<Length> driftToRight = it.Need(
                "driftToRight",
                JsonKinds.Length,
                static p => p.DriftToRight,
                "negative to the left"
            );
            ShapeSlot<int> passes = it.Need("passes", JsonKinds.Count, static p => p.Passes);
            it.Set("state", WordTables.States, static p => p.State, static (p, v) => p with { State = v });
            Uncertainty(it);
            it.Make(values => new() { DriftToRight = values.Get(driftToRight), Passes = values.Get(passes) });
        }
    );
}
