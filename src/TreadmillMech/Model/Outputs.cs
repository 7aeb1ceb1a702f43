namespace TreadmillMech.Model;

/// <summary>The table of outputs: every study, file and document takes names and units from here.</summary>
public static class Outputs
{
    private static readonly List<Output> Table = [];

    /// <summary>Length of the running belt's loop.</summary>
    public static Output LoopLength { get; } = Add(nameof(LoopLength), "L", "m", "Length of the running belt's loop");

    /// <summary>Wrap of the running belt on the drive roller.</summary>
    public static Output DriveRollerWrap { get; } =
        Add(nameof(DriveRollerWrap), "theta_1", "rad", "Wrap of the running belt on the drive roller");

    /// <summary>Step frequency, both feet counted.</summary>
    public static Output StepFrequencyUsed { get; } =
        Add(nameof(StepFrequencyUsed), "f", "Hz", "Step frequency, both feet counted");

    /// <summary>Share of a stride that one foot is on the belt.</summary>
    public static Output DutyFactor { get; } =
        Add(nameof(DutyFactor), "beta", "1", "Share of a stride that one foot is on the belt");

    /// <summary>Time one foot stays on the belt.</summary>
    public static Output ContactTime { get; } = Add(nameof(ContactTime), "t_c", "s", "Time one foot stays on the belt");

    /// <summary>Largest force of one foot square to the deck.</summary>
    public static Output PeakFootForce { get; } =
        Add(nameof(PeakFootForce), "N_1", "N", "Largest force of one foot square to the deck");

