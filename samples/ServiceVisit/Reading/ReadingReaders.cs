using TreadmillMech.Service.Events;
using UnitsNet;

namespace TreadmillMech.Samples.ServiceVisit.Reading;

/// <summary>The readings that are not currents, one reader each.</summary>
internal static class ReadingReaders
{
    internal static VisitEvent? Lift(ObjectReader fields)
    {
        Length height = fields.Need("height", Kinds.Length);
        Force force = fields.Need("force", Kinds.Force);
        LiftReading? reading = fields.Make(() => new LiftReading { Height = height, Force = force });
        return fields.Set(reading, "rollersLocked", Kinds.Boolean, static (it, v) => it with { RollersLocked = v });
    }

    internal static VisitEvent? MainsPower(ObjectReader fields)
    {
        LoadState state = fields.Need("state", WordTables.States.Kind);
        Power power = fields.Need("power", Kinds.Power);
        Speed speed = fields.Need("beltSpeed", Kinds.Speed);
        MainsPowerReading? reading = fields.Make(() =>
            new MainsPowerReading
            {
                State = state,
                Power = power,
                BeltSpeed = speed,
            }
        );
        return fields.Set(reading, "userMass", Kinds.Mass, static (it, v) => it with { UserMass = v });
    }

    internal static VisitEvent? Pull(ObjectReader fields)
    {
        Mass mass = fields.Need("mass", Kinds.Mass);
        Force loaded = fields.Need("loadedPull", Kinds.Force);
        Force empty = fields.Need("emptyPull", Kinds.Force);
        PullReading? reading = fields.Make(() =>
            new PullReading
            {
                Mass = mass,
                LoadedPull = loaded,
                EmptyPull = empty,
            }
        );
        return fields.Set(reading, "motorUncoupled", Kinds.Boolean, static (it, v) => it with { MotorUncoupled = v });
    }

    internal static VisitEvent? LockedPull(ObjectReader fields)
    {
        Force pull = fields.Need("pull", Kinds.Force);
        SlidContact slid = fields.Need("slid", WordTables.Slid.Kind);
        return fields.Make(() => new LockedPullReading { Pull = pull, Slid = slid });
    }

    internal static VisitEvent? SlipTest(ObjectReader fields)
    {
        bool slipped = fields.Need("slipped", Kinds.Boolean);
        return fields.Make(() => new SlipTestReading { Slipped = slipped });
    }

    internal static VisitEvent? Speeds(ObjectReader fields)
    {
        LoadState state = fields.Need("state", WordTables.States.Kind);
        SpeedReading? reading = fields.Make(() => new SpeedReading { State = state });
        reading = fields.Set(reading, "motor", Kinds.RotationalSpeed, static (it, v) => it with { Motor = v });
        reading = fields.Set(
            reading,
            "driveRoller",
            Kinds.RotationalSpeed,
            static (it, v) => it with { DriveRoller = v }
        );
        reading = fields.Set(reading, "belt", Kinds.Speed, static (it, v) => it with { Belt = v });
        return fields.Set(reading, "display", Kinds.Speed, static (it, v) => it with { Display = v });
    }

    internal static VisitEvent? Tracking(ObjectReader fields)
    {
        Length drift = fields.Need("driftToRight", Kinds.Length);
        int passes = fields.Need("passes", Kinds.Count);
        TrackingReading? reading = fields.Make(() => new TrackingReading { DriftToRight = drift, Passes = passes });
        return fields.Set(reading, "state", WordTables.States.Kind, static (it, v) => it with { State = v });
    }

    internal static VisitEvent? Wipe(ObjectReader fields)
    {
        WipedPlace place = fields.Need("place", WordTables.WipedPlaces.Kind);
        WipedTrace trace = fields.Need("trace", WordTables.Traces.Kind);
        return fields.Make(() => new WipeReading { Place = place, Trace = trace });
    }

    internal static VisitEvent? DriveBelt(ObjectReader fields)
    {
        DriveBeltLook look = fields.Need("look", WordTables.Looks.Kind);
        return fields.Make(() => new DriveBeltReading { Look = look });
    }
}
