using TreadmillMech.Laws;
using TreadmillMech.Numbers;
using TreadmillMech.Parts;
using UnitsNet;

namespace TreadmillMech.Service.Checks;

/// <summary>What unequal turns of the take-up bolts do: skew, drift by side, and the edge that grows tight.</summary>
/// <remarks>
/// The belt moves towards the side with the shorter centre distance (Adv. Mech. Eng. 2017, doi 10.1177/1687814017695955). A
/// narrow belt drifts like a string; a wide stiff one a third as far; strain leads from one to the other. Crowns come on top, see
/// <see cref="CrownOutlook"/>.
/// </remarks>
public sealed record TrackingDrift
{
    /// <summary>Skew that the turns add to the adjusted roller; positive where they lengthen the left side.</summary>
    public required Angle Skew { get; init; }

    /// <summary>Side towards which the turns move the belt; no answer where they are equal.</summary>
    public required Answer<Side> Towards { get; init; }

    /// <summary>Drift for each metre of belt, to the right, if it follows like a string: the most.</summary>
    public required Ratio StringDrift { get; init; }

    /// <summary>Drift for each metre of belt, to the right, of a stiff wide belt: the least.</summary>
    public required Ratio StiffDrift { get; init; }

    /// <summary>Drift for each metre of belt at its strain, to the right; no answer where tension or stiffness is not known.</summary>
    public required Answer<Ratio> Drift { get; init; }

    /// <summary>Strain that the turns add at the left edge above the middle, and take away at the right: an upper bound.</summary>
    public required Ratio LeftEdgeStrain { get; init; }

    /// <summary>
    /// Tension of the left edge for each width, square roller before the turns; no answer where tension or stiffness is not known,
    /// or the edge would hang loose.
    /// </summary>
    public required Answer<ForcePerLength> LeftEdgeTension { get; init; }

    /// <summary>The same of the right edge.</summary>
    public required Answer<ForcePerLength> RightEdgeTension { get; init; }

    /// <summary>The result in words, invariant.</summary>
    public override string ToString() =>
        ResultText.Of(
            nameof(TrackingDrift),
            (nameof(Skew), Skew),
            (nameof(Towards), Towards),
            (nameof(StringDrift), StringDrift),
            (nameof(StiffDrift), StiffDrift),
            (nameof(Drift), Drift),
            (nameof(LeftEdgeStrain), LeftEdgeStrain),
            (nameof(LeftEdgeTension), LeftEdgeTension),
            (nameof(RightEdgeTension), RightEdgeTension)
        );

    /// <summary>The effect of turns on a belt that ran straight.</summary>
    /// <param name="machine">The machine; of it geometry, take-up, tension and stiffness.</param>
    /// <param name="leftTurns">Turns of the left bolt from now, -5 to 5; positive tightens.</param>
    /// <param name="rightTurns">Turns of the right bolt from now, -5 to 5; positive tightens.</param>
    /// <returns>The effect; no answer where there is one bolt, or the distance between both is not known.</returns>
    /// <exception cref="ArgumentNullException">The machine is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The turns are outside their range.</exception>
    public static Answer<TrackingDrift> Of(Treadmill machine, double leftTurns, double rightTurns)
    {
        ArgumentNullException.ThrowIfNull(machine);
        double left = Guard.Within(leftTurns, Si.One, -5, 5, nameof(leftTurns));
        double right = Guard.Within(rightTurns, Si.One, -5, 5, nameof(rightTurns));
        return SkewOf(machine, left, right).Then(skew => At(machine, left, right, skew));
    }

    /// <summary>Skew by turns [rad].</summary>
    internal static Answer<double> SkewOf(Treadmill machine, double leftTurns, double rightTurns)
    {
        if (machine.TakeUp.Bolts < 2)
        {
            return new Shortfall(Reason.NotOnThisMachine, "second take-up bolt");
        }

        if (machine.TakeUp.BoltSpacing is not { } spacing)
        {
            return new Shortfall(Reason.InputUnknown, nameof(TakeUp.BoltSpacing));
        }

        double lead = Si.Length.ToSi(machine.TakeUp.Thread.Lead);
        return TakeUpLaws
            .Skew<Real>(
                ScrewThreadLaws.Travel<Real>(lead, leftTurns),
                ScrewThreadLaws.Travel<Real>(lead, rightTurns),
                Si.Angle.ToSi(machine.TakeUp.BoltAngle),
                Si.Length.ToSi(spacing)
            )
            .Value;
    }

    private static TrackingDrift At(Treadmill machine, double left, double right, double skew)
    {
        Treadmill turned = machine with
        {
            TakeUp = machine.TakeUp with
            {
                LeftTurns = machine.TakeUp.LeftTurns + left,
                RightTurns = machine.TakeUp.RightTurns + right,
            },
        };
        LoopGeometry loop = new(turned);
        double width = loop.Numbers.BeltWidth;
        double asString = TrackingLaws.StringDrift<Real>(skew, loop.Numbers.CentreDistance, loop.Length);
        double edge = TakeUpLaws.EdgeStrain<Real>(skew, width, loop.StrandAngle, loop.Length);
        Answer<(double Tension, double Stiffness)> pulled = turned.Belt.RelaxedForcePerWidth is { } perWidth
            ? loop.Tension.Then(t => (t, (double)BeltLaws.Stiffness<Real>(Si.ForcePerLength.ToSi(perWidth), width)))
            : new Shortfall(Reason.InputUnknown, "BeltStiffness");
        return new()
        {
            Skew = Si.Angle.FromSi(skew),
            Towards =
                skew > 0 ? Side.Right
                : skew < 0 ? Side.Left
                : new Shortfall(Reason.NotInRange, nameof(Skew)),
            StringDrift = Si.Ratio.FromSi(asString),
            StiffDrift = Si.Ratio.FromSi(asString / 3),
            Drift = pulled
                .Then(p =>
                    p.Tension > 0
                        ? (Answer<Ratio>)
                            Si.Ratio.FromSi(
                                asString
                                    * TrackingLaws.BeamFactor<Real>(
                                        loop.Numbers.CentreDistance,
                                        width,
                                        p.Tension / p.Stiffness
                                    )
                            )
                        : new Shortfall(Reason.SlackBelt, nameof(Treadmill.RestTension), 0, p.Tension, "N")
                )
                .Flat(),
            LeftEdgeStrain = Si.Ratio.FromSi(edge),
            LeftEdgeTension = pulled.Then(p => Edge(p.Tension, p.Stiffness, edge, width)).Flat(),
            RightEdgeTension = pulled.Then(p => Edge(p.Tension, p.Stiffness, -edge, width)).Flat(),
        };
    }

    private static Answer<ForcePerLength> Edge(double tension, double stiffness, double strain, double width)
    {
        double atEdge = tension + BeltLaws.StrandTension<Real>(stiffness, strain);
        return atEdge >= 0
            ? Si.ForcePerLength.FromSi(atEdge / width)
            : new Shortfall(Reason.SlackBelt, nameof(LeftEdgeStrain), 0, atEdge / width, "N/m");
    }
}
