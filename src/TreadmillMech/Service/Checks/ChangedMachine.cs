namespace TreadmillMech.Service.Checks;

/// <summary>A machine after a change.</summary>
internal static class ChangedMachine
{
    /// <summary>After equal turns of both bolts.</summary>
    internal static Treadmill Turned(Treadmill machine, double turns) => Turned(machine, turns, turns);

    /// <summary>After turns of each bolt.</summary>
    internal static Treadmill Turned(Treadmill machine, double left, double right) =>
        machine with
        {
            TakeUp = machine.TakeUp with
            {
                LeftTurns = machine.TakeUp.LeftTurns + left,
                RightTurns = machine.TakeUp.RightTurns + right,
            },
        };

    /// <summary>At another strand tension at rest [N], the turns given counted in.</summary>
    internal static Treadmill AtTension(Treadmill machine, double tension) =>
        machine with
        {
            RestTension = Si.Force.FromSi(tension),
            TakeUp = machine.TakeUp with { LeftTurns = 0, RightTurns = 0 },
        };
}