    /// <summary>Mean pull of the drive roller on the belt.</summary>
    public static Output MeanPull { get; } =
        Add(
            nameof(MeanPull),
            "F",
            "N",
            "Mean pull of the drive roller on the belt",
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Largest pull over the stride.</summary>
    public static Output PeakPull { get; } =
        Add(nameof(PeakPull), "F_max", "N", "Largest pull over the stride", Inputs.DeckFriction, Inputs.BeltDrag);

    /// <summary>Least pull over the stride; negative where the user drives the belt.</summary>
    public static Output LeastPull { get; } =
        Add(
            nameof(LeastPull),
            "F_min",
            "N",
            "Least pull over the stride; negative where the user drives the belt",
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Root mean square of the pull over the stride.</summary>
    public static Output RmsPull { get; } =
        Add(
            nameof(RmsPull),
            "F_rms",
            "N",
            "Root mean square of the pull over the stride",
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Mean power of friction between belt and deck.</summary>
    public static Output DeckFrictionPower { get; } =
        Add(nameof(DeckFrictionPower), "P_d", "W", "Mean power of friction between belt and deck", Inputs.DeckFriction);

    /// <summary>Mean power of the drive roller on the belt.</summary>
    public static Output PullPower { get; } =
        Add(
            nameof(PullPower),
            "P",
            "W",
            "Mean power of the drive roller on the belt",
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Strand tension at rest, with the turns given.</summary>
    public static Output TensionNow { get; } =
        Add(
            nameof(TensionNow),
            "T",
            "N",
            "Strand tension at rest, with the turns given",
            Inputs.RestTension,
            Inputs.BeltStiffness
        );

    /// <summary>Centrifugal part of the strand tension.</summary>
    public static Output CentrifugalTension { get; } =
        Add(nameof(CentrifugalTension), "T_c", "N", "Centrifugal part of the strand tension");

    /// <summary>Tension of the slack side at the worst phase of the stride.</summary>
    public static Output SlackTension { get; } =
        Add(
            nameof(SlackTension),
            "T_s",
            "N",
            "Tension of the slack side at the worst phase of the stride",
            Inputs.RestTension,
            Inputs.BeltStiffness,
            Inputs.DriveRollerFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Tension of the tight side at the worst phase of the stride.</summary>
    public static Output TightTension { get; } =
        Add(
            nameof(TightTension),
            "T_t",
            "N",
            "Tension of the tight side at the worst phase of the stride",
            Inputs.RestTension,
            Inputs.BeltStiffness,
            Inputs.DriveRollerFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Least grip over demand of the running belt over the stride.</summary>
    public static Output BeltMargin { get; } =
        Add(
            nameof(BeltMargin),
            "S",
            "1",
            "Least grip over demand of the running belt over the stride",
            Inputs.RestTension,
            Inputs.BeltStiffness,
            Inputs.DriveRollerFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Slide of the running belt on its roller in one step.</summary>
    public static Output BeltSlide { get; } =
        Add(
            nameof(BeltSlide),
            "z",
            "m",
            "Slide of the running belt on its roller in one step",
            Inputs.RestTension,
            Inputs.BeltStiffness,
            Inputs.DriveRollerFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Mean load of the running belt on the drive roller's hubs, both together.</summary>
    public static Output DriveRollerHubLoad { get; } =
        Add(
            nameof(DriveRollerHubLoad),
            "H_1",
            "N",
            "Mean load of the running belt on the drive roller's hubs, both together",
            Inputs.RestTension,
            Inputs.BeltStiffness,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Mean load of the running belt on the undriven roller's hubs, both together.</summary>
    public static Output TailRollerHubLoad { get; } =
        Add(
            nameof(TailRollerHubLoad),
            "H_2",
            "N",
            "Mean load of the running belt on the undriven roller's hubs, both together",
            Inputs.RestTension,
            Inputs.BeltStiffness,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Least grip over demand of the drive belt over the stride.</summary>
    public static Output DriveBeltMargin { get; } =
        Add(
            nameof(DriveBeltMargin),
            "S_d",
            "1",
            "Least grip over demand of the drive belt over the stride",
            Inputs.DriveBeltTension,
            Inputs.DriveBeltFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Slide of the drive belt in one step, as travel of the running belt.</summary>
    public static Output DriveBeltSlide { get; } =
        Add(
            nameof(DriveBeltSlide),
            "z_d",
            "m",
            "Slide of the drive belt in one step, as travel of the running belt",
            Inputs.DriveBeltTension,
            Inputs.DriveBeltFriction,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Mean load of the drive belt on the motor's shaft.</summary>
    public static Output MotorHubLoad { get; } =
        Add(
            nameof(MotorHubLoad),
            "H_m",
            "N",
            "Mean load of the drive belt on the motor's shaft",
            Inputs.DriveBeltTension,
            Inputs.DeckFriction,
            Inputs.BeltDrag
        );

    /// <summary>Speed of the motor.</summary>
    public static Output MotorSpeed { get; } = Add(nameof(MotorSpeed), "omega", "rad/s", "Speed of the motor");

    /// <summary>Mean torque at the motor's shaft.</summary>
    public static Output MotorTorque { get; } =
        Add(nameof(MotorTorque), "M", "N m", "Mean torque at the motor's shaft", Inputs.DeckFriction, Inputs.BeltDrag);

    /// <summary>Mean armature current.</summary>
    public static Output MeanCurrent { get; } =
        Add(
            nameof(MeanCurrent),
            "I",
            "A",
            "Mean armature current",
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            Inputs.MotorConstant,
            Inputs.MotorFrictionTorque
        );

    /// <summary>Largest armature current over the stride.</summary>
    public static Output PeakCurrent { get; } =
        Add(
            nameof(PeakCurrent),
            "I_max",
            "A",
            "Largest armature current over the stride",
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            Inputs.MotorConstant,
            Inputs.MotorFrictionTorque
        );

    /// <summary>Root mean square of the armature current.</summary>
    public static Output RmsCurrent { get; } =
        Add(
            nameof(RmsCurrent),
            "I_rms",
            "A",
            "Root mean square of the armature current",
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            Inputs.MotorConstant,
            Inputs.MotorFrictionTorque
        );

    /// <summary>Mean voltage at the motor's terminals.</summary>
    public static Output MotorVoltage { get; } =
        Add(
            nameof(MotorVoltage),
            "V",
            "V",
            "Mean voltage at the motor's terminals",
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            Inputs.MotorConstant,
            Inputs.MotorFrictionTorque,
            Inputs.ArmatureResistance
        );

    /// <summary>Mean power from the mains.</summary>
    public static Output MainsPower { get; } =
        Add(
            nameof(MainsPower),
            "P_m",
            "W",
            "Mean power from the mains",
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            Inputs.MotorConstant,
            Inputs.MotorFrictionTorque,
            Inputs.ArmatureResistance,
            Inputs.ControllerEfficiency
        );

    /// <summary>Mean current from the mains.</summary>
    public static Output MainsCurrent { get; } =
        Add(
            nameof(MainsCurrent),
            "I_m",
            "A",
            "Mean current from the mains",
            Inputs.DeckFriction,
            Inputs.BeltDrag,
            Inputs.MotorConstant,
            Inputs.MotorFrictionTorque,
            Inputs.ArmatureResistance,
            Inputs.ControllerEfficiency,
            Inputs.PowerFactor,
            Inputs.MainsVoltage
        );

    /// <summary>Notices, one bit a row of the table of ranges, as a number.</summary>
    public static Output NoticeBits { get; } =
        Add(nameof(NoticeBits), "-", "1", "Notices, one bit a row of the table of ranges, as a number");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<Output> All => Table;

    private static Output Add(string name, string symbol, string unit, string description, params Input[] needs)
    {
        ulong bits = 0;
        foreach (Input input in needs)
        {
            bits |= input.Bit;
        }

        Output output = new(name, symbol, unit, description) { Index = Table.Count, Needs = bits };
        Table.Add(output);
        return output;
    }
}
