using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What unequal turns of the two bolts do across the belt.</summary>
/// <remarks>
/// An upper bound, right after the turns: the belt relieves it by creeping sideways and by shear. Left and right are seen by the
/// user facing the console.
/// </remarks>
public sealed record UnequalTakeUp
{
    /// <summary>Skew of the adjusted roller; positive where the left side is the longer one.</summary>
    public required Angle Skew { get; init; }

    /// <summary>Strain that the mean of both turns added.</summary>
    public required Ratio MeanStrainAdded { get; init; }

    /// <summary>Strain of the left edge above that of the middle; as much is missing at the right edge.</summary>
    public required Ratio LeftEdgeStrain { get; init; }

    /// <summary>Which edge is the tight one; no answer where neither is.</summary>
    public required Answer<Side> TightEdge { get; init; }

    /// <summary>Force for each width at the tight edge; no answer without tension and stiffness.</summary>
    public required Answer<ForcePerLength> TightEdgeForce { get; init; }

    /// <summary>Force for each width at the loose edge; no answer without tension and stiffness, or where it hangs loose.</summary>
    public required Answer<ForcePerLength> LooseEdgeForce { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(UnequalTakeUp),
            (nameof(Skew), Skew),
            (nameof(MeanStrainAdded), MeanStrainAdded),
            (nameof(LeftEdgeStrain), LeftEdgeStrain),
            (nameof(TightEdge), TightEdge),
            (nameof(TightEdgeForce), TightEdgeForce),
            (nameof(LooseEdgeForce), LooseEdgeForce)
        );

    /// <summary>The belt of a machine under its left and right turns.</summary>
    /// <param name="machine">The machine; of it the take-up's turns and spacing, geometry, tension and stiffness.</param>
    /// <returns>The state; no answer with one bolt, or where the distance of the bolts is not known.</returns>
    /// <remarks>Before the turns the roller counts as square.</remarks>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    public static Answer<UnequalTakeUp> Of(Treadmill machine)
    {
        ArgumentNullException.ThrowIfNull(machine);
        TakeUp takeUp = machine.TakeUp;
        return takeUp.Bolts < 2
            ? new Shortfall(Reason.NotOnThisMachine, "second take-up bolt")
            : Inquiry
                .Of(takeUp.BoltSpacing, nameof(TakeUp.BoltSpacing))
                .Then(spacing => At(machine, new(machine), Si.Length.ToSi(spacing)));
    }

    private static UnequalTakeUp At(Treadmill machine, LoopGeometry loop, double spacing)
    {
        TakeUp takeUp = machine.TakeUp;
        double skew = TakeUpLaws.Skew<Real>(
            ScrewThreadLaws.Travel<Real>(loop.Numbers.ThreadLead, takeUp.LeftTurns),
            ScrewThreadLaws.Travel<Real>(loop.Numbers.ThreadLead, takeUp.RightTurns),
            loop.Numbers.BoltAngle,
            spacing
        );
        double edge = TakeUpLaws.EdgeStrain<Real>(skew, loop.Numbers.BeltWidth, loop.StrandAngle, loop.Length);
        Answer<double> mean = Inquiry
            .Stiffness(loop)
            .Ask(stiffness => loop.Tension.Then(tension => tension / stiffness));
        return new()
        {
            Skew = Si.Angle.FromSi(skew),
            MeanStrainAdded = Si.Ratio.FromSi(loop.Lengthening(takeUp.LeftTurns, takeUp.RightTurns) / loop.Length),
            LeftEdgeStrain = Si.Ratio.FromSi(edge),
            TightEdge = edge switch
            {
                > 0 => Side.Left,
                < 0 => Side.Right,
                _ => new Shortfall(Reason.NotObservable, nameof(TightEdge)),
            },
            TightEdgeForce = mean.Ask(strain => EdgeForce(machine.Belt, strain + Math.Abs(edge))),
            LooseEdgeForce = mean.Ask(strain => EdgeForce(machine.Belt, strain - Math.Abs(edge))),
        };
    }

    private static Answer<ForcePerLength> EdgeForce(RunningBelt belt, double strain) =>
        strain < 0
            ? new Shortfall(Reason.SlackBelt, "strain of the edge", 0, strain, "1")
            : Inquiry
                .Of(belt.RelaxedForcePerWidth, nameof(RunningBelt.RelaxedForcePerWidth))
                .Then(relaxed =>
                    Si.ForcePerLength.FromSi(BeltLaws.ForcePerWidth<Real>(Si.ForcePerLength.ToSi(relaxed), strain))
                );
}
