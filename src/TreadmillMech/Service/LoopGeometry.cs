using System.Numerics;
using TreadmillMech.Laws;
using TreadmillMech.Model;
using TreadmillMech.Numbers;

namespace TreadmillMech.Service;

/// <summary>The running belt's loop of a machine, and the machine alone as plain numbers.</summary>
internal readonly struct LoopGeometry
{
    private readonly ulong unknown;
    private readonly bool stiffnessKnown;
    private readonly bool rear;

    internal LoopGeometry(Treadmill machine)
    {
        Scenario scenario = Scenario.OfMachine(machine);
        Numbers = scenario.Numbers;
        unknown = scenario.Unknown & Outputs.TensionNow.Needs;
        stiffnessKnown = machine.Belt.RelaxedForcePerWidth is not null;
        rear = machine.DriveEnd == DriveEnd.Rear;
        DriveRadius = 0.5 * (Numbers.DriveRollerDiameter + Numbers.BeltThickness);
        TailRadius = 0.5 * (Numbers.TailRollerDiameter + Numbers.BeltThickness);
        StrandAngle = LoopLaws.StrandAngle(DriveRadius, TailRadius, Numbers.CentreDistance);
        Span = LoopLaws.StrandLength(Numbers.CentreDistance, StrandAngle);
        Length = LoopLaws.Length(DriveRadius, TailRadius, Numbers.CentreDistance);
    }

    internal MachineNumbers<Real> Numbers { get; }

    /// <summary>Strand tension at rest, with the turns given [N]; or which input it misses.</summary>
    internal Answer<double> Tension =>
        unknown != 0
            ? new Shortfall(Reason.InputUnknown, Inputs.All[BitOperations.TrailingZeroCount(unknown)].Name)
            : (Numbers.RestTension + Gain(Numbers.LeftTurns, Numbers.RightTurns)).Value;

    /// <summary>Strand tension at rest after further turns [N]; it needs the belt's stiffness as well.</summary>
    internal Answer<double> TensionAfter(double leftTurns, double rightTurns)
    {
        double gain = Gain(leftTurns, rightTurns);
        return Numbers.BeltStiffness.Value > 0
            ? Tension.Then(tension => tension + gain)
            : new Shortfall(Reason.InputUnknown, Inputs.BeltStiffness.Name);
    }

    internal Real DriveRadius { get; }

    internal Real TailRadius { get; }

    internal Real StrandAngle { get; }

    internal Real TailWrap => LoopLaws.Wrap(-StrandAngle);

    internal Real DriveWrap => LoopLaws.Wrap(StrandAngle);

    /// <summary>
    /// Share of the loop between drive roller and the middle of the top strand [1]; no answer where mountings give and the
    /// belt's stiffness is not known.
    /// </summary>
    internal Answer<double> MiddleShare => ShareAt(0.5 * Span);

    /// <summary>
    /// Share of the loop between drive roller and a place on the top strand, so far behind the front axis [m]; no answer
    /// where mountings give and the belt's stiffness is not known.
    /// </summary>
    internal Answer<double> ShareAt(Real place)
    {
        bool rigid = (Numbers.DriveHubCompliance + Numbers.TailHubCompliance).Value.Equals(0);
        if (!rigid && !stiffnessKnown)
        {
            return new Shortfall(Reason.InputUnknown, nameof(Numbers.BeltStiffness));
        }

        Real distance = LoadStage.Distance(place, 0.5 * DriveRadius * DriveWrap, Span, Length, rear);
        return TractionLaws
            .LoadShare(
                distance,
                Length,
                rigid ? 0 : BeltLaws.CompliantLength(Numbers.BeltStiffness, Numbers.DriveHubCompliance),
                rigid ? 0 : BeltLaws.CompliantLength(Numbers.BeltStiffness, Numbers.TailHubCompliance),
                rear ? 1 : 0
            )
            .Value;
    }

    internal Real Span { get; }

    internal Real Length { get; }

    private Real Gain(double leftTurns, double rightTurns) =>
        BeltLaws.TensionGain(
            Numbers.BeltStiffness,
            Lengthening(leftTurns, rightTurns),
            Length,
            BeltLaws.CompliantLength(Numbers.BeltStiffness, Numbers.DriveHubCompliance + Numbers.TailHubCompliance)
        );

    /// <summary>Loop length that turns of the bolts take up [m].</summary>
    internal Real Lengthening(double leftTurns, double rightTurns) =>
        LoopLaws.LengthSlope(StrandAngle)
        * TakeUpLaws.CentreDistanceChange(
            ScrewThreadLaws.Travel<Real>(Numbers.ThreadLead, leftTurns),
            ScrewThreadLaws.Travel<Real>(Numbers.ThreadLead, rightTurns),
            Numbers.BoltAngle
        );
}
