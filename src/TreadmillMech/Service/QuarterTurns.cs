using System.Collections.Immutable;
using TreadmillMech.Parts;
using TreadmillMech.Service.Checks;

namespace TreadmillMech.Service;

/// <summary>The ladder of quarter turns: what each equal turn of both bolts does to the running belt.</summary>
public static class QuarterTurns
{
    /// <summary>The rungs from now up to a number of turns.</summary>
    /// <param name="machine">The machine; what is unknown of it stays unknown on the ladder.</param>
    /// <param name="demand">The demand that the margin is told for.</param>
    /// <param name="turns">Turns up to which to go, 0 to 10.</param>
    /// <param name="options">Turns at a time; the default where null.</param>
    /// <returns>
    /// One rung a step, beginning with no turn. The elongation needs no stiffness and is always told; tension and margin
    /// only where tension, stiffness and friction are known.
    /// </returns>
    /// <exception cref="ArgumentNullException">The machine or the demand is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside the range.</exception>
    public static ImmutableArray<LadderStep> Ladder(
        Treadmill machine,
        Demand demand,
        double turns,
        VisitOptions? options = null
    )
    {
        ArgumentNullException.ThrowIfNull(machine);
        ArgumentNullException.ThrowIfNull(demand);
        double most = Guard.Within(turns, Si.One, 0, 10, nameof(turns));
        double step = (options ?? VisitOptions.Default).TurnStep.Value;
        ImmutableArray<LadderStep>.Builder rungs = ImmutableArray.CreateBuilder<LadderStep>();
        for (int i = 0; i * step <= most + 1e-9; i++)
        {
            rungs.Add(Rung(machine, demand, i * step));
        }

        return rungs.ToImmutable();
    }

    /// <summary>Elongation of the running belt by equal turns of both bolts [1].</summary>
    /// <param name="machine">The machine; of it the geometry and the take-up.</param>
    /// <param name="turns">Turns on both bolts; positive tightens.</param>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static double Strain(Treadmill machine, double turns)
    {
        LoopGeometry loop = new(machine);
        return loop.Lengthening(turns, turns) / loop.Length;
    }

    private static LadderStep Rung(Treadmill machine, Demand demand, double turns)
    {
        OperatingPoint point = ChangedMachine.Turned(machine, turns).At(demand);
        return new(
            turns,
            new Figure("elongation added", 100 * Strain(machine, turns), "%"),
            machine.RestTension is null
                ? new Shortfall(Reason.InputUnknown, nameof(Treadmill.RestTension))
                : point.RestTension.Then(t => new Figure("strand tension", Si.Force.ToSi(t), "N")),
            point.BeltMargin.Then(m => new Figure("margin", m, ""))
        );
    }
}
